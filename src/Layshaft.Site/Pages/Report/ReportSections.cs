using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>
/// The sections of a report in their order: what was wrong, show me, what did you do, what does it cost, how do I drive
/// it, which gears, when do I come back. A section that has nothing to say is left out.
/// </summary>
internal static class ReportSections
{
    private static readonly Func<ReportContext, SectionView?>[] InOrder =
    [
        ComplaintSection.Compose,
        StackSection.Compose,
        FindingsSection.Compose,
        WearSection.Compose,
        WorkSection.Compose,
        SettingsSection.Compose,
        MoneySection.Compose,
        DrivingSection.Compose,
        GearingSection.Compose,
        ReturnSection.Compose,
        CautionSection.Compose,
        ReportTables.Section,
    ];

    public static IEnumerable<SectionView> All(ReportContext report) => InOrder.Select(s => s(report)).OfType<SectionView>();
}
