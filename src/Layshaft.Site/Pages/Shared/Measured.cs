using Layshaft.Engineering.Measurement;
using Layshaft.Site.Figures;
using UnitsNet;
using Figure = Layshaft.Site.Figures.Figure;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Writes measured values: as many decimals as their uncertainty or their instrument bears.</summary>
public static class Measured
{
    // A size is told to a tenth of a micrometre, or to the inch's millionth.
    private static readonly Decimals Most = new(4, 6);

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

    /// <summary>A quantity with given decimals of its metric and its imperial unit.</summary>
    public static Figure Figure(IQuantity quantity, Decimals decimals, FigureWriter figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return quantity switch
        {
            Length q => figures.Length(q, decimals),
            Torque q => figures.Torque(q, decimals),
            Force q => figures.Force(q, decimals),
            Mass q => figures.Mass(q, decimals),
            _ => Figure(quantity, decimals.Metric, figures),
        };
    }

    /// <summary>Decimals that show a step of this size: 0 to 4 of the metric unit, 0 to 6 of the imperial one.</summary>
    public static Decimals DecimalsFor(IQuantity step)
    {
        ArgumentNullException.ThrowIfNull(step);
        var (metric, imperial) = Sizes(step);
        return metric == 0 ? new Decimals(3, 5) : Decimals.ForStep(Math.Abs(metric), Math.Abs(imperial), Most);
    }

    /// <summary>
    /// The decimals that a value is written with: those of its instrument's step, or if no instrument is named those of
    /// the sizes it is compared with.
    /// </summary>
    public static Decimals DecimalsOf(IQuantity? resolution, params IQuantity[] comparedWith) =>
        resolution is not null ? DecimalsFor(resolution)
        : comparedWith.Length == 0 ? new Decimals(2, 4)
        : DecimalsWritten(comparedWith);

    /// <summary>A measured length, torque or the like with its expanded uncertainty if that is known.</summary>
    public static string WithUncertainty(MeasuredQuantity measured, int decimals, FigureWriter figures) =>
        WithUncertainty(measured, new Decimals(decimals, decimals + (measured.Value is Length ? 2 : 0)), figures);

    /// <summary>A measured value with its expanded uncertainty where that is known.</summary>
    public static string WithUncertainty(MeasuredQuantity measured, Decimals decimals, FigureWriter figures)
    {
        ArgumentNullException.ThrowIfNull(measured);
        var value = Figure(measured.Value, decimals, figures);
        return measured.Number.UncertaintyIsKnown
            ? FigureWriter.PlusMinus(value, Figure(measured.ExpandedUncertainty, decimals, figures))
            : value.Text;
    }

    /// <summary>
    /// Decimals that show a size as finely as it was written, in whichever unit that was, and no finer: 0.35 mm has two, 78 lbf·ft has
    /// none and becomes 106 N·m. Of several sizes the most.
    /// </summary>
    public static Decimals DecimalsWritten(params IQuantity[] sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return sizes.Select(Written).Aggregate(default(Decimals), Decimals.Max);
    }

    private static Decimals Written(IQuantity size)
    {
        var value = Math.Abs((double)size.Value);
        var decimals = 0;
        while (decimals < Most.Imperial && Math.Abs(value - Math.Round(value, decimals)) >= 1e-9 * Math.Max(1, value))
        {
            decimals++;
        }

        var (metric, imperial) = Sizes(size);
        var step = Math.Pow(10, -decimals);
        return value == 0 ? default
            : size is Temperature ? new Decimals(Math.Min(decimals, Most.Metric), decimals)
            : Decimals.ForStep(step * Math.Abs(metric) / value, step * Math.Abs(imperial) / value, Most);
    }

    private static (double Metric, double Imperial) Sizes(IQuantity quantity) => quantity switch
    {
        Length q => (q.Millimeters, q.Inches),
        Torque q => (q.NewtonMeters, q.PoundForceFeet),
        Force q => (q.Newtons, q.PoundsForce),
        Temperature q => (q.DegreesCelsius, q.DegreesFahrenheit),
        Mass q => (q.Kilograms, q.Pounds),
        Angle q => (q.Degrees, q.Degrees),
        _ => throw new ArgumentException("Not a quantity that a book can hold.", nameof(quantity)),
    };

    private static Figure Degrees(Angle angle, int decimals, FigureWriter figures)
    {
        var number = figures.Number(angle.Degrees, decimals).Number;
        return new Figure(number, "°", number + "°");
    }
}
