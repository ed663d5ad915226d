using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>The demo book, published once for all tests, and a browser to look at it.</summary>
public sealed class PublishedDemo : IAsyncLifetime
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-browser-");
    private IPlaywright? playwright;

    public IBrowser Chromium { get; private set; } = null!;

    /// <summary>Knows the pages.</summary>
    public SiteBuilder Builder { get; private set; } = null!;

    public string Site => Path.Combine(home.FullName, "site");

    /// <summary>Every page, by its path in the site.</summary>
    public IReadOnlyList<string> Pages => [.. Directory
        .EnumerateFiles(Site, "*.html", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(Site, p).Replace('\\', '/'))
        .Order(StringComparer.Ordinal)];

    /// <summary>The pages of jobs: reports, and estimates that wait for an answer.</summary>
    public IReadOnlyList<string> Reports => [.. Pages.Where(p => p.StartsWith("customers/", StringComparison.Ordinal) && KindOf(p) is "report" or "estimate")];

    /// <summary>The reports on finished jobs.</summary>
    public IReadOnlyList<string> FinishedReports => [.. Reports.Where(p => KindOf(p) == "report")];

    /// <summary>The report with the most in it.</summary>
    public string FullestReport => Reports.MaxBy(Size)!;

    /// <summary>
    /// A page of each kind: the fullest report, the longest history, and so on; of the pages on which gears are chosen the
    /// shortest, because they differ in how many choices they repeat and in nothing else.
    /// </summary>
    public IReadOnlyList<string> OneOfEachKind => [.. Pages
        .GroupBy(KindOf)
        .Select(g => g.Key is "reference/car" or "reference/gearbox" ? g.MinBy(Size)! : g.MaxBy(Size)!)
        .Order(StringComparer.Ordinal)];

    public async Task InitializeAsync()
    {
        var book = Path.Combine(home.FullName, "book");
        Copy(Path.Combine(AppContext.BaseDirectory, "demo-data"), book);
        var site = SitePreparation.Of(BookReview.OfFolder(book), book);
        Assert.True(site.Builder is not null, string.Join('\n', site.Problems));
        Builder = site.Builder;
        var result = new Publisher(new PublishOptions { Book = book }).Publish(site.Builder.Plan(), Site);
        Assert.Equal(PublishOutcome.Published, result.Outcome);
        playwright = await Playwright.CreateAsync();
        Chromium = await Browser.Launch(playwright);
    }

    public async Task DisposeAsync()
    {
        if (Chromium is not null)
        {
            await Chromium.DisposeAsync();
        }

        playwright?.Dispose();
        home.Delete(recursive: true);
    }

    /// <summary>The address of a page on disk.</summary>
    public string Address(string page) => new Uri(Path.Combine(Site, page)).AbsoluteUri;

    private long Size(string page) => new FileInfo(Path.Combine(Site, page)).Length;

    // Shown for a folder that has no page of its own.
    private const string Empty = "empty";

    // Reports and estimates share an address, histories are one folder up; elsewhere the name up to its first hyphen tells.
    private string KindOf(string page)
    {
        var parts = page.Split('/');
        return parts[0] != "customers" ? $"{parts[0]}/{parts[^1].Split('-')[0]}"
            : parts[1].Length != CustomerKeys.Length ? Empty
            : parts.Length == 3 ? "history"
            : parts[^1] == "lap.html" ? "lap sheet"
            : File.ReadAllText(Path.Combine(Site, page)).Contains("class=\"answer\"", StringComparison.Ordinal) ? "estimate"
            : "report";
    }

    internal static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}

[CollectionDefinition(Name)]
public sealed class OneDemo : ICollectionFixture<PublishedDemo>
{
    public const string Name = "published demo";
}
