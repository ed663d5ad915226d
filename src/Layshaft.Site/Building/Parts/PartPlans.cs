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

namespace Layshaft.Site.Building.Parts;

/// <summary>Plans the files of parts: from what is known of a part where it has not changed, and else by reading it. For many threads at once.</summary>
/// <param name="files">The book's files.</param>
/// <param name="reader">Reads parts.</param>
/// <param name="engine">Renders templates.</param>
/// <param name="hashes">Hashes of the book's text files.</param>
/// <param name="site">Stands for templates, texts and keys.</param>
/// <param name="memory">What is known from the publish before.</param>
internal sealed class PartPlans(IBookFiles files, PartReader reader, TemplateEngine engine, BookHashes hashes, PlanInput site, SiteCache memory)
{
    private readonly ConcurrentDictionary<Place, Problem> _damaged = new();
    private readonly KeptOutputs _kept = new(memory.Register);
    private readonly HeldParts _held = new();
    private int _partsRead;

    /// <summary>The pictures that turned out to be damaged when files of the site were made from them.</summary>
    public IEnumerable<Problem> Damaged => _damaged.Values;

    /// <summary>How many parts were read, because nothing or something else was known of them.</summary>
    public int PartsRead => _partsRead;

    /// <summary>Plans the files of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="mark">Its mark; null where it has none that can be relied on.</param>
    /// <returns>What is kept of the part, and its files; null when something stops it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public PlannedPart? Of(PartOutline part, ContentHash? mark)
    {
        var planned = mark is { } known && memory.Parts.Recall(known) is { } record && Has(record) ? Kept(record, () => part) : Read(part, mark);
        foreach (var file in part.JobFolders.SelectMany(f => files.Below($"{f}/")))
        {
            // Where nobody opens a picture, the next publish is to know all the same whether it is as it was.
            memory.Files.See(file);
        }

        return planned;
    }

    /// <summary>Plans the files of a part that is as it was kept.</summary>
    /// <param name="kept">What is kept of it.</param>
    /// <param name="part">The part, for when files of it have to be made all the same.</param>
    /// <returns>What is kept of the part, and its files; null when something stops it.</returns>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public PlannedPart? Of(PartRecord kept, Func<PartOutline> part) => Has(kept) ? Kept(kept, part) : Read(part(), kept.Mark);

    /// <summary>How many files the site has under a mark; 0 when none are known.</summary>
    /// <param name="mark">The mark.</param>
    public int CountOf(ContentHash mark) => _kept.CountOf(mark);

    // Whether the site has all files of a part.
    private bool Has(PartRecord record) => _kept.CountOf(record.Mark!.Value) == record.Outputs;

    private PlannedPart Kept(PartRecord record, Func<PartOutline> part)
    {
        var (group, maker) = Making(BookParts.NameOf(record.Rest.Units[0]), record.Mark, part);
        return new(record, [], new KeptGroup(group, maker));
    }

    private PlannedPart? Read(PartOutline part, ContentHash? mark)
    {
        Interlocked.Increment(ref _partsRead);
        var problems = new ProblemList();
        if (reader.Read(part, problems) is not { } composition)
        {
            return null;
        }

        var book = composition.Book;
        var inputs = BookParts.InputsOf(book, composition.Pictures, hashes, files, site);
        var key = PlannedOutput.KeyOf(ProgramMark.Value, inputs);
        var scope = new PageScope(part.Name, inputs, () => composition);
        SiteFile[] outputs = [.. FilesOf(composition, part, scope)];
        var paths = PathTable.Of(outputs.Select(f => f.Path), out var turns);
        // What has inputs of its own is a picture.
        ContentHash[] keys = [.. turns.Select(t => outputs[t].Inputs is { } own ? PlannedOutput.KeyOf(PictureMark.Value, own) : key)];
        _held.Hold(part.Name, composition);
        var rest = new PartRest(
            [.. part.Units.Select(u => u.Id)],
            [.. book.Jobs.Select(j => Known(j, book))],
            BookDay.OfJobs(book.Jobs),
            problems.InOrder());
        return new(PartRecord.Of(mark, outputs.Length, ShopTally.Of(composition.Assessment), rest), Planned(part, mark, paths, keys, turns), null);
    }

    private KnownJob Known(Job job, ShopBook book)
    {
        var file = $"{job.Folder}/job.yaml";
        return new KnownJob(file, hashes.OfFile(file), ShopContext.IsOnTheBench(job, book), JobLinks.Of(job));
    }

    // In a method of its own, as is what it leaves behind: that must not hold what was read of the part, nor its paths and keys.
    private IEnumerable<PlannedOutput> Planned(PartOutline part, ContentHash? mark, PathTable paths, ContentHash[] keys, int[] turns)
    {
        var (group, maker) = Making(part.Name, mark, Just(part));
        return turns.Select((t, i) => new PlannedOutput(new PlacedPath(paths, i), keys[i], maker) { Group = group, Turn = t });
    }

    private static Func<PartOutline> Just(PartOutline part) => () => part;

    // What was read of many parts is let go here, and read again when the first of the files is to be made. The outputs are not held either.
    private (OutputGroup Group, PartOutputs Maker) Making(string name, ContentHash? mark, Func<PartOutline> part)
    {
        var scope = new PageScope(name, [], () => _held.Take(name) ?? reader.ReadAgain(part()));
        return (scope.Group with { Mark = mark }, new PartOutputs(scope, () => FilesOf(scope.Composition, part(), scope)));
    }

    private IEnumerable<SiteFile> FilesOf(Composition composition, PartOutline part, PageScope scope) =>
        new PartFiles(engine, files, p => _damaged[p.Place] = p).Of(composition, part.Units, scope);
}
