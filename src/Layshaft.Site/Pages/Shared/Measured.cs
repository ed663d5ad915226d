using Layshaft.Engineering.Measurement;
using Layshaft.Site.Figures;
using UnitsNet;
using Figure = Layshaft.Site.Figures.Figure;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Writes measured values: as many decimals as their uncertainty or their instrument bears.</summary>
public static class Measured
{
    /// <summary>A quantity with given decimals of its metric unit (mm, N·m, N, °).</summary>
    public static Figure Figure(IQuantity quantity, int decimals, FigureWriter figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return quantity switch
        {
            Length q => figures.Length(q, decimals),
            Torque q => figures.Torque(q, decimals),
            Force q => figures.Force(q, decimals),
            Temperature q => figures.Temperature(q, decimals),
            Mass q => figures.Mass(q, decimals),
            Angle q => Degrees(q, decimals, figures),
            _ => throw new ArgumentException("Not a quantity that a book can hold.", nameof(quantity)),
        };
    }

    /// <summary>Decimals of the metric unit that show a step of this size; 0 to 4.</summary>
    public static int DecimalsFor(IQuantity step)
    {
        ArgumentNullException.ThrowIfNull(step);
        var size = Math.Abs(Metric(step));
        return size <= 0 ? 3 : Math.Clamp((int)Math.Ceiling(-Math.Log10(size) - 1e-9), 0, 4);
    }

    /// <summary>
    /// The decimals that a value is written with: those of its instrument's step, or where no instrument is named those of
    /// the sizes it is compared with.
    /// </summary>
    public static int DecimalsOf(IQuantity? resolution, params IQuantity[] comparedWith) => resolution is not null
        ? DecimalsFor(resolution)
        : comparedWith.Select(DecimalsWritten).DefaultIfEmpty(2).Max();

    /// <summary>A measured value with its expanded uncertainty where that is known.</summary>
    public static string WithUncertainty(MeasuredQuantity measured, int decimals, FigureWriter figures)
    {
        ArgumentNullException.ThrowIfNull(measured);
        var value = Figure(measured.Value, decimals, figures);
        return measured.Number.UncertaintyIsKnown
            ? FigureWriter.PlusMinus(value, Figure(measured.ExpandedUncertainty, decimals, figures))
            : value.Text;
    }

    /// <summary>Decimals in which a written size is exact, up to 4: 0.35 mm has two.</summary>
    public static int DecimalsWritten(IQuantity size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var value = Math.Abs(Metric(size));
        for (var decimals = 0; decimals < 4; decimals++)
        {
            if (Math.Abs(value - Math.Round(value, decimals)) < 1e-7 * Math.Max(1, value))
            {
                return decimals;
            }
        }

        return 4;
    }

    private static double Metric(IQuantity quantity) => quantity switch
    {
        Length q => q.Millimeters,
        Torque q => q.NewtonMeters,
        Force q => q.Newtons,
        Temperature q => q.DegreesCelsius,
        Mass q => q.Kilograms,
        Angle q => q.Degrees,
        _ => throw new ArgumentException("Not a quantity that a book can hold.", nameof(quantity)),
    };

    private static Figure Degrees(Angle angle, int decimals, FigureWriter figures)
    {
        var number = figures.Number(angle.Degrees, decimals).Number;
        return new Figure(number, "°", number + "°");
    }
}
