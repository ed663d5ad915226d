using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>Which gears for the next event.</summary>
/// <param name="Lead">The recommendation in a sentence.</param>
/// <param name="Lines">What was chosen, the runner-up, what would change the choice.</param>
/// <param name="Compared">The recommendation beside what is fitted.</param>
/// <param name="Ranked">The first rows of the ranking.</param>
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
    GearingTable Compared,
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
            new GearingTable(composition.Say("gearing.compared"), composition.Say("gearing.head.what"), Comparison(gearing, composition)),
            new GearingTable(
                composition.Say("gearing.ranked", ("first", Math.Min(FirstRows, ranked.Count)), ("choices", ranked.Count)),
                composition.Say("gearing.head.place"),
                [.. ranked.Take(FirstRows).Select((c, i) => GearingRow.Of(composition.Figures.Number(i + 1).Text, c, gearing, composition))]),
            GearingCharts.Speeds(gearing, composition),
            GearingCharts.Forces(gearing, composition),
            [.. gearing.Ranking.Changes.Select(c => ChangeRow.Of(c, gearing.Best, composition))],
            ShiftRow.Of(gearing, composition),
            DogsView.Of(gearing, report),
            GuardWords.Of(gearing.Driven, composition),
            Assumptions.Of(gearing.Case, composition));
    }

    // Each set of gears once, under the first of its names.
    private static IReadOnlyList<GearingRow> Comparison(EventGearing gearing, Composition composition)
    {
        (string Key, Eng.GearingCandidate? Candidate)[] named =
        [
            ("gearing.row.best", gearing.Best),
            ("gearing.row.chosen", gearing.Chosen),
            ("gearing.row.left", gearing.AsItLeft),
            ("gearing.row.last", gearing.LastEvent),
        ];
        var rows = new List<(Eng.GearingCandidate Candidate, List<string> Names)>();
        foreach (var (key, candidate) in named)
        {
            if (candidate is null)
            {
                continue;
            }

            if (rows.Find(r => EventGearing.IsSame(r.Candidate, candidate)) is { Names: { } names })
            {
                names.Add(composition.Say(key));
            }
            else
            {
                rows.Add((candidate, [composition.Say(key)]));
            }
        }

        return [.. rows.Select(r => GearingRow.Of(string.Join("; ", r.Names), r.Candidate, gearing, composition))];
    }
}
