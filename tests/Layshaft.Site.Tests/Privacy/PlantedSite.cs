using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>The planted book, written to disk with its pictures and published as a technician publishes it, once for all tests.</summary>
public sealed class PlantedSite : IDisposable
{
    private readonly TempFolder home = new();
    private readonly Dictionary<(string Job, string Picture), SKColor> colours = [];

    public PlantedSite()
    {
        Planting = Planting.Of(PlantedBook.Templates);
        foreach (var (name, text) in Planting.Files)
        {
            home.Write($"book/{name}", text);
        }

        foreach (var photo in Planting.All.Values.Where(p => p.Path.StartsWith("jobs.photos[", StringComparison.Ordinal) && p.Path.EndsWith(".file", StringComparison.Ordinal)).ToArray())
        {
            AddPicture(photo.File[..photo.File.LastIndexOf('/')], photo.Text);
        }

        Publish();
    }

    internal Planting Planting { get; }

    /// <summary>The book.</summary>
    public ShopBook Book => Review.Assessment!.Book;

    /// <summary>The book, read and worked out.</summary>
    public BookReview Review { get; private set; } = null!;

    /// <summary>The site's pages, composed.</summary>
    public SiteBuilder Builder { get; private set; } = null!;

    /// <summary>Every file of the output folder by its path there, the shop's own and the customers'.</summary>
    public IReadOnlyDictionary<string, byte[]> Files { get; private set; } = new Dictionary<string, byte[]>();

    /// <summary>The shop's secret.</summary>
    public string Secret => File.ReadAllText(home.At($"book/{ShopSecret.FileName}")).Trim();

    /// <summary>Every owner of every unit with the folder of his pages.</summary>
    public IReadOnlyList<(OwnerView View, string Folder)> Owners =>
        [.. Book.Units.Values.SelectMany(u => OwnerView.Of(Book, u)).Select(v => (v, $"{Builder.Composition.Addresses.Folder(v)}/"))];

    /// <summary>Which picture of which job shows a colour; null where none comes near.</summary>
    public (string Job, string Picture)? PictureOf(SKColor colour)
    {
        var near = colours.MinBy(c => Distance(c.Value, colour));
        return Distance(near.Value, colour) <= 24 ? near.Key : null;
    }

    public void Dispose() => home.Dispose();

    private void Publish()
    {
        Review = BookReview.OfFolder(home.At("book"));
        var prepared = SitePreparation.Of(Review, home.At("book"));
        Assert.True(prepared.Builder is not null, string.Join('\n', prepared.Problems));
        Builder = prepared.Builder;
        var result = new Publisher(new PublishOptions { Book = home.At("book") }).Publish(Builder.Plan(), home.At("site"));
        Assert.Equal(PublishOutcome.Published, result.Outcome);
        Files = Directory.EnumerateFiles(home.At("site"), "*", SearchOption.AllDirectories)
            .ToDictionary(p => Path.GetRelativePath(home.At("site"), p).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);
    }

    // Each of another colour, with a place, a device and words of its own in what a camera writes beside the pixels.
    private void AddPicture(string folder, string file)
    {
        var colour = SKColor.FromHsv(colours.Count * 360f / 16, 90, 60 + (20 * (colours.Count % 3)));
        colours[(folder[(folder.LastIndexOf('/') + 1)..], file)] = colour;
        using var bitmap = TestPicture.Flat(640, 480, colour);
        var word = Planting.New(folder, "jobs.photos[].place", plain: true);
        home.WriteBytes($"book/{folder}/photos/{file}", PlantedMetadata.InJpeg(TestPicture.Encode(bitmap), word: word.Text));
    }

    private static int Distance(SKColor a, SKColor b) => Math.Max(Math.Abs(a.Red - b.Red), Math.Max(Math.Abs(a.Green - b.Green), Math.Abs(a.Blue - b.Blue)));
}
