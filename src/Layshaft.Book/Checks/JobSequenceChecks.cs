namespace Layshaft.Book.Checks;

/// <summary>What must hold between the jobs of a book.</summary>
internal static class JobSequenceChecks
{
    public static void Run(Checker check)
    {
        var numbers = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var job in check.Draft.Jobs)
        {
            if (!numbers.TryAdd(job.Number, job.Folder))
            {
                check.Problems.Add("duplicate-id", Places.Place.WholeFile(job.Folder), $"Two jobs have the number {job.Number}.", $"The other is {numbers[job.Number]}; give one of them another number.");
            }
        }

        foreach (var jobs in check.Draft.Jobs.GroupBy(j => j.Unit))
        {
            var unit = check.Draft.Units.Get(jobs.Key);
            var least = unit?.UseAtStart.Amount ?? 0;
            var since = "when the unit's story begins";
            Records.Job? before = null;
            foreach (var job in jobs)
            {
                StillHere(check, before, job);
                before = job;
                if (unit is not null && job.Use.Unit == unit.UseAtStart.Unit && job.Use.Amount < least)
                {
                    check.Problems.Add("use-goes-back", job.Origin.At("use"), $"The unit has run less ({job.Use}) than {since} ({job.Use with { Amount = least }}).", "Write what it has run in all, not since the last job.");
                    continue;
                }

                least = job.Use.Amount;
                since = $"in job {job.Number}";
            }
        }
    }

    // A unit is on the bench once: the second job is often another unit's, or the first was never closed.
    private static void StillHere(Checker check, Records.Job? before, Records.Job job)
    {
        var still = before switch
        {
            null => null,
            { Collected: { } collected } => collected > job.Received ? $"was collected on {Checker.Day(collected)} only" : null,
            { Finished: { } finished } => finished > job.Received ? $"was finished on {Checker.Day(finished)} only" : null,
            { Stage: Records.JobStage.Declined } => "was declined, and the unit was not collected",
            _ => "is still open",
        };
        if (still is not null)
        {
            check.Problems.Note("still-on-bench", job.Origin.At("received"), $"The unit came in on {Checker.Day(job.Received)}, but job {before!.Number} {still}.", $"Check 'unit' and the dates of both jobs, and close job {before.Number}.");
        }
    }
}
