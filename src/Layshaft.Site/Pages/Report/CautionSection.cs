using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>The usual cautions: the shop's and the gearbox's.</summary>
internal static class CautionSection
{
    public static SectionView? Compose(ReportContext report) => new(
        "cautions",
        report.Composition.Say("report.cautions"),
        "sections/cautions.html",
        new LinesView([report.Composition.Say("caution.manual"), .. report.Composition.Shop.Cautions, .. report.Gearbox.Cautions]));
}
