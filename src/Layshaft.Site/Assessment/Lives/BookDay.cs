using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>The newest day that a book tells of: what a page counts days from, because pages know no clock.</summary>
public static class BookDay
{
    /// <summary>
    /// The newest day of anything done: received, stripped, estimated, answered, signed, finished, raced, calibrated. Days
    /// that lie ahead (the next event, a return, an estimate's end) do not count. Null for a book without any.
    /// </summary>
    public static DateOnly? Newest(ShopBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Newest(book, OfJobs(book.Jobs));
    }

    /// <summary>The same, where the newest day of the jobs is known already.</summary>
    /// <param name="book">The book, or as much of it as knows its shop and units.</param>
    /// <param name="ofJobs">The newest day of its jobs.</param>
    public static DateOnly? Newest(ShopBook book, DateOnly? ofJobs)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Units.Values.Select(u => (DateOnly?)u.InService)
            .Concat(book.Shop.Instruments.Select(i => (DateOnly?)i.Calibrated))
            .Append(ofJobs)
            .Max();
    }

    /// <summary>The newest day of anything done in some jobs; null without any.</summary>
    /// <param name="jobs">The jobs.</param>
    public static DateOnly? OfJobs(IEnumerable<Job> jobs) => jobs.SelectMany(Days).Max();

    private static IEnumerable<DateOnly?> Days(Job job) =>
        [job.Received, job.Stripped, .. job.Offers.SelectMany(o => (DateOnly?[])[o.Sent, o.GoAhead?.On]), job.StripList?.On, job.BuildList?.On, job.LastEvent?.On, job.Finished];
}
