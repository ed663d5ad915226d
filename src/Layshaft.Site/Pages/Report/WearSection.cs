using Layshaft.Site.Assessment;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>Wear at a glance: how much of each allowance is used, as charts and as a table that leads to the findings.</summary>
/// <param name="Charts">One chart for each pair of thresholds that the parts are judged by.</param>
/// <param name="Caption">Caption of the table.</param>
/// <param name="Parts">The parts that were measured, worst first.</param>
/// <param name="Notes">What to bear in mind with single figures.</param>
public sealed record WearSection(IReadOnlyList<RawHtml> Charts, string Caption, IReadOnlyList<WornPartView> Parts, IReadOnlyList<string> Notes)
{
    /// <summary>Composes the section; null when nothing was measured.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var composition = report.Composition;
        FindingAssessment[] measured = [.. report.InOrder.Where(f => f.Measures.Count > 0)];
        return measured.Length == 0
            ? null
            : new SectionView(
                "wear",
                composition.Say("wear.heading"),
                "sections/wear.html",
                new WearSection(
                    WearCharts.Of(measured, composition),
                    composition.Say("wear.caption"),
                    [.. measured.Select(f => PartOf(f, report))],
                    NotesOf(measured, report)));
    }

    private static WornPartView PartOf(FindingAssessment finding, ReportContext report) => new(
        $"#{report.Anchor(finding)}",
        finding.Part.Name,
        finding.Overruled ? GradeViews.Of(finding.Grade, report.Composition) : null,
        [.. finding.Measures.Select(m => RowOf(m, report.Composition))]);

    private static WearRowView RowOf(MeasureAssessment measure, Composition composition)
    {
        var (asked, figures) = (measure.Measure, composition.Figures);
        var written = Measured.DecimalsWritten(asked.New, asked.Limit);
        return new WearRowView(
            asked.Name,
            Measured.Figure(asked.New, written, figures).Text,
            Measured.Figure(asked.Limit, written, figures).Text,
            Measured.WithUncertainty(measure.Wear.Measured, Measured.DecimalsOf(measure.Instrument?.Resolution, asked.New, asked.Limit), figures),
            measure.Instrument is null ? composition.Say("wear.no_uncertainty") : null,
            figures.Percent(measure.Wear.ShareUsed.Value).Text,
            GradeViews.Of(measure.Grade.Standing, composition));
    }

    // Each remark once, with all that it holds for.
    private static IReadOnlyList<string> NotesOf(IEnumerable<FindingAssessment> findings, ReportContext report) =>
    [
        .. findings
            .SelectMany(f => f.Measures.SelectMany(m => Evidence.Flags(m, f.Part, report).Select(flag => (
                flag.Words, Where: report.Composition.Say("wear.note_where", ("part", f.Part.Name), ("measure", m.Measure.Name))))))
            .GroupBy(n => n.Words, n => n.Where)
            .Select(n => report.Composition.Say("wear.note", ("flag", n.Key), ("where", string.Join("; ", n)))),
    ];
}

/// <summary>A part that was measured.</summary>
/// <param name="Finding">Link to its finding.</param>
/// <param name="Name">The part.</param>
/// <param name="Overruled">The technician's grade where it stands against the measured one; null otherwise.</param>
/// <param name="Rows">What was measured.</param>
public sealed record WornPartView(string Finding, string Name, GradeView? Overruled, IReadOnlyList<WearRowView> Rows);

/// <summary>One measure of a part.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="New">Size when new.</param>
/// <param name="Limit">Wear limit.</param>
/// <param name="Value">Measured, with its uncertainty.</param>
/// <param name="Remark">Said where the uncertainty is not known; null otherwise.</param>
/// <param name="Share">Share of the allowance used.</param>
/// <param name="Grade">The grade that this measure alone gives.</param>
public sealed record WearRowView(string Name, string New, string Limit, string Value, string? Remark, string Share, GradeView Grade);
