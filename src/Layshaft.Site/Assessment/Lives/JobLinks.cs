using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>What ties a job to the rest of the book: known before it is read whole, it tells with what it must be read.</summary>
/// <param name="Unit">The id of its unit.</param>
/// <param name="Serials">The serial numbers of parts that it names.</param>
/// <param name="Donors">The ids of units that gave it parts.</param>
/// <param name="Venues">The ids of the venues of its events.</param>
public sealed record JobLinks(string Unit, IReadOnlyList<string> Serials, IReadOnlyList<string> Donors, IReadOnlyList<string> Venues)
{
    /// <summary>The links of a job.</summary>
    /// <param name="job">The job.</param>
    public static JobLinks Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new JobLinks(
            job.Unit,
            [.. job.Renewed.SelectMany(r => new[] { r.Serial, r.OldSerial }).OfType<string>()],
            [.. job.Renewed.Select(r => r.From).OfType<string>()],
            [.. new[] { job.LastEvent, job.NextEvent }.OfType<EventPlan>().Select(e => e.Venue).Distinct(StringComparer.Ordinal)]);
    }
}
