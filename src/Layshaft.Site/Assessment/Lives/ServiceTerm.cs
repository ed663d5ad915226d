using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>Something that is set for a unit, whatever the day.</summary>
/// <param name="Part">The part whose service life runs out; null for the unit's next visit.</param>
/// <param name="At">Use of the unit at which it is due; null when only a day is set.</param>
/// <param name="Left">Use until then, 0 or more; null when only a day is set.</param>
/// <param name="By">The earlier of the day that was set and the day at which the use is reached at the unit's mean use; null when neither is known.</param>
public sealed record ServiceTerm(string? Part, EngineUse? At, EngineUse? Left, DateOnly? By)
{
    /// <summary>How pressing it is on a day.</summary>
    /// <param name="asOf">The day.</param>
    public DueState StateOn(DateOnly asOf) => Left is { Amount: <= 0 } || By <= asOf ? DueState.Now
        : By <= asOf.AddDays(ServiceAssessment.SoonInDays) ? DueState.Soon
        : DueState.NotYet;
}
