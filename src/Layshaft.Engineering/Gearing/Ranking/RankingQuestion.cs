namespace Layshaft.Engineering.Gearing;

/// <summary>What is to be ranked.</summary>
/// <param name="Car">The car on the planned day; its own drop pair and final drive do not count, its gears do.</param>
/// <param name="Venue">The venue.</param>
/// <param name="Stock">The drop pairs and final drives to choose from.</param>
public sealed record RankingQuestion(Car Car, Venue Venue, GearingStock Stock)
{
    /// <summary>Sets that are not combinations of the stock, such as the fitted one: ranked with the rest.</summary>
    public IReadOnlyList<GearSet> Others { get; init; } = [];

    /// <summary>What is fitted; null if it is not known. Combinations of the stock have its gears.</summary>
    public GearSet? Fitted { get; init; }

    /// <summary>
    /// The pairs to choose from in each position of a box whose pairs can be changed, first gear first, the fitted one included; empty if
    /// they cannot. The fastest combinations of them are ranked too.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<ToothPair>> GearPairs { get; init; } = [];

    /// <summary>Working time to change gears.</summary>
    public ChangeWork Work { get; init; } = ChangeWork.Usual;

    /// <summary>How many gears of a set the owner would have to buy or borrow; the fewer the better where work and time are the same.</summary>
    public Func<GearSet, int> Bought { get; init; } = _ => 0;

    /// <summary>The ways in which the day may differ; the ranking is done again for each.</summary>
    public IReadOnlyList<ConditionChange> Changes { get; init; } = ConditionChange.Usual;

    /// <summary>How far the inputs may be off; null for <see cref="InputRange.Usual"/>.</summary>
    public IReadOnlyList<InputRange>? Ranges { get; init; }

    /// <summary>The limits to hold each candidate against.</summary>
    public GearingGuards Guards { get; init; } = new();
}
