using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>Which gears for the next event.</summary>
/// <param name="Lead">The answer in a sentence.</param>
/// <param name="Lines">Why, what comes of it, what there is to change.</param>
/// <param name="Guards">What the recommended gears, and the fitted ones, run against.</param>
/// <param name="Better">When another combination is better.</param>
/// <param name="NotBetter">In which conditions none is.</param>
/// <param name="Gears">The recommended gears and what is drawn of them; null if nothing is recommended.</param>
/// <param name="Dogs">The work of the dogs beside the wear found; null when neither is known.</param>
/// <param name="Assumed">What the answer rests on.</param>
/// <param name="LapSheet">Where the lap sheet is.</param>
public sealed record GearingSection(
    string Lead,
    IReadOnlyList<string> Lines,
    IReadOnlyList<string> Guards,
    IReadOnlyList<string> Better,
    IReadOnlyList<string> NotBetter,
    RecommendedGears? Gears,
    DogsView? Dogs,
    IReadOnlyList<NamedValue> Assumed,
    LinkView LapSheet)
{
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

    private static string Heading(EventGearing gearing, Composition composition) =>
        composition.Say("gearing.heading", ("event", gearing.Case.Plan?.Name ?? gearing.Case.Venue.Name));

    private static GearingSection Of(EventGearing gearing, ReportContext report)
    {
        var composition = report.Composition;
        var advice = gearing.Advice;
        return new GearingSection(
            GearingAnswer.Lead(gearing, composition),
            GearingAnswer.Lines(gearing, composition),
            [
                .. advice.Recommended is { } best ? GuardWords.Of(best, composition) : [],
                .. advice is { KeepsFitted: false, Fitted: { PassedLimits.Count: > 0 } fitted }
                    ? GuardWords.Of(fitted, composition).Select(g => composition.Say("gearing.guard_fitted", ("gears", GearingWords.Short(fitted.Set, composition, gearing.Case)), ("sentence", g)))
                    : [],
            ],
            GearingAnswer.Better(gearing, composition),
            GearingAnswer.NotBetter(gearing, composition),
            RecommendedGears.Of(gearing, composition),
            DogsView.Of(gearing, report),
            Assumptions.Of(gearing.Case, composition),
            new LinkView(report.LinkTo(composition.Addresses.LapSheet(report.View, report.Job)), composition.Say("lap.link")));
    }
}

/// <summary>The recommended gears, drawn and with their shift points.</summary>
/// <param name="Name">Their teeth, for the headings.</param>
/// <param name="RankingChart">Time against other combinations.</param>
/// <param name="SpeedChart">Engine speed against road speed in each gear.</param>
/// <param name="ForceChart">Wheel force in each gear.</param>
/// <param name="Shifts">When to shift, and what must never be done.</param>
public sealed record RecommendedGears(string Name, RawHtml RankingChart, RawHtml SpeedChart, RawHtml ForceChart, IReadOnlyList<ShiftRow> Shifts)
{
    internal static RecommendedGears? Of(EventGearing gearing, Composition composition)
    {
        if (gearing.Advice.Recommended is not { } best || GearingCharts.Ranking(gearing, composition) is not { } ranking)
        {
            return null;
        }

        var car = gearing.Case.With(best.Set);
        return new RecommendedGears(
            GearingWords.Short(best.Set, composition, gearing.Case), ranking, GearingCharts.Speeds(best, car, gearing.Case, composition), GearingCharts.Forces(car, composition), ShiftRow.Of(car, composition));
    }
}
