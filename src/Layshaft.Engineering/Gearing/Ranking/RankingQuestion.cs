namespace Layshaft.Engineering.Gearing;

/// <summary>What is to be ranked.</summary>
/// <param name="Car">The car on the planned day; its own drop pair and final drive do not count, its gears do.</param>
/// <param name="Venue">The venue.</param>
/// <param name="Stock">The drop pairs and final drives to choose from.</param>
public sealed record RankingQuestion(Car Car, Venue Venue, GearingStock Stock)
{
    /// <summary>The ways in which the day may differ; the ranking is done again for each.</summary>
    public IReadOnlyList<ConditionChange> Changes { get; init; } = ConditionChange.Usual;

    /// <summary>The limits to hold each candidate against.</summary>
    public GearingGuards Guards { get; init; } = new();
}
