using Layshaft.Book.Records;
using Layshaft.Site.Assessment;

namespace Layshaft.Site.Pages.ShopPages.Tallies;

/// <summary>What the shop counts of one job.</summary>
/// <param name="Unit">The id of its unit.</param>
/// <param name="Received">When it came in.</param>
/// <param name="Finished">When it was finished; null for one that was not.</param>
/// <param name="Net">What it came to without tax, in the shop's currency; 0 for one that was not finished.</param>
/// <param name="Renewed">The parts that were renewed, once for each piece.</param>
public sealed record JobTally(string Unit, DateOnly Received, DateOnly? Finished, decimal Net, IReadOnlyList<string> Renewed)
{
    /// <summary>What the shop counts of a job.</summary>
    /// <param name="book">The book that it is in.</param>
    /// <param name="job">The job.</param>
    public static JobTally Of(ShopBook book, Job job)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(job);
        var net = job.Finished is null ? 0m : Account.Of(job.Charged, book.GearboxOf(book.Units[job.Unit]), book.Shop).Net;
        return new JobTally(job.Unit, job.Received, job.Finished, net, [.. job.Renewed.Select(r => r.Part)]);
    }
}
