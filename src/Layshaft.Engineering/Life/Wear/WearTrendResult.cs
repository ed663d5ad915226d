namespace Layshaft.Engineering.Life;

/// <summary>What readings say about a part's wear: a <see cref="WearTrendLine"/> or the reason why they say nothing.</summary>
public abstract record WearTrendResult;

/// <summary>Why no trend is given.</summary>
public enum WearTrendUnsaidReason
{
    /// <summary>There is no reading.</summary>
    NoReading,

    /// <summary>There is one reading.</summary>
    OneReading,

    /// <summary>There are two readings: any two lie on a line, so nothing shows how far to trust it.</summary>
    TwoReadings,

    /// <summary>All readings were taken at the same use.</summary>
    OneUse,

    /// <summary>The readings show no wear: the fitted line is level, or falls no more than by scatter.</summary>
    Flat,

    /// <summary>The readings go back towards new by more than scatter: part changed without a record, or measured in two ways.</summary>
    Shrinking,

    /// <summary>The readings bend more than wear by any power of usage from 0.5 to 3.</summary>
    Bent,

    /// <summary>The part is well below its limit, yet the bounds of the forecast begin today: it says nothing.</summary>
    Vague,
}

/// <summary>No trend, and why.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Readings">Number of readings.</param>
/// <param name="RateBetweenEnds">Wear per unit of use between first and last reading, where both exist at different use; a bare difference, no forecast.</param>
public sealed record WearTrendUnsaid(WearTrendUnsaidReason Reason, int Readings, double? RateBetweenEnds) : WearTrendResult
{
    /// <summary>The reason in one sentence.</summary>
    public string Words => Reason switch
    {
        WearTrendUnsaidReason.NoReading => "No trend: there is no reading yet.",
        WearTrendUnsaidReason.OneReading => "No trend: one reading shows the wear but not the rate.",
        WearTrendUnsaidReason.TwoReadings => "No trend: two readings give a line without its uncertainty; a third is needed.",
        WearTrendUnsaidReason.OneUse => "No trend: all readings were taken at the same usage.",
        WearTrendUnsaidReason.Flat => "No trend: the readings show no wear beyond their scatter.",
        WearTrendUnsaidReason.Bent => "No trend: the readings bend more than wear does.",
        WearTrendUnsaidReason.Vague => "No trend: the readings are too few or too scattered for a forecast.",
        _ => "No trend: the readings return towards new. Check that it is the same part, measured in the same way.",
    };
}
