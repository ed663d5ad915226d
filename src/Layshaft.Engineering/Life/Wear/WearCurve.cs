namespace Layshaft.Engineering.Life;

/// <summary>Wear that grows with a power of usage: a straight line over (usage / unit)^power.</summary>
/// <param name="Power">The power; 1 for steady wear, above 1 for wear that gathers pace, below 1 for wear that slows as parts run in.</param>
/// <param name="Unit">The usage that counts as 1, greater than 0.</param>
/// <param name="Fit">The line.</param>
public sealed record WearCurve(double Power, double Unit, LinearFit Fit)
{
    /// <summary>Whether wear is steady.</summary>
    public bool IsStraight => Power == 1;

    /// <summary>Wear at a usage.</summary>
    /// <param name="use">The part's usage, 0 or more.</param>
    public double At(double use) => Fit.At(Scaled(use));

    /// <summary>Where the next reading will lie at a usage.</summary>
    /// <param name="use">The part's usage, 0 or more.</param>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    public Bounds PredictionAt(double use, double level) => Fit.IntervalAt(Scaled(use), level, IntervalKind.NextReading);

    /// <summary>Usage at which a reading at a given wear is to be expected, with its bounds; <c>null</c> when the curve does not rise.</summary>
    /// <param name="wear">The wear.</param>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    public LineCrossing? CrossingOf(double wear, double level) =>
        Fit.Slope > 0 && Fit.CrossingOf(wear, level, IntervalKind.NextReading) is { } crossing
            ? new LineCrossing(Use(crossing.Estimate), new Bounds(level, Use(crossing.Bounds.Lower), Use(crossing.Bounds.Upper)))
            : null;

    private double Scaled(double use) => Math.Pow(use / Unit, Power);

    // What would lie before the part was new is reached at once.
    private double Use(double scaled) => scaled <= 0 ? 0 : Unit * Math.Pow(scaled, 1 / Power);

    private double? Use(double? scaled) => scaled is { } s ? Use(s) : null;
}
