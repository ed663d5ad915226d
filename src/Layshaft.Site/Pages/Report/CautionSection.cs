using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>The cautions of every customer page in their order, then the shop's and the gearbox's own, which speak of a unit that goes back.</summary>
internal static class CautionSection
{
    private static readonly string[] Always = ["caution.manual", "caution.work", "caution.stands", "caution.lift", "caution.hot", "caution.road"];

    public static SectionView? Compose(ReportContext report) => new(
        "cautions",
        report.Composition.Say("report.cautions"),
        "sections/cautions.html",
        new LinesView([.. Always.Concat(Differential(report)).Select(key => report.Composition.Say(key)), .. report.Job.Finished is null ? Array.Empty<string>() : [.. report.Composition.Shop.Cautions, .. report.Gearbox.Cautions]]));

    // A plate differential drives a wheel that touches the ground even while the other one is lifted.
    private static string[] Differential(ReportContext report) => report.Gearbox.Differential is null ? [] : ["caution.differential"];
}
