namespace Layshaft.Engineering.Life;

/// <summary>What an interval about a fitted line is for.</summary>
public enum IntervalKind
{
    /// <summary>Where the line itself lies (confidence interval of the mean response).</summary>
    MeanLine,

    /// <summary>Where one more reading will lie: the line's uncertainty and the scatter of a single reading (prediction interval).</summary>
    NextReading,
}
