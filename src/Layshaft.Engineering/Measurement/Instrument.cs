using UnitsNet;

namespace Layshaft.Engineering.Measurement;

/// <summary>
/// What a shop knows of a measuring instrument, in units of what it measures. A figure that is left out adds nothing.
/// </summary>
public sealed record Instrument
{
    /// <summary>An instrument of which nothing is known.</summary>
    public static Instrument Unknown { get; } = new();

    /// <summary>Limit of error ±a over the measuring range, taken as rectangular, a/√3.</summary>
    public IQuantity? ErrorLimit { get; init; }

    /// <summary>Limit of error as a share of the reading (0.04 for a torque wrench of ±4 %), added to the fixed one; 0 or more.</summary>
    public double RelativeErrorLimit { get; init; }

    /// <summary>Smallest step that can be read, δ; taken as δ/√12.</summary>
    public IQuantity? Resolution { get; init; }

    /// <summary>Standard uncertainty of its calibration: a certificate's expanded uncertainty divided by its coverage factor.</summary>
    public IQuantity? CalibrationUncertainty { get; init; }

    /// <summary>Standard deviation of single readings, known from earlier trials with this instrument.</summary>
    public IQuantity? Repeatability { get; init; }

    /// <summary>The same figures as plain numbers of one unit.</summary>
    /// <param name="unit">A unit of the kind of quantity that the instrument measures.</param>
    /// <returns>The figures in that unit.</returns>
    /// <exception cref="ArgumentException">A figure is of another kind than the unit.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is negative or not finite.</exception>
    public InstrumentFigures In(Enum unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new InstrumentFigures
        {
            ErrorLimit = NotNegative(ErrorLimit.InOrZero(unit), "limit of error"),
            RelativeErrorLimit = NotNegative(RelativeErrorLimit, "relative limit of error"),
            Resolution = NotNegative(Resolution.InOrZero(unit), "resolution"),
            CalibrationUncertainty = NotNegative(CalibrationUncertainty.InOrZero(unit), "calibration uncertainty"),
            Repeatability = NotNegative(Repeatability.InOrZero(unit), "repeatability"),
        };
    }

    private static double NotNegative(double figure, string what) => double.IsFinite(figure) && figure >= 0
        ? figure
        : throw new ArgumentOutOfRangeException(what, figure, $"the {what} of an instrument is 0 or more");
}
