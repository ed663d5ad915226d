using System.Collections.Concurrent;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>A slice of the book as it is to be published.</summary>
/// <param name="Record">What is kept of it for the next publish.</param>
/// <param name="Outputs">Its files, where it was read.</param>
/// <param name="Kept">Its files, where the site has them all already; null where it was read.</param>
internal sealed record PlannedSlice(CachedSlice Record, IReadOnlyList<PlannedOutput> Outputs, UnchangedGroup? Kept);

/// <summary>A slice of the book of which all is known but what its pages may say of other slices.</summary>
/// <param name="Record">What is kept of it, as long as that does not change.</param>
/// <param name="Plan">Plans its files; null when something stops it.</param>
internal sealed record KnownSlice(CachedSlice Record, Func<OtherUnits, PlannedSlice?> Plan);

/// <summary>Plans the files of slices: from what is known of a slice where it has not changed, and else by reading it. For many threads at once.</summary>
/// <param name="files">The book's files.</param>
/// <param name="reader">Reads slices.</param>
/// <param name="engine">Renders templates.</param>
/// <param name="hashes">Hashes of the book's text files.</param>
/// <param name="site">Stands for templates, texts and keys.</param>
/// <param name="memory">What is known from the publish before.</param>
internal sealed class SlicePlans(IBookFiles files, SliceReader reader, TemplateEngine engine, BookHashes hashes, PlanInput site, SiteCache memory)
{
    private readonly ConcurrentDictionary<Place, Problem> _damaged = new();

    // Those that are not to be made in any case.
    private readonly Dictionary<string, int> _inSite = memory.Traces.Files.Where(f => f.Group is not null && f.Key != default)
        .GroupBy(f => f.Group!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);

    private readonly ReadSlices _readSlices = new();
    private int _slicesRead;

    /// <summary>The pictures that turned out to be damaged when files of the site were made from them.</summary>
    public IEnumerable<Problem> Damaged => _damaged.Values;

    /// <summary>How many slices were read, because nothing or something else was known of them.</summary>
    public int SlicesRead => _slicesRead;

    /// <summary>Gets to know a slice.</summary>
    /// <param name="slice">The slice.</param>
    /// <param name="mark">Its mark; null where it has none that can be relied on.</param>
    /// <returns>What is kept of the slice, and how to plan its files; null when something stops it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public KnownSlice? Of(Slice slice, ContentHash? mark)
    {
        var known = mark is { } m && memory.Slices.Recall(m) is { } record ? Of(record, () => slice) : Read(slice, mark);
        foreach (var file in slice.Files(files))
        {
            // Where nobody opens a picture, the next publish is to know all the same whether it is as it was.
            memory.Files.See(file);
        }

        return known;
    }

    /// <summary>Gets to know a slice that is as it was kept.</summary>
    /// <param name="kept">What is kept of it.</param>
    /// <param name="slice">The slice, for when files of it have to be made all the same.</param>
    public KnownSlice Of(CachedSlice kept, Func<Slice> slice) => new(
        kept, others => kept.Others == others.Text && Has(kept) ? Kept(kept, slice, others) : Read(slice(), kept.Mark)?.Plan(others));

    /// <summary>How many files of a group the site has, without those that are made again in any case.</summary>
    /// <param name="group">The group's name.</param>
    public int CountOf(string group) => _inSite.GetValueOrDefault(group);

    // Whether the site has all files of a slice.
    private bool Has(CachedSlice record) => CountOf(record.Name) == record.Outputs;

    private PlannedSlice Kept(CachedSlice record, Func<Slice> slice, OtherUnits others)
    {
        var (group, make) = Making(record.Name, slice, others);
        return new(record, [], new UnchangedGroup(group, make));
    }

    private KnownSlice? Read(Slice slice, ContentHash? mark)
    {
        Interlocked.Increment(ref _slicesRead);
        var problems = new ProblemList();
        if (reader.Read(slice, problems) is not { } composition)
        {
            return null;
        }

        var book = composition.Book;
        PlanInput[] inputs = [hashes.InputOf("slice of the book", slice.Texts(files), composition.Pictures), site];
        var scope = new PageScope(slice.Name, inputs, () => composition);
        (string Path, ContentHash? OwnKey)[] outputs = [.. FilesOf(composition, slice, scope).Select(f => (f.Path, f.OwnKey))];
        _readSlices.Hold(slice.Name, composition);
        var record = new CachedSlice(
            mark,
            outputs.Length,
            PackedTally.Pack(ShopTally.Of(composition.Assessment)),
            [.. slice.Units.Select(u => u.Id)],
            [.. book.Jobs.Select(j => Known(j, book))],
            BookDay.OfJobs(book.Jobs),
            problems.InOrder(),
            WearTally.Of(composition.Assessment),
            string.Empty);
        return new(record, Planning(slice, record, inputs, outputs));
    }

    private KnownJob Known(Job job, ShopBook book)
    {
        var file = $"{job.Folder}/job.yaml";
        return new KnownJob(file, hashes.HashFile(file), ShopContext.IsOnTheBench(job, book), JobLinks.Of(job));
    }

    // In a method of its own, as is what it leaves behind: that must not hold what was read of the slice.
    private Func<OtherUnits, PlannedSlice?> Planning(Slice slice, CachedSlice record, PlanInput[] inputs, (string Path, ContentHash? OwnKey)[] outputs) => others =>
    {
        var key = PlannedOutput.KeyOf(ProgramFingerprint.Value, [.. inputs, new PlanInput("other gearboxes", others.Text)]);
        var (group, make) = Making(slice.Name, Just(slice), others);
        return new(record with { Others = others.Text }, [.. outputs.Select((o, i) => new PlannedOutput(o.Path, o.OwnKey ?? key, make) { Group = group, Turn = i })], null);
    };

    private static Func<Slice> Just(Slice slice) => () => slice;

    // What was read of many slices is let go here, and read again when the first of the files is to be made. The outputs are not held either.
    private (OutputGroup Group, OutputMaker Make) Making(string name, Func<Slice> slice, OtherUnits others)
    {
        var scope = new PageScope(name, [], () => (_readSlices.Take(name) ?? reader.ReadAgain(slice())) with { Others = others });
        return (scope.Group, SiteFile.MakerOf(scope, () => FilesOf(scope.Composition, slice(), scope)));
    }

    private IEnumerable<SiteFile> FilesOf(Composition composition, Slice slice, PageScope scope) =>
        new CustomerFiles(engine, files, p => _damaged[p.Place] = p).Of(composition, slice.Units, scope);

    // What was read of a few slices, until their files are made: after a change of one job there is one. Of many nothing is held, for
    // memory must not grow with the seasons.
    private sealed class ReadSlices
    {
        private const int Most = 4;

        private readonly Lock _gate = new();
        private readonly Dictionary<string, Composition> _held = new(StringComparer.Ordinal);
        private int _seen;

        internal void Hold(string slice, Composition composition)
        {
            lock (_gate)
            {
                if (++_seen > Most)
                {
                    _held.Clear();
                }
                else
                {
                    _held[slice] = composition;
                }
            }
        }

        internal Composition? Take(string slice)
        {
            lock (_gate)
            {
                return _held.Remove(slice, out var composition) ? composition : null;
            }
        }
    }
}
