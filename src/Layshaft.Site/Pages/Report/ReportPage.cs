using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>A customer's report on one job: what <c>report.html</c> places.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Block">Title block.</param>
/// <param name="Verdict">The verdict in one sentence.</param>
/// <param name="NextStep">What it needs next, and by when; null when nothing is said.</param>
/// <param name="Tally">How many parts got each grade.</param>
/// <param name="Sections">Everything else, in the order in which a customer asks.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record ReportPage(
    PageHead Head,
    string Heading,
    TitleBlock Block,
    string Verdict,
    string? NextStep,
    IReadOnlyList<TallyView> Tally,
    IReadOnlyList<SectionView> Sections,
    PageFoot Foot);
