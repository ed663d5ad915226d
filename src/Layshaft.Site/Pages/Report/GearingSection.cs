using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>Which gears for the next event.</summary>
/// <param name="Lead">The recommendation in a sentence.</param>
/// <param name="Lines">What was chosen, the runner-up, what would change the choice.</param>
/// <param name="Ranked">The first rows of the ranking, with the recommendation, the choice and what was fitted.</param>
/// <param name="SpeedChart">Engine speed against road speed in each gear.</param>
/// <param name="ForceChart">Wheel force in each gear.</param>
/// <param name="Changes">The ranking on changed days.</param>
/// <param name="Shifts">When to shift, and what must never be done.</param>
/// <param name="Dogs">The work of the dogs beside the wear found; null when neither is known.</param>
/// <param name="Guards">What the gearing runs against.</param>
/// <param name="Assumed">The figures that were assumed.</param>
public sealed record GearingSection(
    string Lead,
    IReadOnlyList<string> Lines,
    GearingTable Ranked,
    RawHtml SpeedChart,
    RawHtml ForceChart,
    IReadOnlyList<ChangeRow> Changes,
    IReadOnlyList<ShiftRow> Shifts,
    DogsView? Dogs,
    IReadOnlyList<string> Guards,
    IReadOnlyList<NamedValue> Assumed)
{
    private const int FirstRows = 6;

    /// <summary>Composes the section; null when the event is another owner's, not planned, or cannot be worked out.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return GearingOf(report) is { } gearing
            ? new SectionView("gears", Heading(gearing, report.Composition), "sections/gearing.html", Of(gearing, report))
            : null;
    }

    /// <summary>The gearing that the reader of a report may see; null for none.</summary>
    internal static EventGearing? GearingOf(ReportContext report) => report.IsOwn ? report.Composition.Assessment.Gearing.For(report.Job) : null;

    /// <summary>Every choice in stock by its place, then what was chosen or fitted without being in stock (no place).</summary>
    internal static IEnumerable<(int? Place, Eng.GearingCandidate Candidate)> Candidates(EventGearing gearing)
    {
        var ranked = gearing.Ranking.Candidates;
        return ranked.Select((c, i) => ((int?)(i + 1), c)).Concat(Named(gearing)
            .Select(n => n.Candidate).OfType<Eng.GearingCandidate>()
            .Where(c => !ranked.Any(r => EventGearing.IsSame(r, c)))
            .DistinctBy(c => (c.DropPair, c.FinalDrive))
            .Select(c => ((int?)null, c)));
    }

    /// <summary>What a choice is called besides its place, such as "fitted as it left us"; null for nothing.</summary>
    internal static string? Names(Eng.GearingCandidate candidate, EventGearing gearing, Composition composition)
    {
        string[] names = [.. Named(gearing).Where(n => n.Candidate is { } c && EventGearing.IsSame(c, candidate)).Select(n => composition.Say(n.Key))];
        return names.Length > 0 ? string.Join(", ", names) : null;
    }

    private static (string Key, Eng.GearingCandidate? Candidate)[] Named(EventGearing gearing) =>
    [
        ("gearing.row.best", gearing.Best),
        ("gearing.row.chosen", gearing.Chosen),
        ("gearing.row.left", gearing.AsItLeft),
        ("gearing.row.last", gearing.LastEvent),
    ];

    private static string Heading(EventGearing gearing, Composition composition) =>
        composition.Say("gearing.heading", ("event", EventName(gearing)));

    private static string EventName(EventGearing gearing) => gearing.Case.Plan?.Name ?? gearing.Case.Venue.Name;

    private static GearingSection Of(EventGearing gearing, ReportContext report)
    {
        var composition = report.Composition;
        var ranked = gearing.Ranking.Candidates;
        return new GearingSection(
            composition.Say(
                "gearing.lead",
                ("venue", gearing.Case.Venue.Name),
                ("gears", GearingWords.Gears(gearing.Best, composition)),
                ("speed", composition.Figures.Speed(gearing.Best.TopSpeed).Both),
                ("rpm", composition.Figures.Rpm(gearing.Best.EngineSpeedAtTop).Text)),
            GearingVerdict.Lines(gearing, composition),
            new GearingTable(
                composition.Say("gearing.ranked", ("first", Math.Min(FirstRows, ranked.Count)), ("choices", ranked.Count)),
                composition.Say("gearing.head.place"),
                Rows(gearing, composition)),
            GearingCharts.Speeds(gearing, composition),
            GearingCharts.Forces(gearing, composition),
            [.. gearing.Ranking.Changes.Select(c => ChangeRow.Of(c, gearing.Best, composition))],
            ShiftRow.Of(gearing, composition),
            DogsView.Of(gearing, report),
            GuardWords.Of(gearing.Driven, composition),
            Assumptions.Of(gearing.Case, composition));
    }

    // The first places, and below them what has a name; each set of gears once.
    private static IReadOnlyList<GearingRow> Rows(EventGearing gearing, Composition composition) =>
    [
        .. Candidates(gearing)
            .Select(c => (c.Place, c.Candidate, Names: Names(c.Candidate, gearing, composition)))
            .Where(c => c.Place <= FirstRows || c.Names is not null)
            .OrderBy(c => c.Candidate.IsFinished ? 0 : 1).ThenBy(c => c.Candidate.StraightsTime.Seconds)
            .Select(c => GearingRow.Of(string.Join(", ", new[] { PlaceWords(c.Place, composition), c.Names }.OfType<string>()), c.Candidate, gearing, composition)),
    ];

    private static string PlaceWords(int? place, Composition composition) =>
        place is { } known ? composition.Figures.Number(known).Text : composition.Say("gearing.row.not_stocked");
}
