namespace Layshaft.Engineering.Life;

/// <summary>How a wear trend is to be worked out.</summary>
public sealed record WearTrendChoices
{
    /// <summary>Two-sided level of intervals, between 0 and 1.</summary>
    public double Level { get; init; } = 0.95;

    /// <summary>Whether the line is held to the known new value at no use. The new value then counts as exact.</summary>
    public bool ThroughNewValue { get; init; }

    /// <summary>
    /// Standard uncertainty of a single reading in the unit of the readings, 0 if unknown. Intervals never take the scatter
    /// to be less: three readings that happen to lie on a line do not make the instrument perfect.
    /// </summary>
    public double ReadingUncertainty { get; init; }

    /// <summary>The part's use now; <c>null</c> takes that of the last reading.</summary>
    public double? UseNow { get; init; }
}
