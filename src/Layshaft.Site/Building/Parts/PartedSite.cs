using System.Collections.Concurrent;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>
/// The site of a book that is read part by part: units that no others touch, one after the other, so that what is in memory
/// does not grow with the seasons, and a part that has not changed since the last publish is not read at all.
/// </summary>
public sealed class PartedSite
{
    private readonly ConcurrentDictionary<Place, Problem> _damaged = new();
    private readonly PublishMemory _memory;
    private readonly StandingBook _standing;
    private readonly OwnHand _own;
    private readonly SiteMeans _means;
    private readonly PartReader _reader;
    private readonly BookHashes _hashes;
    private readonly PlanInput _site;
    private readonly Composition _shared;
    private readonly IReadOnlyList<Problem> _problems;
    private int _partsRead;

    private PartedSite(PublishMemory memory, StandingBook standing, OwnHand own, SiteMeans means, ProblemList problems)
    {
        (_memory, _standing, _own, _means) = (memory, standing, own, means);
        var (book, files) = (standing.Book, standing.Files);
        var gearing = BookGearing.Standing(book, files, problems);
        var logo = LogoFile.Inspect(book.Shop, files, problems);
        WrittenTexts.OfShop(book.Shop, problems);
        var pictures = new PictureIndex(logo is null ? new() : new Dictionary<string, UsablePicture> { [logo.Path] = logo });
        _shared = means.Compose(new BookAssessment(book, new Dictionary<string, JobAssessment>(), LifeAssessment.None(book), gearing, []), pictures, new Dictionary<string, string>());
        _reader = new PartReader(standing, gearing, means, logo, memory.Pictures);
        _hashes = new BookHashes(files);
        _site = new PlanInput("site", means.Fingerprint);
        _problems = problems.InOrder();
        Plan = SitePlan.Of([]);
        Problems = [];
    }

    /// <summary>The shop's own hand, which knows where a template's mistake stands.</summary>
    public OwnHand Own => _own;

    /// <summary>The site as the publisher plans it.</summary>
    public SitePlan Plan { get; private set; }

    /// <summary>Everything that is wrong or worth knowing before a file of the site is made.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; }

    /// <summary>How many parts were read, because nothing or something else was known of them.</summary>
    internal int PartsRead => _partsRead;

    /// <summary>Prepares the site of the book in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="memory">What is known from the publish before.</param>
    /// <returns>Null when a problem stops it: then the book is to be read as a whole, which tells of all problems.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static PartedSite? Of(string folder, PublishMemory memory)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(memory);
        var began = DateTime.UtcNow.Ticks;
        var problems = new ProblemList();
        if (StandingBook.Read(FolderBookFiles.Look(folder, problems), problems, memory.Nodes) is not { } standing)
        {
            return null;
        }

        NodeFile.Keep(memory.Nodes, folder, memory.Output);
        var own = OwnHand.Of(standing.Book.Shop, folder);
        foreach (var problem in own.Problems)
        {
            problems.Add(problem);
        }

        if (SiteMeans.Of(standing.Book.Shop, own, folder, problems) is not { } means)
        {
            return null;
        }

