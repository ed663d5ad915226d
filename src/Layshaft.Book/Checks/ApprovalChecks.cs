using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

/// <summary>What was renewed and charged, against what the customer approved. A written reason answers each of these.</summary>
internal static class ApprovalChecks
{
    public static void Run(Checker check, Job job)
    {
        var lines = new PartLines(job);
        foreach (var renewal in job.Renewed.Where(r => r.Unapproved is null && r.Part is not null))
        {
            Renewed(check, job, renewal, lines);
        }

        if (job.Finished is not null)
        {
            Declined(check, job);
            ChargedParts(check, job, lines);
            if (job.Offers.Count == 0 && job.Final.Any(l => l.Reason is null))
            {
                check.Problems.Note("charged-without-estimate", job.Origin.At("final"), "This is invoiced, but the job has no estimate and no go-ahead.", "Add both, or add 'reason: …' to each line.");
            }
        }
        else if (job.Stage == JobStage.Declined)
        {
            Refused(check, job);
        }
    }

    private static void Renewed(Checker check, Job job, Renewal renewal, PartLines lines)
    {
        var (part, place) = (renewal.Part, renewal.Origin.At("part"));
        if (lines.Approved.Contains(part))
        {
            return;
        }

        if (lines.Waiting.Contains(part))
        {
            check.Problems.Add("renewed-before-answer", place, $"'{part}' is renewed, but the customer has not answered yet.", "Add the answer, or 'unapproved: …' with the reason.");
        }
        else if (lines.Declined.Contains(part))
        {
            check.Problems.Add("renewed-though-declined", place, $"'{part}' is renewed, but the customer declined it.", "Correct the answer, or add 'unapproved: …' with the reason.");
        }
        else if (!job.Final.Any(l => l.Part == part))
        {
            check.Problems.Note("renewed-not-offered", place, $"'{part}' is renewed, but it was neither offered to the customer nor invoiced.", "Add a supplement with its answer, or 'unapproved: …' with the reason.");
        }
    }

    // The report lists what was declined, with what happens if it is left.
    private static void Declined(Checker check, Job job)
    {
        foreach (var line in job.Offers.SelectMany(o => o.Declined).Where(l => l.IfLeft is null))
        {
            check.Problems.Note("no-if-left", line.Origin.Place, $"The customer declined '{line.What}', but the report has no text on what happens if it is not done.", "Add 'if_left: …'.");
        }
    }

    private static void ChargedParts(Checker check, Job job, PartLines lines)
    {
        foreach (var part in job.Charged.Where(l => l.Part is not null).GroupBy(l => l.Part!))
        {
            if (part.Any(l => l.Reason is not null))
            {
                continue;
            }

            var (place, fitted) = (part.Last().Origin.At("part"), job.Renewed.Count(r => r.Part == part.Key));
            var remedy = job.Final.Count > 0 ? "Correct 'final', or add 'reason: …' to the line." : "Correct 'renewed', or write the invoiced lines under 'final'.";
            if (fitted == 0)
            {
                check.Problems.Add("charged-not-fitted", place, $"'{part.Key}' is invoiced, but 'renewed' does not list it.", remedy);
            }
            else if (part.Count() > fitted)
            {
                check.Problems.Add("charged-twice", place, $"'{part.Key}' is invoiced on {part.Count()} lines, but renewed {(fitted == 1 ? "once" : $"{fitted} times")}.", remedy);
            }

            if (job.Offers.Count == 0)
            {
                continue;
            }

            var approved = job.Approved.Where(l => l.Part == part.Key).Sum(l => (long)l.Quantity);
            if (approved == 0)
            {
                check.Problems.Add("charged-not-approved", place, $"'{part.Key}' is invoiced, but the customer {(lines.Declined.Contains(part.Key) ? "declined it" : "was not offered it")}.", remedy);
            }
            else if (part.Sum(l => (long)l.Quantity) is var charged && charged > approved)
            {
                check.Problems.Add("charged-not-approved", place, $"'{part.Key}' is invoiced {charged} times, but the customer approved {approved}.", remedy);
            }
        }
    }

    private static void Refused(Checker check, Job job)
    {
        foreach (var line in job.Final.Where(l => l.Part is not null && l.Reason is null))
        {
            check.Problems.Add("charged-after-refusal", line.Origin.At("part"), $"'{line.Part}' is invoiced, but the customer declined everything.", "Remove the line, or add 'reason: …'.");
        }
    }

    // The parts in the offers, by how the customer answered.
    private sealed class PartLines(Job job)
    {
        public HashSet<string> Approved { get; } = Of(job.Approved);

        public HashSet<string> Declined { get; } = Of(job.Offers.SelectMany(o => o.Declined));

        public HashSet<string> Waiting { get; } = Of(job.Offers.Where(o => o.Waits).SelectMany(o => o.Lines));

        private static HashSet<string> Of(IEnumerable<EstimateLine> lines) => [.. lines.Select(l => l.Part).OfType<string>()];
    }
}
