using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment;

/// <summary>What a job comes to.</summary>
/// <param name="Job">The job.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Gearbox">The type of the unit.</param>
/// <param name="Findings">Its findings, judged, as written.</param>
public sealed record JobAssessment(Job Job, Unit Unit, Gearbox Gearbox, IReadOnlyList<FindingAssessment> Findings)
{
    /// <summary>Judges a job.</summary>
    /// <param name="book">The book that it is in.</param>
    /// <param name="job">The job.</param>
    /// <param name="problems">Receives what must be mended.</param>
    public static JobAssessment Of(ShopBook book, Job job, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(job);
        var unit = book.Units[job.Unit];
        var gearbox = book.GearboxOf(unit);
        var assessed = new JobAssessment(
            job,
            unit,
            gearbox,
            [.. job.Findings.Select(f => FindingAssessor.Assess(f, gearbox.PartOf(f.Part)!, job, book.Shop, problems))]);
        AnswerChecks.Run(assessed, book.Shop, problems);
        return assessed;
    }
}
