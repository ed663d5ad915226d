using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Cuts a book into the slices that pages are composed from, see <see cref="PageScope"/>.</summary>
/// <param name="whole">The whole book, worked out.</param>
/// <param name="files">Its files.</param>
/// <param name="fingerprint">Stands for templates, texts and keys.</param>
/// <param name="hashes">The hashes of its files; null to work them out anew.</param>
internal sealed class BookSlices(Composition whole, IBookFiles files, string fingerprint, BookHashes? hashes = null)
{
    private readonly BookHashes _hashes = hashes ?? new(files);
    private readonly PlanInput _site = new("site", fingerprint);

    /// <summary>Everything, for the shop's own pages.</summary>
    public PageScope Whole(string name) => new(
        name,
        [new PlanInput("book", _hashes.Of(files.All.Select(f => f.Path).Where(BookHashes.IsText), PicturesIn(whole.Pictures))), _site],
        () => whole);

    /// <summary>What anyone may read: gearboxes, cars and venues, without jobs and customers.</summary>
    public PageScope Public()
    {
        var paths = files.All.Select(f => f.Path)
            .Where(p => BookHashes.IsText(p) && !p.StartsWith("jobs/", StringComparison.Ordinal) && !p.StartsWith("customers/", StringComparison.Ordinal));
        var slice = whole.Book with { Jobs = [], Customers = new Dictionary<string, Customer>() };
        PlanInput[] inputs = [new("public slice of the book", _hashes.Of(paths, PicturesIn(PicturesOf(slice)))), _site];
        return new PageScope("reference", inputs, () => Within(slice, LifeAssessment.None(slice)));
    }

    /// <summary>The units of each cluster with their jobs: all that their owners' pages may quote.</summary>
    public IEnumerable<(PageScope Scope, IReadOnlyList<Unit> Units)> Clusters()
    {
        foreach (var ids in UnitClusters.Of(whole.Book).All)
        {
            Unit[] units = [.. ids.Select(id => whole.Book.Units[id])];
            var slice = SliceOf(units);
            yield return (new PageScope(NameOf(units), InputsOf(slice, PicturesOf(slice), _hashes, files, _site), () => Within(slice)), units);
        }
    }

    /// <summary>The name of a slice.</summary>
    /// <param name="units">Its units.</param>
    public static string NameOf(IReadOnlyList<Unit> units) => NameOf(units[0].Id);

    /// <summary>The name of a slice.</summary>
    /// <param name="firstUnit">The id of the first of its units.</param>
    public static string NameOf(string firstUnit) => $"unit {firstUnit}";

    /// <summary>What stands for everything in a slice.</summary>
    /// <param name="slice">The slice with its jobs.</param>
    /// <param name="pictures">Its pictures.</param>
    /// <param name="hashes">Hashes of the book's files.</param>
    /// <param name="files">The book's files.</param>
    /// <param name="site">Stands for templates, texts and keys.</param>
    public static IReadOnlyList<PlanInput> InputsOf(ShopBook slice, PictureIndex pictures, BookHashes hashes, IBookFiles files, PlanInput site) =>
        [new PlanInput("slice of the book", hashes.Of(SliceBook.TextsOf(slice, slice.Jobs.Select(j => j.Folder), files), PicturesIn(pictures))), site];

    /// <summary>What a page says of pictures: it follows from their sizes alone; a picture itself is a file of its own.</summary>
    public static string PicturesIn(PictureIndex pictures) => string.Join(
        '\n', pictures.Usable.Values.OrderBy(p => p.Path, StringComparer.Ordinal).Select(p => FormattableString.Invariant($"{p.Path} {p.Large} {p.Middle} {p.Small}")));

    private ShopBook SliceOf(Unit[] units)
    {
        Job[] jobs = [.. units.SelectMany(u => whole.Book.JobsOf(u.Id)).OrderBy(j => j.Received).ThenBy(j => j.Number, StringComparer.Ordinal)];
        return SliceBook.Of(whole.Book, units, jobs.SelectMany(j => JobLinks.Of(j).Venues)) with { Jobs = jobs };
    }

    private Composition Within(ShopBook slice, LifeAssessment? lives = null)
    {
        var judged = slice.Jobs.ToDictionary(j => j.Number, j => whole.Assessment.Jobs[j.Number], StringComparer.Ordinal);
        return whole with
        {
            Assessment = new BookAssessment(slice, judged, lives ?? LifeAssessment.Of(slice, judged, new ProblemList()), whole.Assessment.Gearing.Within(slice), []),
            Pictures = PicturesOf(slice),
            Notes = SliceBook.Some(whole.Notes, slice.Jobs.SelectMany(j => new[] { j.Notes, j.InternalNotes }.OfType<string>().Select(n => $"{j.Folder}/{n}"))),
        };
    }

    private PictureIndex PicturesOf(ShopBook slice) =>
        new(SliceBook.Some(whole.Pictures.Usable, slice.Jobs.SelectMany(j => j.Photos.Select(p => $"{j.Folder}/photos/{p.File}")).Concat(new[] { slice.Shop.Logo }.OfType<string>())));
}
