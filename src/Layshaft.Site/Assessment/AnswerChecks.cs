using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Site.Assessment;

/// <summary>What a job must answer once its parts are graded and its lines are priced. A written reason answers each of these.</summary>
internal static class AnswerChecks
{
    /// <summary>Checks a job.</summary>
    public static void Run(JobAssessment assessed, Shop shop, ProblemList problems)
    {
        var job = assessed.Job;
        if (job.Offers is [{ Number: 0 } estimate, ..])
        {
            Sent(estimate, Account.Of(estimate.Lines, assessed.Gearbox, shop).Net, problems);
        }

        if (job.Finished is not null)
        {
            GradedRenew(assessed, problems);
            if (job.Offers.Count > 0 && job.Final.Count > 0)
            {
                MoreThanApproved(assessed, shop, problems);
            }
        }
        else if (job.Stage == JobStage.Declined && job.Final.Count > 0)
        {
            MoreThanRefusal(assessed, shop, problems);
        }
    }

    // Lines that follow from the grades change with a reading or a price: what the customer answered is held by its total.
    private static void Sent(Offer estimate, decimal net, ProblemList problems)
    {
        if (estimate.Total is { } total && total != net)
        {
            problems.Add(
                "total-changed",
                estimate.Origin.At("total"),
                $"The lines of the estimate add up to {Text(net)} without tax, but {Text(total)} was sent.",
                "Write the lines that were sent under 'lines', and further work as a supplement; or correct 'total' if it was not sent yet.");
        }
        else if (estimate is { Total: null, IsFromGrades: true })
        {
            var message = $"The lines of this estimate follow from the grades. They add up to {Text(net)} without tax.";
            var remedy = $"Check them on the estimate's page, then add 'total: {Text(net)}'.";
            if (estimate.Waits)
            {
                problems.Note("total-not-written", estimate.Origin.Place, message, remedy);
            }
            else
            {
                problems.Add("total-not-written", estimate.Origin.Place, message, remedy);
            }
        }
    }

    // A part that must be renewed goes back in only with a reason, or because the customer declined it: the report says which.
    private static void GradedRenew(JobAssessment assessed, ProblemList problems)
    {
        var job = assessed.Job;
        foreach (var part in assessed.Findings.Where(f => f.Grade == Grade.Renew).GroupBy(f => f.Part.Id))
        {
            if (!job.Renewed.Any(r => r.Part == part.Key)
                && !job.Findings.Any(f => f.Part == part.Key && f.LeftIn is not null)
                && !job.Offers.Any(o => o.Declined.Any(l => l.Part == part.Key)))
            {
                problems.Add(
                    "renew-not-answered",
                    part.First().Finding.Origin.At(part.First().Finding.Grade is null ? "part" : "grade"),
                    $"'{part.Key}' is graded renew, but it is neither renewed nor declined by the customer.",
                    "Add it to 'renewed', or 'left_in: …' with the reason to the finding.");
            }
        }
    }

    // Lines with a reason are answered, and so are parts that are reported by themselves; the rest of the account must not exceed the rest of what was approved.
    private static void MoreThanApproved(JobAssessment assessed, Shop shop, ProblemList problems)
    {
        var job = assessed.Job;
        var answered = job.Final.Where(l => l.Reason is not null || IsBeyond(l, job)).Select(l => l.What).ToHashSet(StringComparer.Ordinal);
        decimal Rest(IEnumerable<EstimateLine> lines) => Account.Of(lines.Where(l => !answered.Contains(l.What)), assessed.Gearbox, shop).Net;
        var (charged, approved) = (Rest(job.Final), Rest(job.Approved));
        if (charged > approved)
        {
            problems.Add(
                "charged-more-than-approved",
                job.Origin.At("final"),
                $"{Text(charged)} is charged, but the customer approved {Text(approved)} (both without tax and without lines that give a reason).",
                "Correct 'final', or add 'reason: …' to each line that costs more.");
        }
    }

    private static bool IsBeyond(EstimateLine line, Job job) => line.Part is { } part
        && job.Final.Where(l => l.Part == part).Sum(l => (long)l.Quantity) > job.Approved.Where(l => l.Part == part).Sum(l => (long)l.Quantity);

    private static void MoreThanRefusal(JobAssessment assessed, Shop shop, ProblemList problems)
    {
        var job = assessed.Job;
        var charged = Account.Of(job.Final.Where(l => l.Part is null && l.Reason is null), assessed.Gearbox, shop).Net;
        var agreed = job.Offers.Sum(o => o.IfRefused ?? 0m);
        if (charged > agreed)
        {
            problems.Add(
                "charged-after-refusal",
                job.Origin.At("final"),
                $"The customer declined everything, and {Text(charged)} is charged; the estimate says that a refusal costs {Text(agreed)} (both without tax).",
                "Correct 'final' or 'if_refused', or add 'reason: …' to the line.");
        }
    }

    private static string Text(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
}
