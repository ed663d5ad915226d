using Layshaft.Book.Records;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What was done: parts renewed and why, lists signed.</summary>
/// <param name="RenewedCaption">Caption of the table.</param>
/// <param name="Renewed">Parts renewed.</param>
/// <param name="Lines">Further sentences.</param>
/// <param name="Declined">Work that was offered and declined, a sentence each.</param>
/// <param name="DeclinedHeading">How much was declined; null for nothing.</param>
/// <param name="DeclinedCaution">What follows when essential work was declined; null when none was.</param>
public sealed record WorkSection(
    string RenewedCaption, IReadOnlyList<RenewedView> Renewed, IReadOnlyList<string> Lines, IReadOnlyList<string> Declined, string? DeclinedHeading, string? DeclinedCaution)
{
    /// <summary>Composes the section.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var (composition, job) = (report.Composition, report.Job);
        RenewedView[] renewed =
        [
            .. job.Renewed.Select(r => new RenewedView(
                report.Gearbox.PartOf(r.Part)!.Name,
                SerialOf(r, composition),
                r.Why ?? WhyOf(report, r.Part))),
        ];
        var lines = new List<string>();
        if (job.BuildList is { } build && report.Gearbox.Build.Count > 0)
        {
            var signer = composition.Shop.Technicians.FirstOrDefault(t => t.Id == build.SignedBy)?.Name;
            lines.Add(signer is null
                ? composition.Say("work.build_list", ("done", build.Done.Count), ("steps", report.Gearbox.Build.Count))
                : composition.Say("work.build_list_signed", ("done", build.Done.Count), ("steps", report.Gearbox.Build.Count), ("name", signer)));
        }

        lines.AddRange(ServiceLifeWords.AsLeft(job, composition));
        lines.AddRange(LeftOut(report));
        lines.AddRange(report.IsOwn ? Unapproved(report) : []);
        string[] declined = report.IsOwn ? [.. DeclinedLines.Of(job, report.Gearbox, composition)] : [];
        return new SectionView(
            "work",
            composition.Say("report.work"),
            "sections/work.html",
            new WorkSection(
                composition.Say("work.renewed", ("count", renewed.Length)),
                renewed,
                lines,
                declined,
                declined.Length > 0 ? composition.Say("work.declined", ("count", declined.Length)) : null,
                report.IsOwn ? DeclinedLines.Caution(job.Offers.SelectMany(o => o.Declined), composition) : null));
    }

    private static string? SerialOf(Renewal renewal, Composition composition)
    {
        string?[] words =
        [
            renewal.Serial,
            renewal.Use is { } use ? composition.Say("work.used", ("use", UseWords.Of(use, composition))) : null,
        ];
        return words.OfType<string>().ToArray() is { Length: > 0 } some ? string.Join(", ", some) : null;
    }

    private static IEnumerable<string> LeftOut(ReportContext report) => (report.Job.BuildList?.LeftOut ?? []).Select(l =>
        report.Composition.Say("work.left_out", ("step", report.Gearbox.Build.First(s => s.Id == l.Step).Do), ("reason", l.Reason)));

    private static IEnumerable<string> Unapproved(ReportContext report) => report.Job.Renewed.Where(r => r.Unapproved is not null).Select(r =>
        report.Composition.Say("work.unapproved", ("part", report.Gearbox.PartOf(r.Part)!.Name), ("reason", r.Unapproved!)));

    // A reason that the job does not give again stands in the part's finding.
    private static string WhyOf(ReportContext report, string part) =>
        report.Job.Findings.FirstOrDefault(f => f.Part == part)?.Sentence ?? string.Empty;
}

/// <summary>A renewed part as the report shows it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Serial">Serial or batch, and use before; null for neither.</param>
/// <param name="Why">Why it was renewed.</param>
public sealed record RenewedView(string Part, string? Serial, string Why);
