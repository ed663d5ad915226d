using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>
/// The site of a book that is read part by part: units that no others touch, one after the other, so that what is in memory
/// does not grow with the seasons, and a part that has not changed since the last publish is not read at all.
/// </summary>
public sealed class PartedSite
{
    private readonly PartPlans _plans;

    private PartedSite(OwnHand own, PartPlans plans, SitePlan plan, IReadOnlyList<Problem> problems) => (Own, _plans, Plan, Problems) = (own, plans, plan, problems);

    /// <summary>The shop's own hand, which knows where a template's mistake stands.</summary>
    public OwnHand Own { get; }

    /// <summary>The site as the publisher plans it.</summary>
    public SitePlan Plan { get; }

    /// <summary>Everything that is wrong or worth knowing before a file of the site is made.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>How many parts of the book were read.</summary>
    internal int PartsRead => _plans.PartsRead;

    /// <summary>The problems with those that only the making of files shows, in order of place; whole once the plan was carried out.</summary>
    public IReadOnlyList<Problem> AllProblems() => [.. Problems.Concat(_plans.Damaged).OrderBy(p => p.Place)];

    /// <summary>Prepares the site of the book in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="memory">What is known from the publish before.</param>
    /// <param name="files">Its files, where they were looked through just now; null to look.</param>
    /// <returns>Null when a problem stops it: then the book is to be read as a whole, which tells of all problems.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static PartedSite? Of(string folder, PublishMemory memory, FolderBookFiles? files = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(memory);
        var began = DateTime.UtcNow.Ticks;
        var problems = new ProblemList();
        if (StandingBook.Read(files ?? FolderBookFiles.Look(folder, problems), problems, memory.Nodes) is not { } standing)
        {
            return null;
        }

        NodeFile.Keep(memory.Nodes, folder, memory.Output);
        var own = OwnHand.Of(standing.Book.Shop, folder);
        foreach (var problem in own.Problems)
        {
            problems.Add(problem);
        }

        return SiteMeans.Of(standing.Book.Shop, own, folder, problems) is { } means ? Of(standing, own, means, memory, problems, began) : null;
    }

    private static PartedSite? Of(StandingBook standing, OwnHand own, SiteMeans means, PublishMemory memory, ProblemList problems, long began)
    {
        var (book, files) = (standing.Book, standing.Files);
        var gearing = BookGearing.Standing(book, files, problems);
        var logo = LogoFile.Inspect(book.Shop, files, problems);
        WrittenTexts.OfShop(book.Shop, problems);
        var hashes = new BookHashes(files, memory.Files);
        var site = new PlanInput("site", means.Fingerprint);
        var plans = new PartPlans(files, new PartReader(standing, gearing, means, logo, memory.Files), means.Engine, hashes, site, memory);
        if (problems.HasStops || Take(standing, memory.Parts, plans, hashes, new PartMark(hashes, files, site, began)) is not { } parts)
        {
            return null;
        }

        PartRecord[] records = [.. parts.Select(p => p.Record)];
        foreach (var record in records)
        {
            memory.Parts.Note(record);
        }

        var composition = means.Compose(
            new BookAssessment(book, new Dictionary<string, JobAssessment>(), LifeAssessment.None(book), gearing, []),
            new PictureIndex(logo is null ? new() : new Dictionary<string, UsablePicture> { [logo.Path] = logo }),
            new Dictionary<string, string>());
        var shared = new SharedFiles(composition, means.Engine, files, own.Folders);
        var shop = new ShopParts(standing, composition, hashes, site, records);
        var common = shared.Look(new PageScope("look", [site], () => composition))
            .Concat(ShopPageList.All.SelectMany(p => shop.Scope(p) is var scope ? shared.Shop(p, () => shop.Context(p, scope), scope) : []))
            .Concat(shared.Reference(new BookParts(composition, files, means.Fingerprint, hashes).Public()));
        return new PartedSite(
            own,
            plans,
            SitePlan.Of(common.Select((f, i) => f.ToPlan(i)).Concat(parts.SelectMany(p => p.Outputs)), memory.Register.Paths),
            [.. problems.InOrder().Concat(records.SelectMany(r => r.Rest.Problems).Distinct()).OrderBy(p => p.Place)]);
    }

    // All parts, several at once; null when something stops one. A file that cannot be read stops it too: read as a whole, the book
    // tells which.
    private static IReadOnlyList<(PartRecord Record, IEnumerable<PlannedOutput> Outputs)>? Take(
        StandingBook standing, PartMemory memory, PartPlans plans, BookHashes hashes, PartMark marks)
    {
        try
        {
            if (Links(standing, memory, hashes) is not { } links || PartOutline.All(standing.Book, links) is not { } outlines)
            {
                return null;
            }

            var parts = new (PartRecord, IEnumerable<PlannedOutput>)?[outlines.Count];
            Parallel.For(0, parts.Length, (i, state) =>
            {
                parts[i] = plans.Of(outlines[i], marks.Of(outlines[i]));
                if (parts[i] is null)
                {
                    state.Stop();
                }
            });
            return parts.Any(p => p is null) ? null : [.. parts.Select(p => p!.Value)];
        }
        catch (AggregateException e) when (e.InnerExceptions.All(i => i is IOException or UnauthorizedAccessException))
        {
            return null;
        }
    }

    // Null when a job cannot be read, or two have one number.
    private static IReadOnlyList<(string File, JobLinks Links)>? Links(StandingBook standing, PartMemory memory, BookHashes hashes)
    {
        var files = standing.JobFiles;
        var links = new JobLinks?[files.Count];
        Parallel.For(0, links.Length, i => links[i] = memory.LinksOf(hashes.OfFile(files[i]))
            ?? (standing.ReadJobs([files[i]], new ProblemList()) is [var job] ? JobLinks.Of(job) : null));
        return links.All(l => l is not null) && files.Select(NumberOf).Distinct(StringComparer.Ordinal).Count() == files.Count
            ? [.. files.Zip(links, (f, l) => (f, l!))]
            : null;
    }

    private static string NumberOf(string jobFile) => PartOutline.FolderOf(jobFile) is var folder ? folder[(folder.LastIndexOf('/') + 1)..] : string.Empty;
}
