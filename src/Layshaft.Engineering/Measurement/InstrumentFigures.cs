namespace Layshaft.Engineering.Measurement;

/// <summary>What is known of an instrument, as plain numbers in the unit of the readings. Zero means: not stated.</summary>
public sealed record InstrumentFigures
{
    /// <summary>An instrument of which nothing is known.</summary>
    public static InstrumentFigures Unknown { get; } = new();

    /// <summary>Limit of error ±a of the instrument, 0 or more.</summary>
    public double ErrorLimit { get; init; }

    /// <summary>Limit of error as a share of the reading (0.04 for ±4 % of reading), added to <see cref="ErrorLimit"/>; 0 or more.</summary>
    public double RelativeErrorLimit { get; init; }

    /// <summary>Smallest step that can be read, 0 or more.</summary>
    public double Resolution { get; init; }

    /// <summary>Standard uncertainty of its calibration (a certificate's expanded figure divided by its factor), 0 or more.</summary>
    public double CalibrationUncertainty { get; init; }

    /// <summary>Standard deviation of single readings by this hand with this instrument, known from earlier trials; 0 or more.</summary>
    public double Repeatability { get; init; }

    /// <summary>Whether anything is stated that bounds an error.</summary>
    public bool AreKnown => ErrorLimit > 0 || RelativeErrorLimit > 0 || Resolution > 0 || CalibrationUncertainty > 0 || Repeatability > 0;

    /// <summary>
    /// Scatter to expect of single readings: the stated repeatability, or without one the limit of error and the resolution,
    /// which bound each single reading.
    /// </summary>
    /// <param name="value">The measured value, for a limit of error that is a share of it.</param>
    /// <returns>A standard deviation, 0 or more.</returns>
    public double ExpectedScatter(double value) => Repeatability > 0
        ? Repeatability
        : Math.Sqrt((LimitAt(value) * LimitAt(value) / 3) + (Resolution * Resolution / 12));

    /// <summary>Contributions that averaging does not reduce (type B, JCGM 100:2008, 4.3).</summary>
    /// <param name="value">The measured value, for a limit of error that is a share of it.</param>
    /// <returns>One contribution for each figure that is stated.</returns>
    public IReadOnlyList<UncertaintyComponent> TypeB(double value)
    {
        UncertaintyComponent[] all =
        [
            UncertaintyComponent.Rectangular("instrument limit of error", LimitAt(value)),
            UncertaintyComponent.Resolution("resolution", Resolution),
            UncertaintyComponent.Known("calibration", CalibrationUncertainty),
        ];
        return [.. all.Where(component => component.StandardUncertainty > 0)];
    }

    private double LimitAt(double value) => ErrorLimit + (RelativeErrorLimit * Math.Abs(value));
}
