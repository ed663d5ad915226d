using System.Security.Cryptography;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Puts together what the shop's own pages are composed from, out of what is kept of all slices.</summary>
/// <param name="standing">The book without its jobs.</param>
/// <param name="composition">What pages are composed from, without jobs.</param>
/// <param name="hashes">Hashes of the book's text files.</param>
/// <param name="site">Stands for templates, texts and keys.</param>
/// <param name="slices">All slices.</param>
internal sealed class ShopSlices(StandingBook standing, Composition composition, BookHashes hashes, PlanInput site, IReadOnlyList<CachedSlice> slices)
{
    private readonly Lazy<IReadOnlyList<UnitTally>> _units = new(() => ShopTally.InOrder(slices.SelectMany(p => p.Tally.UnpackUnits())));
    private readonly Lazy<IReadOnlyList<JobTally>> _jobs = new(() => [.. slices.SelectMany(p => p.Tally.UnpackJobs())]);
    private readonly IReadOnlyList<string> _bench = [.. slices.SelectMany(p => p.Jobs).Where(j => j.IsOnTheBench).Select(j => j.File).Order(StringComparer.Ordinal)];
    private readonly DateOnly? _newest = slices.Max(p => p.Newest);
    private readonly PlanInput _standing = hashes.InputOf("book without jobs", hashes.WithoutJobs(), composition.Pictures);

    /// <summary>The scope of a page.</summary>
    /// <param name="page">The page.</param>
    public PageScope Scope(ShopPage page) => new(page.Path, [.. Inputs(page.Sources)], () => Composition(page.Sources))
    {
        // What a page tells of ten seasons is as large as all else in memory.
        Queue = page.Sources.HasFlag(ShopSources.Units) || page.Sources.HasFlag(ShopSources.Jobs) || page.Sources.HasFlag(ShopSources.Lives) ? "shop" : null,
    };

    /// <summary>What a page is composed from.</summary>
    /// <param name="page">The page.</param>
    /// <param name="scope">Its scope.</param>
    public ShopContext Context(ShopPage page, PageScope scope) => scope.Once("context", () => new ShopContext(
        scope.Composition,
        new ShopTally(
            page.Sources.HasFlag(ShopSources.Units) ? _units.Value : [],
            page.Sources.HasFlag(ShopSources.Jobs) ? _jobs.Value : [],
            page.Sources.HasFlag(ShopSources.Lives) ? [.. LifeTally.Together(slices.Select(p => p.Tally.UnpackLives()))] : [],
            _newest)));

    private IEnumerable<PlanInput> Inputs(ShopSources sources)
    {
        yield return _standing;
        yield return site;
        yield return new PlanInput("newest day", FormattableString.Invariant($"{_newest?.DayNumber}"));
        if (sources.HasFlag(ShopSources.Units))
        {
            yield return new PlanInput("units", HashOf(t => t.Units));
        }

        if (sources.HasFlag(ShopSources.Jobs))
        {
            yield return new PlanInput("jobs", HashOf(t => t.Jobs));
        }

        if (sources.HasFlag(ShopSources.Lives))
        {
            yield return new PlanInput("lives", HashOf(t => t.Lives));
        }

        if (sources.HasFlag(ShopSources.Bench))
        {
            yield return new PlanInput("bench", hashes.HashAll(_bench.Select(Slice.FolderOf).SelectMany(f => standing.Files.Below($"{f}/")).Select(f => f.Path).Where(BookHashes.IsText)));
        }
    }

    private string HashOf(Func<PackedTally, ReadOnlyMemory<byte>> packed)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var slice in slices)
        {
            hash.AppendData(packed(slice.Tally).Span);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private Composition Composition(ShopSources sources)
    {
        if (!sources.HasFlag(ShopSources.Bench))
        {
            return composition;
        }

        // What is wrong in them was told when their slices were read.
        var jobs = standing.ReadJobs(_bench, new ProblemList());
        var book = standing.Book with { Jobs = jobs };
        return composition with
        {
            Assessment = new BookAssessment(book, new Dictionary<string, JobAssessment>(), LifeAssessment.None(book), composition.Assessment.Gearing, []),
            Notes = WrittenTexts.OfJobs(jobs, standing.Files, new ProblemList()),
        };
    }
}