        var site = new PartedSite(memory, standing, own, means, problems);
        return !problems.HasStops && site.Prepare(began) ? site : null;
    }

    /// <summary>The problems with those that only the making of files shows, in order of place; whole once the plan was carried out.</summary>
    public IReadOnlyList<Problem> AllProblems() => [.. Problems.Concat(_damaged.Values).OrderBy(p => p.Place)];

    // A file that cannot be read stops it too: read as a whole, the book tells which.
    private bool Prepare(long began)
    {
        try
        {
            if (Links() is not { } links || PartOutline.All(_standing.Book, links) is not { } outlines)
            {
                return false;
            }

            var marks = new PartMark(_hashes, _standing.Files, _site, began);
            var kept = new KeptOutputs(_memory.Reuse);
            var parts = new (PartRecord Record, IReadOnlyList<PlannedOutput> Outputs)?[outlines.Count];
            Parallel.For(0, parts.Length, (i, state) =>
            {
                parts[i] = Take(outlines[i], marks, kept);
                if (parts[i] is null)
                {
                    state.Stop();
                }
            });
            if (parts.Any(p => p is null))
            {
                return false;
            }

            Close([.. parts.Select(p => p!.Value.Record)], parts.SelectMany(p => p!.Value.Outputs));
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
        catch (AggregateException e) when (e.InnerExceptions.All(i => i is IOException or UnauthorizedAccessException))
        {
            return false;
        }
    }

    private void Close(IReadOnlyList<PartRecord> parts, IEnumerable<PlannedOutput> outputs)
    {
        foreach (var part in parts)
        {
            _memory.Parts.Note(part);
        }

        Problems = [.. _problems.Concat(parts.SelectMany(p => p.Rest.Problems).Distinct()).OrderBy(p => p.Place)];
        var shared = new SharedFiles(_shared, _means.Engine, _standing.Files, _own.Folders);
        var shop = new ShopParts(_standing, _shared, _hashes, _site, parts);
        var files = shared.Look(new PageScope("look", [_site], () => _shared))
            .Concat(ShopPageList.All.SelectMany(p => shop.Scope(p) is var scope ? shared.Shop(p, () => shop.Context(p, scope), scope) : []))
            .Concat(shared.Reference(new BookParts(_shared, _standing.Files, _means.Fingerprint, _hashes).Public()));
        Plan = SitePlan.Of(files.Select((f, i) => f.ToPlan(i)).Concat(outputs));
    }

    // Null when a job cannot be read, or two have one number.
    private IReadOnlyList<(string File, JobLinks Links)>? Links()
    {
        var files = _standing.JobFiles;
        var links = new JobLinks?[files.Count];
        Parallel.For(0, links.Length, i => links[i] = _memory.Parts.LinksOf(_hashes.OfFile(files[i]))
            ?? (_standing.ReadJobs([files[i]], new ProblemList()) is [var job] ? JobLinks.Of(job) : null));
        return links.All(l => l is not null) && files.Select(PartOutline.FolderOf).Select(f => f[(f.LastIndexOf('/') + 1)..]).Distinct(StringComparer.Ordinal).Count() == files.Count
            ? [.. files.Zip(links, (f, l) => (f, l!))]
            : null;
    }

    private (PartRecord Record, IReadOnlyList<PlannedOutput> Outputs)? Take(PartOutline part, PartMark marks, KeptOutputs kept)
    {
        var mark = marks.Of(part);
        if (mark is not { } known || _memory.Parts.Recall(known) is not { } record || kept.Of(known) is not { } outputs || outputs.Count != record.Outputs)
        {
            return Read(part, mark);
        }

        foreach (var picture in part.JobFolders.SelectMany(f => _standing.Files.Below($"{f}/")))
        {
            // Nobody opens it, but it is to be known the next time also.
            _memory.Pictures.Recall(picture);
        }

        return (record, Planned(part, mark, outputs.Select(o => (o.Path, o.Key))));
    }

    private (PartRecord Record, IReadOnlyList<PlannedOutput> Outputs)? Read(PartOutline part, ContentHash? mark)
    {
        Interlocked.Increment(ref _partsRead);
        var problems = new ProblemList();
        if (_reader.Read(part, problems) is not { } composition)
        {
            return null;
        }

        var book = composition.Book;
        var inputs = BookParts.InputsOf(book, composition.Pictures, _hashes, _standing.Files, _site);
        var key = PlannedOutput.KeyOf(ProgramMark.Value, inputs);
        var files = FilesOf(composition, part, new PageScope(part.Name, inputs, () => composition));
        (string, ContentHash)[] outputs = [.. files.Select(f => (f.Path, f.Inputs is { } own ? PlannedOutput.KeyOf(ProgramMark.Value, own) : key))];
        var rest = new PartRest(
            [.. book.Jobs.Select(j => new KnownJob(_hashes.OfFile($"{j.Folder}/job.yaml").ToString(), JobLinks.Of(j)))],
            [.. book.Jobs.Where(j => ShopContext.IsOnTheBench(j, book)).Select(j => $"{j.Folder}/job.yaml")],
            BookDay.OfJobs(book.Jobs),
            problems.InOrder());
        return (PartRecord.Of(mark, outputs.Length, ShopTally.Of(composition.Assessment), rest), Planned(part, mark, outputs));
    }

    private IReadOnlyList<PlannedOutput> Planned(PartOutline part, ContentHash? mark, IEnumerable<(string Path, ContentHash Key)> outputs)
    {
        PageScope scope = null!;
        scope = new PageScope(part.Name, [], () => _reader.ReadAgain(part));
        var maker = new PartOutputs(scope, () => FilesOf(scope.Composition, part, scope));
        var group = scope.Group with { Mark = mark };
        return [.. outputs.Select((o, i) => new PlannedOutput(o.Path, o.Key, maker) { Group = group, Turn = i })];
    }

    private IEnumerable<SiteFile> FilesOf(Composition composition, PartOutline part, PageScope scope) =>
        new PartFiles(_means.Engine, _standing.Files, p => _damaged[p.Place] = p).Of(composition, part.Units, scope);
}
