using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Yaml;
using Layshaft.Site.Assessment;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>What came of publishing a book.</summary>
/// <param name="Result">What the publisher says; null when a problem of the book stopped it, or a page could not be made.</param>
/// <param name="Problems">Everything that is wrong or worth knowing.</param>
public sealed record SitePublish(PublishResult? Result, IReadOnlyList<Problem> Problems)
{
    /// <summary>The page that could not be made from its template; null for none.</summary>
    public string? FailedPage { get; private init; }

    /// <summary>Publishes the book in a folder, part by part; where something stops that, the whole book is read to tell everything that is wrong at once.</summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="output">The site's folder.</param>
    /// <param name="options">How to publish.</param>
    /// <param name="nodes">What the files were parsed to when the whole book was last read; null to parse each.</param>
    /// <param name="files">The book's files, where they were looked through just now; null to look.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such book.</exception>
    public static SitePublish Run(string book, string output, PublishOptions options, NodeMemory? nodes = null, FolderBookFiles? files = null)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (OutputFolder.ProblemWith(output, book) is { } refused)
        {
            return new SitePublish(PublishResult.Refused(refused), []);
        }

        var memory = PublishMemory.Beside(output);
        var publisher = new Publisher(memory.With(options));
        using var opened = publisher.Open(memory.Output);
        if (PartedSite.Of(book, memory, files) is { } parted)
        {
            return Carry(parted.Plan, parted.Own, parted.AllProblems, memory, publisher, opened);
        }

        var whole = SitePreparation.Of(BookReview.OfFolder(book, nodes), book);
        return whole.Builder is { } builder
            ? Carry(builder.Plan(), whole.Own!, whole.AllProblems, memory, publisher, opened)
            : new SitePublish(null, whole.Problems);
    }

    private static SitePublish Carry(
        SitePlan plan, OwnHand own, Func<IReadOnlyList<Problem>> problems, PublishMemory memory, Publisher publisher, OpenedSite? opened)
    {
        try
        {
            var result = opened is null ? publisher.Publish(plan, memory.Output) : publisher.Publish(plan, opened);
            return new SitePublish(result, [.. result.BookProblems.Concat(problems()).OrderBy(p => p.Place)]);
        }
        catch (PageException failed)
        {
            return new SitePublish(null, [.. failed.Problems.Select(p => new Problem("template", own.PlaceOf(p), p.Message))]) { FailedPage = failed.Page };
        }
    }
}
