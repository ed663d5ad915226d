using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>
/// The sections of a report in their order: what was wrong, how do I drive it, show me, what did you do, which gears, what does it
/// cost. A section that has nothing to say is left out.
/// </summary>
internal static class ReportSections
{
    private static readonly Func<ReportContext, SectionView?>[] InOrder =
    [
        ComplaintSection.Compose,
        DrivingSection.Compose,
        FindingsSection.Compose,
        TraceSection.Compose,
        StackSection.Compose,
        WorkSection.Compose,
        SettingsSection.Compose,
        DifferentialSection.Compose,
        GearingSection.Compose,
        MoneySection.Compose,
        CautionSection.Compose,
        ReportTables.Section,
    ];

    public static IEnumerable<SectionView> All(ReportContext report) => InOrder.Select(s => s(report)).OfType<SectionView>();
}
