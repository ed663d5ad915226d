using Layshaft.Site.Html;
using Layshaft.Site.Notes;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What was wrong, in the customer's words and the shop's.</summary>
/// <param name="Complaint">The customer's words.</param>
/// <param name="Notes">The shop's notes on the job; null for none.</param>
public sealed record ComplaintSection(string Complaint, RawHtml? Notes)
{
    /// <summary>Composes the section; null for a job of an earlier owner, whose words stay his.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (!report.IsOwn)
        {
            return null;
        }

        var notes = report.Job.Notes is { } file && report.Composition.Notes.TryGetValue($"{report.Job.Folder}/{file}", out var text)
            ? NoteRenderer.Render(text, 2).Html
            : null;
        return new SectionView(
            "complaint", report.Composition.Say("report.complaint"), "sections/complaint.html", new ComplaintSection(report.Job.Complaint, notes));
    }
}
