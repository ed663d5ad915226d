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
                check.Problems.Add("duplicate-id", Places.Place.WholeFile(job.Folder), $"Two jobs have the number {job.Number}.", $"The other is in {numbers[job.Number]}/. Change one of the numbers.");
            }
        }

        foreach (var jobs in check.Draft.Jobs.GroupBy(j => j.Unit))
        {
            var unit = check.Draft.Units.Get(jobs.Key);
            var least = unit?.UseAtStart.Amount ?? 0;
            var since = "at the start of the unit's history";
            Records.Job? before = null;
            foreach (var job in jobs)
            {
                StillHere(check, before, job);
                DifferentialChecks.Between(check, before, job);
                before = job;
                if (unit is not null && job.Use.Unit == unit.UseAtStart.Unit && job.Use.Amount < least)
                {
                    check.Problems.Add("use-goes-back", job.Origin.At("use"), $"The usage ({job.Use}) is less than {since} ({job.Use with { Amount = least }}).", "Write the total usage, not the usage since the last job.");
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
            { Collected: { } collected } => collected > job.Received ? $"was not collected until {Checker.Day(collected)}" : null,
            { Finished: { } finished } => finished > job.Received ? $"was not finished until {Checker.Day(finished)}" : null,
            { Stage: Records.JobStage.Declined } => "was declined, and the unit was not collected",
            _ => "is still open",
        };
        if (still is not null)
        {
            check.Problems.Note("still-on-bench", job.Origin.At("received"), $"The unit was received on {Checker.Day(job.Received)}, but job {before!.Number} {still}.", $"Check 'unit' and the dates of both jobs, and close job {before.Number}.");
        }
    }
}
