using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>The cautions of every customer page: for whoever drives the car, and for whoever works on it.</summary>
/// <param name="Driving">First what this page is, then the gearbox's own and the shop's, which apply to a unit that goes back.</param>
/// <param name="Working">Before work on car or gearbox.</param>
public sealed record CautionSection(IReadOnlyList<string> Driving, IReadOnlyList<string> Working)
{
    private static readonly string[] ToDrive = ["caution.manual", "caution.road"];
    private static readonly string[] ToWork = ["caution.work", "caution.stands", "caution.lift", "caution.hot"];

    /// <summary>Composes the section.</summary>
    public static SectionView Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var composition = report.Composition;
        IEnumerable<string> own = report.Job.Finished is null ? [] : [.. composition.Shop.Cautions, .. report.Gearbox.Cautions];
        return new SectionView(
            "cautions",
            composition.Say("report.cautions"),
            "sections/cautions.html",
            new CautionSection([.. ToDrive.Concat(Differential(report)).Select(key => composition.Say(key)), .. own], [.. ToWork.Select(key => composition.Say(key))]));
    }

    // A plate differential drives a wheel that touches the ground even while the other one is lifted.
    private static string[] Differential(ReportContext report) => report.Gearbox.Differential is null ? [] : ["caution.differential"];
}
