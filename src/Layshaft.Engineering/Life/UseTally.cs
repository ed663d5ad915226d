namespace Layshaft.Engineering.Life;

/// <summary>
/// A total that may hold hours, kilometres and events side by side, because a part can move from a unit counted in one
/// to a unit counted in another. They are kept apart, never converted.
/// </summary>
/// <param name="Hours">Hours, or <c>null</c> when none were counted.</param>
/// <param name="Kilometres">Kilometres, or <c>null</c> when none were counted.</param>
/// <param name="Events">Events, or <c>null</c> when none were counted.</param>
public sealed record UseTally(double? Hours, double? Kilometres, double? Events)
{
    /// <summary>A tally of nothing.</summary>
    public static UseTally Nothing { get; } = new(null, null, null);

    /// <summary>Whether more than one measure is in it, so that no single figure is the part's whole use.</summary>
    public bool IsMixed => Measures.Count > 1;

    /// <summary>The measures in it.</summary>
    public IReadOnlyList<UseMeasure> Measures =>
        [.. Enum.GetValues<UseMeasure>().Where(measure => In(measure) is not null)];

    /// <summary>The amount in one measure.</summary>
    /// <param name="measure">The measure.</param>
    /// <returns>The amount, or <c>null</c> when none was counted in it.</returns>
    public double? In(UseMeasure measure) => measure switch
    {
        UseMeasure.Hours => Hours,
        UseMeasure.Kilometres => Kilometres,
        _ => Events,
    };

    /// <summary>The tally with one more amount in its own measure.</summary>
    /// <param name="use">The amount to add.</param>
    /// <returns>A new tally.</returns>
    public UseTally Plus(Use use) => use.Measure switch
    {
        UseMeasure.Hours => this with { Hours = (Hours ?? 0) + use.Amount },
        UseMeasure.Kilometres => this with { Kilometres = (Kilometres ?? 0) + use.Amount },
        _ => this with { Events = (Events ?? 0) + use.Amount },
    };
}
