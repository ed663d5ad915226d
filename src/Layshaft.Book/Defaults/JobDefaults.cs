using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Book.Defaults;

/// <summary>
/// Completes a job with what the rest of the book knows, so that pages and checks see it as if it were written. A written value
/// is never replaced.
/// </summary>
internal static class JobDefaults
{
    /// <summary>Completes a job.</summary>
    /// <param name="job">The job as written.</param>
    /// <param name="draft">The book without its jobs.</param>
    /// <param name="isLost">Whether an item of a file was left out because of a mistake in it.</param>
    /// <param name="problems">Receives contradictions.</param>
    public static Job Complete(Job job, Draft draft, Func<string, string, bool> isLost, ProblemList problems)
    {
        if (draft.Units.Get(job.Unit) is not { } unit || draft.Gearboxes.Get(unit.Gearbox) is not { } box)
        {
            return job;
        }

        job = InspectionDefaults.Complete(job, box, name => isLost(box.Origin.Place.File, name), problems);
        job = ReadingDefaults.Complete(job, box, problems);
        job = TickDefaults.Complete(job, box, problems);
        job = EstimateDefaults.Complete(job, box, draft.Shop);
        job = RenewalDefaults.Complete(job, problems);
        return PhotoDefaults.Complete(job, box, draft.Files);
    }
}
