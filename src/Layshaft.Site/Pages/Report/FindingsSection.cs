using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Reference;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What was found: each part with its picture, one sentence, the evidence, the decision. Worst first.</summary>
/// <param name="Findings">The findings.</param>
/// <param name="Words">The words for damage in them, each once: on paper nothing can be unfolded.</param>
/// <param name="Others">Pictures that belong to no finding.</param>
/// <param name="Remark">The shop's remark on its pictures; null for none.</param>
public sealed record FindingsSection(
    IReadOnlyList<FindingView> Findings, IReadOnlyList<TermView> Words, IReadOnlyList<PictureView> Others, string? Remark)
{
    /// <summary>Composes the section; null when there is nothing to show.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var pictures = new ReportPictures(report);
        FindingView[] findings = [.. report.InOrder.Select((f, i) => View(f, i + 1, report, pictures))];
        var others = pictures.Others();
        return findings.Length == 0 && others.Count == 0
            ? null
            : new SectionView(
                "findings",
                report.Composition.Say("report.findings"),
                "sections/findings.html",
                new FindingsSection(findings, [.. findings.SelectMany(f => f.Conditions).DistinctBy(t => t.Word)], others, pictures.Any ? report.Composition.Shop.PhotoRemark : null));
    }

    private static FindingView View(FindingAssessment assessed, int number, ReportContext report, ReportPictures pictures)
    {
        var (finding, composition) = (assessed.Finding, report.Composition);
        var where = string.Join(", ", new[] { FlankWords(finding, composition), finding.Position }.OfType<string>());
        return new FindingView(
            report.Anchor(assessed),
            FormattableString.Invariant($"{number}"),
            assessed.Part.Name,
            where.Length > 0 ? where : null,
            GradeViews.Of(assessed.Grade, composition),
            finding.Sentence,
            [.. assessed.Measures.SelectMany(m => Evidence.Lines(m, assessed.Part, report))],
            [.. finding.Conditions.Select(c => DamageTerms.All.FirstOrDefault(t => t.Word == c)).OfType<DamageTerm>().Select(t => TermView.Of(t, composition))],
            finding.Action is { } action ? composition.Say("finding.decision", ("action", action)) : null,
            finding.LeftIn is { } reason && !report.Job.Renewed.Any(r => r.Part == finding.Part) ? composition.Say("finding.left_in", ("reason", reason)) : null,
            assessed is { Overruled: true, ByPolicy: { } policy }
                ? composition.Say("finding.overruled", ("policy", GradeViews.Of(policy, composition).Name), ("given", GradeViews.Of(assessed.Grade, composition).Name), ("reason", finding.Reason ?? string.Empty))
                : null,
            finding.IfLeft is { } ifLeft ? composition.Say("finding.if_left", ("what", ifLeft)) : null,
            pictures.Of(finding));
    }

    private static string? FlankWords(Finding finding, Composition composition) => finding.Flank switch
    {
        Flank.Drive => composition.Say("flank.drive"),
        Flank.Coast => composition.Say("flank.coast"),
        _ => null,
    };
}

/// <summary>A finding as the report shows it.</summary>
/// <param name="Id">Anchor.</param>
/// <param name="Number">Its number on the sheet.</param>
/// <param name="Part">The part.</param>
/// <param name="Where">Side and position; null when not said.</param>
/// <param name="Grade">The grade that stands.</param>
/// <param name="Sentence">One sentence for the customer; null for none.</param>
/// <param name="Evidence">Measured against new and limit.</param>
/// <param name="Conditions">The damage seen.</param>
/// <param name="Decision">What was decided; null when not said.</param>
/// <param name="LeftIn">Why it went back in though graded renew; null when not said.</param>
/// <param name="Overruled">Both grades and the reason; null when they agree.</param>
/// <param name="IfLeft">What happens if it is left; null when not said.</param>
/// <param name="Pictures">Its pictures.</param>
public sealed record FindingView(
    string Id,
    string Number,
    string Part,
    string? Where,
    GradeView Grade,
    string? Sentence,
    IReadOnlyList<string> Evidence,
    IReadOnlyList<TermView> Conditions,
    string? Decision,
    string? LeftIn,
    string? Overruled,
    string? IfLeft,
    IReadOnlyList<PictureView> Pictures);
