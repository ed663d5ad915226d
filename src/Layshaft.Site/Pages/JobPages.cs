using Layshaft.Book.Records;
using Layshaft.Site.Pages.Estimates;

namespace Layshaft.Site.Pages;

/// <summary>Which jobs have a page of their own.</summary>
public static class JobPages
{
    /// <summary>Whether an owner finds something to read on a job: its report, or an estimate that he has to answer.</summary>
    public static bool Exists(OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        return job.Finished is not null || (EstimateComposer.IsOpen(job) && view.IsOwn(job));
    }
}
