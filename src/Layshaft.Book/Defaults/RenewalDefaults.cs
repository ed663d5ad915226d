using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Book.Defaults;

/// <summary>
/// The renewed parts of a finished job without 'renewed': those whose finding says so, and those that are invoiced. A finding with
/// another action, or with a reason why the part was refitted, keeps its part out; the checks then report the invoiced line.
/// </summary>
internal static class RenewalDefaults
{
    public static Job Complete(Job job, ProblemList problems)
    {
        var said = job.Findings.Where(f => f.IsRenewed).ToArray();
        if (job.Origin.Has("renewed"))
        {
            foreach (var finding in said.Where(f => !job.Renewed.Any(r => r.Part == f.Part)))
            {
                problems.Add("action-not-renewed", finding.Origin.At("action"), $"The action of '{finding.Part}' is 'renewed', but 'renewed' does not list it.", "Add it to 'renewed', or correct the action.");
            }

            return job;
        }

        if (job.Finished is null)
        {
            return job;
        }

        var refitted = job.Findings.Where(f => f.LeftIn is not null || (f.Action is not null && !f.IsRenewed)).Select(f => f.Part).ToHashSet(StringComparer.Ordinal);
        var renewed = said.Select(f => (f.Part, f.Origin.Place))
            .Concat(job.Charged.Where(l => l is { Part: not null, Reason: null }).Select(l => (Part: l.Part!, l.Origin.Place)))
            .Where(p => !refitted.Contains(p.Part))
            .DistinctBy(p => p.Part)
            .Select(p => new Renewal(Origin.Of(p.Place), p.Part, null, null, null, null, null, null, null))
            .ToArray();
        return renewed.Length > 0 ? job with { Renewed = renewed } : job;
    }
}
