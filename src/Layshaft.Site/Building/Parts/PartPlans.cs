using System.Collections.Concurrent;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
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
internal sealed class PartPlans(IBookFiles files, PartReader reader, TemplateEngine engine, BookHashes hashes, PlanInput site, PublishMemory memory)
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
    public (PartRecord Record, IEnumerable<PlannedOutput> Outputs)? Of(PartOutline part, ContentHash? mark)
    {
        if (mark is not { } known || memory.Parts.Recall(known) is not { } record || _kept.CountOf(known) != record.Outputs)
        {
            return Read(part, mark);
        }

        foreach (var file in part.JobFolders.SelectMany(f => files.Below($"{f}/")))
        {
            // Nobody opens the pictures, but they are to be known the next time also.
            memory.Files.Keep(file);
        }

        return (record, Planned(part, mark, _kept.Of(known)));
    }

    private (PartRecord Record, IEnumerable<PlannedOutput> Outputs)? Read(PartOutline part, ContentHash? mark)
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
        (PlacedPath, ContentHash)[] outputs = [.. FilesOf(composition, part, scope).Select(f => (new PlacedPath(f.Path), f.Inputs is { } own ? PlannedOutput.KeyOf(ProgramMark.Value, own) : key))];
        _held.Hold(part.Name, composition);
        var rest = new PartRest(
            [.. book.Jobs.Select(j => new KnownJob(hashes.OfFile($"{j.Folder}/job.yaml").ToString(), JobLinks.Of(j)))],
            [.. book.Jobs.Where(j => ShopContext.IsOnTheBench(j, book)).Select(j => $"{j.Folder}/job.yaml")],
            BookDay.OfJobs(book.Jobs),
            problems.InOrder());
        return (PartRecord.Of(mark, outputs.Length, ShopTally.Of(composition.Assessment), rest), Planned(part, mark, outputs));
    }

    // What was read of many parts is let go here, and read again when the first of the files is to be made. The outputs are not held either.
    private IEnumerable<PlannedOutput> Planned(PartOutline part, ContentHash? mark, IEnumerable<(PlacedPath Path, ContentHash Key)> outputs)
    {
        var scope = new PageScope(part.Name, [], () => _held.Take(part.Name) ?? reader.ReadAgain(part));
        var maker = new PartOutputs(scope, () => FilesOf(scope.Composition, part, scope));
        var group = scope.Group with { Mark = mark };
        return outputs.Select((o, i) => new PlannedOutput(o.Path, o.Key, maker) { Group = group, Turn = i });
    }

    private IEnumerable<SiteFile> FilesOf(Composition composition, PartOutline part, PageScope scope) =>
        new PartFiles(engine, files, p => _damaged[p.Place] = p).Of(composition, part.Units, scope);
}
