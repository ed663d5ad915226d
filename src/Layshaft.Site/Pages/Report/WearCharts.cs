using Layshaft.Site.Assessment;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Wear;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>
/// Draws how much of its allowance each part has used, by its most worn measure. Parts with other thresholds get a chart
/// of their own: a line across bars may only stand for the bars that it judges.
/// </summary>
internal static class WearCharts
{
    public static IReadOnlyList<RawHtml> Of(IEnumerable<FindingAssessment> measured, Composition composition) =>
    [
        .. measured
            .GroupBy(f => (f.Part.Grading.WatchFrom, f.Part.Grading.RenewFrom))
            .Select((group, i) => Chart(FormattableString.Invariant($"wear{(char)('a' + i)}"), [.. group], composition)),
    ];

    private static RawHtml Chart(string id, IReadOnlyList<FindingAssessment> findings, Composition composition)
    {
        var grading = findings[0].Part.Grading;
        var figures = composition.Figures;
        var (watch, renew) = (figures.Percent(grading.WatchFrom).Text, figures.Percent(grading.RenewFrom).Text);
        WearBar[] bars = [.. findings.Select(f => Bar(f, composition)).OrderByDescending(b => b.Share)];
        var input = new WearBarsInput(
            new ChartFrame(
                id,
                composition.Say("wear.chart.title"),
                composition.Say("wear.chart.description", ("watch", watch), ("renew", renew), ("parts", string.Join("; ", bars.Select(b => $"{b.Name}: {b.ValueText}"))))),
            bars,
            new Axis(composition.Say("wear.chart.axis"), v => figures.Percent(v).Text),
            new LevelMark(grading.WatchFrom, composition.Say("wear.chart.watch", ("share", watch))),
            new LevelMark(grading.RenewFrom, composition.Say("wear.chart.renew", ("share", renew))));
        return ChartPair.Of(input, WearBars.Draw);
    }

    private static WearBar Bar(FindingAssessment finding, Composition composition)
    {
        var worst = finding.Measures.MaxBy(m => m.Wear.ShareUsed.Value)!;
        var (share, measure) = (worst.Wear.ShareUsed, worst.Measure);
        var decimals = Measured.DecimalsOf(worst.Instrument?.Resolution, measure.New, measure.Limit);
        return new WearBar(
            finding.Part.Name,
            share.Value,
            share.UncertaintyIsKnown ? share.Lower : null,
            share.UncertaintyIsKnown ? share.Upper : null,
            GradeViews.Mark(finding.Grade, composition),
            composition.Say(
                "wear.chart.value",
                ("value", Measured.Figure(worst.Wear.Measured.Value, decimals, composition.Figures).Text),
                ("share", composition.Figures.Percent(share.Value).Text)));
    }
}
