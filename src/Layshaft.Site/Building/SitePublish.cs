using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>What came of publishing a book.</summary>
/// <param name="Result">What the publisher says; null when a problem of the book stopped it, or a page could not be made.</param>
/// <param name="Problems">Everything that is wrong or worth knowing.</param>
public sealed record SitePublish(PublishResult? Result, IReadOnlyList<Problem> Problems)
{
    /// <summary>The page that could not be made from its template; null for none.</summary>
    public string? FailedPage { get; private init; }

    /// <summary>Publishes the book in a folder, slice by slice; if a problem stops it, the whole book is read, so that all problems are reported at once.</summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="output">The site's folder.</param>
    /// <param name="options">How to publish.</param>
    /// <param name="files">The book's files, where they were looked through just now; null to look.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such book.</exception>
    public static SitePublish Run(string book, string output, PublishOptions options, FolderBookFiles? files = null)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (OutputFolder.ProblemWith(output, book) is { } refused)
        {
            return new SitePublish(PublishResult.Refused(refused), []);
        }

        var memory = new SiteCache(output);
        var publisher = new Publisher(options with { Store = memory });
        using var opened = publisher.Open(memory.Output);
        if (SlicedSite.Of(book, memory, files) is { } sliced)
        {
            return Carry(sliced, memory, publisher, opened);
        }

        var review = BookReview.OfFolder(book);
        if (!review.IsStopped && review.Files is FolderBookFiles rest && SlicedSite.Of(book, memory, rest) is { } sound)
        {
            // Without the jobs that are not finished and have problems.
            var carried = Carry(sound, memory, publisher, opened);
            return carried with { Problems = [.. carried.Problems.Concat(review.Problems.Where(p => !rest.Has(p.Place.File))).Distinct().OrderBy(p => p.Place)] };
        }

        var whole = SitePreparation.Of(review, book);
        return whole.Builder is null ? new SitePublish(null, whole.Problems) : throw new BookChangedException();
    }

    private static SitePublish Carry(SlicedSite site, SiteCache memory, Publisher publisher, OpenedSite? opened)
    {
        try
        {
            var result = opened is null ? publisher.Publish(site.Plan, memory.Output) : publisher.Publish(site.Plan, opened);
            return new SitePublish(result, [.. result.BookProblems.Concat(site.AllProblems()).OrderBy(p => p.Place)]);
        }
        catch (PageException failed)
        {
            return new SitePublish(null, [.. failed.Problems.Select(p => new Problem("template", site.Own.PlaceOf(p), p.Message))]) { FailedPage = failed.Page };
        }
    }
}
