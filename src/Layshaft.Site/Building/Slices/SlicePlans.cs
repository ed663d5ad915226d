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
using Layshaft.Site.Publishing.Register;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building.Slices;

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
    private readonly CachedOutputs _kept = new(memory.Register);
    private readonly ReadSlices _held = new();
    private int _slicesRead;

    /// <summary>The pictures that turned out to be damaged when files of the site were made from them.</summary>
    public IEnumerable<Problem> Damaged => _damaged.Values;

    /// <summary>How many slices were read, because nothing or something else was known of them.</summary>
    public int SlicesRead => _slicesRead;

    /// <summary>Plans the files of a slice.</summary>
    /// <param name="slice">The slice.</param>
    /// <param name="mark">Its mark; null where it has none that can be relied on.</param>
    /// <returns>What is kept of the slice, and its files; null when something stops it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public PlannedSlice? Of(SliceOutline slice, ContentHash? mark)
    {
        var planned = mark is { } known && memory.Slices.Recall(known) is { } record && Has(record) ? Kept(record, () => slice) : Read(slice, mark);
        foreach (var file in slice.JobFolders.SelectMany(f => files.Below($"{f}/")))
        {
            // Where nobody opens a picture, the next publish is to know all the same whether it is as it was.
            memory.Files.See(file);
        }

        return planned;
    }

    /// <summary>Plans the files of a slice that is as it was kept.</summary>
    /// <param name="kept">What is kept of it.</param>
    /// <param name="slice">The slice, for when files of it have to be made all the same.</param>
    /// <returns>What is kept of the slice, and its files; null when something stops it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public PlannedSlice? Of(SliceRecord kept, Func<SliceOutline> slice) => Has(kept) ? Kept(kept, slice) : Read(slice(), kept.Mark);

    /// <summary>How many files the site has under a mark; 0 when none are known.</summary>
    /// <param name="mark">The mark.</param>
    public int CountOf(ContentHash mark) => _kept.CountOf(mark);

    // Whether the site has all files of a slice.
    private bool Has(SliceRecord record) => _kept.CountOf(record.Mark!.Value) == record.Outputs;

    private PlannedSlice Kept(SliceRecord record, Func<SliceOutline> slice)
    {
        var (group, maker) = Making(BookSlices.NameOf(record.Rest.Units[0]), record.Mark, slice);
        return new(record, [], new UnchangedGroup(group, maker));
    }

    private PlannedSlice? Read(SliceOutline slice, ContentHash? mark)
    {
        Interlocked.Increment(ref _slicesRead);
        var problems = new ProblemList();
        if (reader.Read(slice, problems) is not { } composition)
        {
            return null;
        }

        var book = composition.Book;
        var inputs = BookSlices.InputsOf(book, composition.Pictures, hashes, files, site);
        var key = PlannedOutput.KeyOf(ProgramFingerprint.Value, inputs);
        var scope = new PageScope(slice.Name, inputs, () => composition);
        SiteFile[] outputs = [.. FilesOf(composition, slice, scope)];
        var paths = PathTable.Of(outputs.Select(f => f.Path), out var turns);
        // What has inputs of its own is a picture.
        ContentHash[] keys = [.. turns.Select(t => outputs[t].Inputs is { } own ? PlannedOutput.KeyOf(PictureFingerprint.Value, own) : key)];
        _held.Hold(slice.Name, composition);
        var rest = new SliceDetails(
            [.. slice.Units.Select(u => u.Id)],
            [.. book.Jobs.Select(j => Known(j, book))],
            BookDay.OfJobs(book.Jobs),
            problems.InOrder());
        return new(SliceRecord.Of(mark, outputs.Length, ShopTally.Of(composition.Assessment), rest), Planned(slice, mark, paths, keys, turns), null);
    }

    private KnownJob Known(Job job, ShopBook book)
    {
        var file = $"{job.Folder}/job.yaml";
        return new KnownJob(file, hashes.OfFile(file), ShopContext.IsOnTheBench(job, book), JobLinks.Of(job));
    }

    // In a method of its own, as is what it leaves behind: that must not hold what was read of the slice, nor its paths and keys.
    private IEnumerable<PlannedOutput> Planned(SliceOutline slice, ContentHash? mark, PathTable paths, ContentHash[] keys, int[] turns)
    {
        var (group, maker) = Making(slice.Name, mark, Just(slice));
        return turns.Select((t, i) => new PlannedOutput(new PlacedPath(paths, i), keys[i], maker) { Group = group, Turn = t });
    }

    private static Func<SliceOutline> Just(SliceOutline slice) => () => slice;

    // What was read of many slices is let go here, and read again when the first of the files is to be made. The outputs are not held either.
    private (OutputGroup Group, SliceOutputs Maker) Making(string name, ContentHash? mark, Func<SliceOutline> slice)
    {
        var scope = new PageScope(name, [], () => _held.Take(name) ?? reader.ReadAgain(slice()));
        return (scope.Group with { Mark = mark }, new SliceOutputs(scope, () => FilesOf(scope.Composition, slice(), scope)));
    }

    private IEnumerable<SiteFile> FilesOf(Composition composition, SliceOutline slice, PageScope scope) =>
        new CustomerFiles(engine, files, p => _damaged[p.Place] = p).Of(composition, slice.Units, scope);
}
