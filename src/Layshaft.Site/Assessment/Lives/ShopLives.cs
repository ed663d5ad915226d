using Layshaft.Book.Records;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>What can be said of the life of one group of parts.</summary>
/// <param name="Sampling">The lives that count, and those left out.</param>
/// <param name="Curve">The share still good over use, as the inspections show it.</param>
/// <param name="Estimate">The fitted life distribution, or why there is none.</param>
public sealed record GroupLife(LifeSampling Sampling, TurnbullCurve Curve, LifeEstimate Estimate)
{
    /// <summary>The share that has failed by B10.</summary>
    public const double Tenth = 0.1;

    private readonly Lazy<Bounds?> bounds = new(() => (Estimate as WeibullFit)?.LifeBounds(Tenth));

    /// <summary>Bounds of B10 by likelihood ratio, searched for once for all who ask; null where nothing can be said.</summary>
    public Bounds? TenthBounds => bounds.Value;

    /// <summary>Works it out.</summary>
    public static GroupLife Of(IEnumerable<LifeTotal> lives, UseMeasure measure)
    {
        var sampling = LifeSampling.Of(lives, measure);
        return new GroupLife(sampling, TurnbullCurve.Of(sampling.Sample), Weibull.Fit(sampling.Sample));
    }
}

/// <summary>The lives of one kind of part over the whole shop, in one measure.</summary>
/// <param name="Kind">The kind of part.</param>
/// <param name="Measure">What its lives are counted in.</param>
/// <param name="All">All of them.</param>
/// <param name="ByGear">By the gear that the part serves; empty for a kind that serves none.</param>
/// <param name="ByDriver">By the driver's experience when the part was last seen; lives without it are left out.</param>
public sealed record KindLife(
    PartKind Kind,
    UseMeasure Measure,
    GroupLife All,
    IReadOnlyList<(int Gear, GroupLife Life)> ByGear,
    IReadOnlyList<(DriverExperience Driver, GroupLife Life)> ByDriver);

/// <summary>The life of parts over the whole shop.</summary>
public static class ShopLives
{
    /// <summary>By kind of part and measure, those with most failures first. Kinds of which nothing counts are left out.</summary>
    /// <param name="book">The book, or as much of it as knows its units and gearboxes.</param>
    /// <param name="lives">The lives, in the order in which they first appear.</param>
    public static IReadOnlyList<KindLife> Of(ShopBook book, IReadOnlyList<LifeTally> lives)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(lives);
        return
        [
            .. lives.Select(l => (l.Life, Part: l.PartIn(book), l.Driver)).GroupBy(l => l.Part.Kind)
                .SelectMany(kind => Enum.GetValues<UseMeasure>().Select(m => Of(kind.Key, m, [.. kind])))
                .Where(k => k.All.Sampling.Sample.Lives.Count > 0)
                .OrderByDescending(k => k.All.Sampling.Sample.Failures).ThenBy(k => k.Kind).ThenBy(k => k.Measure),
        ];
    }

    private static KindLife Of(PartKind kind, UseMeasure measure, (LifeTotal Life, Part Part, DriverExperience? Driver)[] known)
    {
        // The rest of a mixed kind is counted in the other measure's own group.
        var here = known.Where(l => l.Life.Total.In(measure) is not null).ToArray();
        return new KindLife(
            kind,
            measure,
            GroupLife.Of(here.Select(l => l.Life), measure),
            [.. here.Where(l => l.Part.Gear is not null).GroupBy(l => l.Part.Gear!.Value).OrderBy(g => g.Key).Select(g => (g.Key, GroupLife.Of(g.Select(l => l.Life), measure)))],
            [.. here.Where(l => l.Driver is not null).GroupBy(l => l.Driver!.Value).OrderBy(g => g.Key).Select(g => (g.Key, GroupLife.Of(g.Select(l => l.Life), measure)))]);
    }
}
