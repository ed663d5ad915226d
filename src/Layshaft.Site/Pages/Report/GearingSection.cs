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
        return report.IsOwn && report.Composition.Assessment.Gearing.For(report.Job) is { } gearing
            ? new SectionView("gears", Heading(gearing, report.Composition), "sections/gearing.html", Of(gearing, report))
            : null;
    }

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
    private static IReadOnlyList<GearingRow> Rows(EventGearing gearing, Composition composition)
    {
        var ranked = gearing.Ranking.Candidates;
        (string Key, Eng.GearingCandidate? Candidate)[] named =
        [
            ("gearing.row.best", gearing.Best),
            ("gearing.row.chosen", gearing.Chosen),
            ("gearing.row.left", gearing.AsItLeft),
            ("gearing.row.last", gearing.LastEvent),
        ];
        var shown = ranked.Take(FirstRows).ToList();
        shown.AddRange(named.Select(n => n.Candidate).OfType<Eng.GearingCandidate>().Where(c => !shown.Exists(s => EventGearing.IsSame(s, c))).DistinctBy(c => (c.DropPair, c.FinalDrive)));
        return [.. shown.OrderBy(c => c.IsFinished ? 0 : 1).ThenBy(c => c.StraightsTime.Seconds).Select(c => GearingRow.Of(NameOf(c), c, gearing, composition))];

        string NameOf(Eng.GearingCandidate candidate)
        {
            var place = ranked.TakeWhile(r => !EventGearing.IsSame(r, candidate)).Count() + 1;
            string[] words =
            [
                place > ranked.Count ? composition.Say("gearing.row.not_stocked") : composition.Figures.Number(place).Text,
                .. named.Where(n => n.Candidate is { } c && EventGearing.IsSame(c, candidate)).Select(n => composition.Say(n.Key)),
            ];
            return string.Join(", ", words);
        }
    }
}
