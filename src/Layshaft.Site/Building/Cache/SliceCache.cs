using Layshaft.Book.Problems;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Building;

/// <summary>What a publish keeps of the book as a whole, so that the next need read nothing but the jobs that changed.</summary>
/// <param name="Standing">The hash of all files but those of jobs, see <see cref="BookHashes.HashWithoutJobs"/>.</param>
/// <param name="Site">The hash of templates, texts and keys.</param>
/// <param name="Checked">What was wrong or worth knowing in the book without its jobs.</param>
/// <param name="Geared">The same in the figures of its cars and gearboxes.</param>
/// <param name="Readers">The readers of the site's links.</param>
/// <param name="Reference">The key of the public pages, see <see cref="ReferenceFiles"/>.</param>
/// <param name="ReferenceFiles">How many files those have.</param>
/// <param name="Slices">Its slices, in order.</param>
internal sealed record CachedBook(
    string Standing,
    string Site,
    IReadOnlyList<Problem> Checked,
    IReadOnlyList<Problem> Geared,
    IReadOnlyList<LinkReader> Readers,
    ContentHash Reference,
    int ReferenceFiles,
    IReadOnlyList<CachedSlice> Slices);

/// <summary>What a publish keeps of a slice of the book, so that the next need not read it.</summary>
/// <param name="Mark">The hash of all that it is made from, see <see cref="BookHashes.MarkOf"/>; null for a slice that the next publish shall read again.</param>
/// <param name="Outputs">How many files it has in the site.</param>
/// <param name="Tally">What it adds to the shop's pages.</param>
/// <param name="Units">The ids of its units, in order.</param>
/// <param name="Jobs">Its jobs.</param>
/// <param name="Newest">The newest day of anything done in its jobs; null without any.</param>
/// <param name="Problems">What is wrong or worth knowing in it.</param>
/// <param name="Wear">What its units tell of wear.</param>
/// <param name="Others">What its pages say of other customers' gearboxes, see <see cref="OtherUnits.Text"/>.</param>
internal sealed record CachedSlice(
    ContentHash? Mark,
    int Outputs,
    PackedTally Tally,
    IReadOnlyList<string> Units,
    IReadOnlyList<KnownJob> Jobs,
    DateOnly? Newest,
    IReadOnlyList<Problem> Problems,
    IReadOnlyList<WearTally> Wear,
    string Others)
{
    /// <summary>The name of the slice.</summary>
    public string Name => Slice.NameOf(Units[0]);
}

/// <summary>A job of a slice as it is known without reading it.</summary>
/// <param name="File">The path of its file.</param>
/// <param name="Content">The hash of that.</param>
/// <param name="IsOnTheBench">Whether a unit of it is still in the shop.</param>
/// <param name="Links">What connects it with the rest of the book.</param>
internal sealed record KnownJob(string File, ContentHash Content, bool IsOnTheBench, JobLinks Links);

/// <summary>
/// What is known of the book and its slices from the publish before. Losing it costs time and nothing else. For many threads at once, but for
/// noting and saving.
/// </summary>
public sealed class SliceCache
{
    private readonly Dictionary<ContentHash, CachedSlice> _known = [];
    private readonly Dictionary<ContentHash, JobLinks> _links = [];
    private CachedBook? _next;

    /// <summary>A cache.</summary>
    /// <param name="book">The book as it was kept; null where it was not.</param>
    internal SliceCache(CachedBook? book)
    {
        Book = book;
        foreach (var slice in book?.Slices ?? [])
        {
            if (slice.Mark is { } mark)
            {
                _known[mark] = slice;
            }

            foreach (var job in slice.Jobs)
            {
                _links[job.Content] = job.Links;
            }
        }
    }

    /// <summary>The book as it was kept; null where it was not.</summary>
    internal CachedBook? Book { get; }

    /// <summary>The book as the next publish shall find it; null where there is none.</summary>
    internal CachedBook? Next => _next ?? Book;

    /// <summary>What connects a job with the book, if a file with this content is known; null otherwise.</summary>
    internal JobLinks? LinksOf(ContentHash content) => _links.GetValueOrDefault(content);

    /// <summary>What is known of a slice; null when it has to be read.</summary>
    internal CachedSlice? Recall(ContentHash mark) => _known.GetValueOrDefault(mark);

    /// <summary>Notes the book for the next publish.</summary>
    internal void Note(CachedBook book) => _next = book;
}
