using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Building;

/// <summary>
/// The slices of a book of which no file but those of jobs has changed since the last publish: where a slice's jobs have not either, nothing of it
/// need be read.
/// </summary>
internal sealed class UnchangedSlices
{
    private readonly StandingBook _standing;
    private readonly BookHashes _hashes;
    private readonly SliceCache _memory;
    private readonly Dictionary<string, int> _sliceOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, JobLinks> _links = new(StringComparer.Ordinal);

    private UnchangedSlices(StandingBook standing, BookHashes hashes, SliceCache memory) => (_standing, _hashes, _memory) = (standing, hashes, memory);

    /// <summary>The slices, in order: each as it was kept, and what it is now if something in the folders of its jobs changed.</summary>
    /// <param name="standing">The book without its jobs.</param>
    /// <param name="hashes">Hashes of its files.</param>
    /// <param name="memory">What is known from the publish before.</param>
    /// <returns>Null when the book has other slices now, or that cannot be told without reading it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static IReadOnlyList<(CachedSlice Kept, Slice? Now)>? Of(StandingBook standing, BookHashes hashes, SiteCache memory)
    {
        var slices = new UnchangedSlices(standing, hashes, memory.Slices);
        return slices.HasTheSameJobs() && slices.Touched(memory.Files) is { } touched && touched.All(slices.HasTheSameLinks)
            ? [.. memory.Slices.Book!.Slices.Select((p, i) => (p, touched.Contains(i) || p.Mark is null ? slices.Outline(p) : null))]
            : null;
    }

    /// <summary>A slice as it was kept, for its files.</summary>
    /// <param name="kept">What is kept of it.</param>
    /// <param name="book">The book without its jobs.</param>
    public static Slice Outline(CachedSlice kept, ShopBook book) => Outline(kept, book, j => j.Links);

    private static Slice Outline(CachedSlice kept, ShopBook book, Func<KnownJob, JobLinks> links) => Slice.Cut(
        book, [.. kept.Units.Select(id => book.Units[id])], [.. kept.Jobs.Select(j => (j.File, links(j)))]);

    private Slice Outline(CachedSlice kept) => Outline(kept, _standing.Book, j => _links.GetValueOrDefault(j.File, j.Links));

    private bool HasTheSameJobs()
    {
        foreach (var (slice, place) in _memory.Book!.Slices.Select((p, i) => (p, i)))
        {
            foreach (var job in slice.Jobs)
            {
                _sliceOf[Slice.FolderOf(job.File)] = place;
            }
        }

        return _standing.JobFiles.Count == _sliceOf.Count && _standing.JobFiles.All(f => _sliceOf.ContainsKey(Slice.FolderOf(f)));
    }

    // Those with a file that is new, is not as it was, or is gone. Null where one is in no job's folder.
    private HashSet<int>? Touched(FileCache memory)
    {
        var touched = new HashSet<int>();
        var others = _standing.Files.Below("jobs/").Where(f => !memory.Keep(f)).Select(f => f.Path).ToList();
        foreach (var path in others.Concat(memory.Unseen("jobs")))
        {
            if (!_sliceOf.TryGetValue(JobFolderOf(path), out var slice))
            {
                return null;
            }

            touched.Add(slice);
        }

        return touched;
    }

    private bool HasTheSameLinks(int slice)
    {
        foreach (var job in _memory.Book!.Slices[slice].Jobs)
        {
            var content = _hashes.HashFile(job.File);
            if (content == job.Content)
            {
                continue;
            }

            var links = _memory.LinksOf(content) ?? (_standing.ReadJobs([job.File], new ProblemList()) is [var read] ? JobLinks.Of(read) : null);
            if (links is null || links.Unit != job.Links.Unit || !links.Serials.SequenceEqual(job.Links.Serials) || !links.Donors.SequenceEqual(job.Links.Donors))
            {
                return false;
            }

            _links[job.File] = links;
        }

        return true;
    }

    // jobs/YEAR/NUMBER
    private static string JobFolderOf(string path)
    {
        var end = -1;
        for (var i = 0; i < 3; i++)
        {
            end = path.IndexOf('/', end + 1);
            if (end < 0)
            {
                return string.Empty;
            }
        }

        return path[..end];
    }
}
