using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Building;

/// <summary>
/// All that a publish needs of a book but its jobs, with what the site is made with. Where none of it has changed since the last publish it
/// was checked then: its records are read when they are asked for, and what was found is told again.
/// </summary>
internal sealed class SiteWithoutJobs
{
    private readonly string _mark;
    private readonly IReadOnlyList<Problem> _checked;
    private readonly IReadOnlyList<Problem> _geared;

    private SiteWithoutJobs(
        StandingBook read, SiteOverrides own, SiteMeans means, BookGearing gearing, BookHashes hashes, string mark, (IReadOnlyList<Problem> Checked, IReadOnlyList<Problem> Geared) found) =>
        (Read, Own, Means, Gearing, Hashes, _mark, _checked, _geared) = (read, own, means, gearing, hashes, mark, found.Checked, found.Geared);

    /// <summary>The book without its jobs.</summary>
    public StandingBook Read { get; }

    /// <summary>The shop's own hand.</summary>
    public SiteOverrides Own { get; }

    /// <summary>What pages are made with.</summary>
    public SiteMeans Means { get; }

    /// <summary>The gearing of its cars and gearboxes.</summary>
    public BookGearing Gearing { get; }

    /// <summary>Hashes of the book's text files.</summary>
    public BookHashes Hashes { get; }

    /// <summary>Whether it is as the last publish left it, which left all that it knew.</summary>
    public bool IsAsKept { get; private init; }

    /// <summary>What is wrong or worth knowing so far.</summary>
    public ProblemList Problems { get; } = new();

    /// <summary>Reads it.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="files">Its files.</param>
    /// <param name="looked">What was found wrong when they were looked through.</param>
    /// <param name="memory">What is known from the publish before.</param>
    /// <param name="began">When the book was scanned, in ticks.</param>
    /// <returns>Null when something stops it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static SiteWithoutJobs? Of(string folder, IBookFiles files, ProblemList looked, SiteCache memory, long began)
    {
        var hashes = new BookHashes(files, memory.Files, began);
        var mark = hashes.HashWithoutJobs();
        return memory.Slices.Book is { } kept && kept.Standing == mark
            && Of(folder, files, looked, memory, hashes, mark, kept) is { } asKept
            ? asKept
            : Of(folder, files, looked, memory, hashes, mark, null);
    }

    /// <summary>What is to be kept of the book for the next publish.</summary>
    /// <param name="readers">Whom the links of the site open for.</param>
    /// <param name="reference">Stands for the public pages.</param>
    /// <param name="referenceFiles">How many files those have.</param>
    /// <param name="slices">The book's slices, in order.</param>
    public CachedBook ToKeep(IReadOnlyList<LinkReader> readers, ContentHash reference, int referenceFiles, IReadOnlyList<CachedSlice> slices) =>
        new(_mark, Means.Fingerprint, _checked, _geared, readers, reference, referenceFiles, slices);

    private static SiteWithoutJobs? Of(string folder, IBookFiles files, ProblemList looked, SiteCache memory, BookHashes hashes, string mark, CachedBook? kept)
    {
        // What was found by the last publish stands between what is looked at each time: problems of one place keep their order.
        var problems = new ProblemList();
        problems.Add(looked);
        var found = new ProblemList();
        if ((kept is null ? StandingBook.Read(files, problems, found) : StandingBook.Recall(files, problems)) is not { } read)
        {
            return null;
        }

        var own = SiteOverrides.Of(read.Book.Shop, folder);
        var means = new ProblemList();
        if (SiteMeans.Of(read.Book.Shop, own, folder, means) is not { } made || (kept is not null && kept.Site != made.Fingerprint))
        {
            return null;
        }

        var geared = new ProblemList();
        var gearing = kept is null ? BookGearing.Standing(read.Book, files, geared) : BookGearing.OnDemand(read.Book, files);
        var (first, last) = kept is null ? (found.All, geared.All) : (kept.Checked, kept.Geared);
        var standing = new SiteWithoutJobs(read, own, made, gearing, hashes, mark, (first, last)) { IsAsKept = kept is not null };
        standing.Problems.Add(problems);
        foreach (var problem in first.Concat(own.Problems))
        {
            standing.Problems.Add(problem);
        }

        standing.Problems.Add(means);
        foreach (var problem in last)
        {
            standing.Problems.Add(problem);
        }

        return standing;
    }
}
