using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>
/// The site of a book that is read slice by slice: units that no others touch, one after the other, so that what is in memory
/// does not grow with the seasons, and a slice that has not changed since the last publish is not read at all.
/// </summary>
public sealed class SlicedSite
{
    private readonly SlicePlans _plans;

    private SlicedSite(SiteOverrides own, SlicePlans plans, SitePlan plan, IReadOnlyList<Problem> problems) => (Own, _plans, Plan, Problems) = (own, plans, plan, problems);

    /// <summary>The shop's own hand, which knows where a template's mistake stands.</summary>
    public SiteOverrides Own { get; }

    /// <summary>The site as the publisher plans it.</summary>
    public SitePlan Plan { get; }

    /// <summary>Everything that is wrong or worth knowing before a file of the site is made.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>How many slices of the book were read.</summary>
    internal int SlicesRead => _plans.SlicesRead;

    /// <summary>The problems with those that only the making of files shows, in order of place; whole once the plan was carried out.</summary>
    public IReadOnlyList<Problem> AllProblems() => [.. Problems.Concat(_plans.Damaged).OrderBy(p => p.Place)];

    /// <summary>Prepares the site of the book in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="memory">What is known from the publish before.</param>
    /// <param name="files">Its files, where they were looked through just now; null to look.</param>
    /// <returns>Null when a problem stops it: then the book is to be read as a whole, which tells of all problems.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static SlicedSite? Of(string folder, SiteCache memory, FolderBookFiles? files = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(memory);
        var began = DateTime.UtcNow.Ticks;
        var looked = new ProblemList();
        files ??= FolderBookFiles.Look(folder, looked);
        try
        {
            return SiteWithoutJobs.Of(folder, files, looked, memory, began) is { } standing ? Of(standing, memory) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException
            || (e is AggregateException all && all.InnerExceptions.All(i => i is IOException or UnauthorizedAccessException)))
        {
            // Read as a whole, the book tells which file cannot be read.
            return null;
        }
    }

    private static SlicedSite? Of(SiteWithoutJobs standing, SiteCache memory)
    {
        var (book, files, means, hashes, problems) = (standing.Read.Book, standing.Read.Files, standing.Means, standing.Hashes, standing.Problems);
        var logo = LogoFile.Inspect(book.Shop, files, problems);
        WrittenTexts.OfShop(book.Shop, problems);
        var site = new PlanInput("site", means.Fingerprint);
        var plans = new SlicePlans(files, new SliceReader(standing.Read, standing.Gearing, means, logo, memory.Files), means.Engine, hashes, site, memory);
        if (problems.HasStops || Slices(standing, memory, plans, site) is not { } slices)
        {
            return null;
        }

        var pool = new WearPool(slices.SelectMany(s => s.Record.Wear), slices.Max(s => s.Record.Newest));
        if (Each(slices.Count, i => slices[i].Plan(pool.For(slices[i].Record.Units))) is not { } planned)
        {
            return null;
        }

        CachedSlice[] records = [.. planned.Select(p => p.Record)];
        var composition = means.Compose(
            new BookAssessment(book, new Dictionary<string, JobAssessment>(), LifeAssessment.None(book), standing.Gearing, []),
            new PictureIndex(logo is null ? new() : new Dictionary<string, UsablePicture> { [logo.Path] = logo }),
            new Dictionary<string, string>());
        var shared = new SharedFiles(composition, means.Engine, files, standing.Own.Folders);
        var shop = new ShopSlices(standing.Read, composition, hashes, site, records);

        // Those that tell of all units come last: these are held from the first to the last of them, and not while others are made.
        var pages = ShopPageList.All.OrderBy(p => p.Sources.HasFlag(ShopSources.Units));
        var common = shared.Look(new PageScope("look", [site], () => composition))
            .Concat(pages.SelectMany(p => shop.Scope(p) is var scope ? shared.Shop(p, () => shop.Context(p, scope), scope) : []));
        var reference = ReferenceFiles.ScopeOf(composition, hashes, site);
        var kept = memory.Slices.Book is { } before && before.Reference == reference.Key && plans.CountOf(reference.Group.Name) == before.ReferenceFiles ? before.ReferenceFiles : (int?)null;
        SiteFile[] publicFiles = kept is null ? [.. shared.Reference(reference)] : [];
        var readers = standing.IsAsKept ? memory.Slices.Book!.Readers : LinkReaders.Of(composition);
        memory.Slices.Note(standing.ToKeep(readers, reference.Key, kept ?? publicFiles.Length, records));
        var groups = planned.Select(p => p.Kept).OfType<UnchangedGroup>();
        return new SlicedSite(
            standing.Own,
            plans,
            SitePlan.Of(
                common.Concat(publicFiles).Select((f, i) => f.ToPlan(i)).Concat(planned.SelectMany(p => p.Outputs)),
                [.. kept is null ? groups : groups.Append(new UnchangedGroup(reference.Group, SiteFile.MakerOf(reference, () => shared.Reference(reference))))],
                memory.Traces).For(readers),
            [.. problems.InOrder().Concat(records.SelectMany(r => r.Problems).Distinct()).OrderBy(p => p.Place)]);
    }

    // All slices, several at once; null when something stops one.
    private static IReadOnlyList<KnownSlice>? Slices(SiteWithoutJobs standing, SiteCache memory, SlicePlans plans, PlanInput site)
    {
        if (standing.IsAsKept && UnchangedSlices.Of(standing.Read, standing.Hashes, memory) is { } kept)
        {
            return Each(kept.Count, i => kept[i] is var (record, now) && now is null
                ? plans.Of(record, () => UnchangedSlices.Outline(record, standing.Read.Book))
                : plans.Of(now!, standing.Hashes.MarkOf(now!, site)));
        }

        return Links(standing.Read, memory.Slices, standing.Hashes) is { } links && Slice.CutAll(standing.Read.Book, links) is { } slices
            ? Each(slices.Count, i => plans.Of(slices[i], standing.Hashes.MarkOf(slices[i], site)))
            : null;
    }

    private static IReadOnlyList<T>? Each<T>(int count, Func<int, T?> make)
        where T : class
    {
        var slices = new T?[count];
        Parallel.For(0, count, (i, state) =>
        {
            slices[i] = make(i);
            if (slices[i] is null)
            {
                state.Stop();
            }
        });
        return slices.Contains(null) ? null : [.. slices.Select(p => p!)];
    }

    // Null when a job cannot be read, or two have one number.
    private static IReadOnlyList<(string File, JobLinks Links)>? Links(StandingBook standing, SliceCache memory, BookHashes hashes)
    {
        var files = standing.JobFiles;
        var links = new JobLinks?[files.Count];
        Parallel.For(0, links.Length, i => links[i] = memory.LinksOf(hashes.HashFile(files[i]))
            ?? (standing.ReadJobs([files[i]], new ProblemList()) is [var job] ? JobLinks.Of(job) : null));
        return links.All(l => l is not null) && files.Select(NumberOf).Distinct(StringComparer.Ordinal).Count() == files.Count
            ? [.. files.Zip(links, (f, l) => (f, l!))]
            : null;
    }

    private static string NumberOf(string jobFile) => Slice.FolderOf(jobFile) is var folder ? folder[(folder.LastIndexOf('/') + 1)..] : string.Empty;
}
