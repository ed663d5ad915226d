using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Cuts a book into the parts that pages are composed from, see <see cref="PageScope"/>.</summary>
/// <param name="whole">The whole book, worked out.</param>
/// <param name="files">Its files.</param>
/// <param name="fingerprint">Stands for templates, texts and keys.</param>
/// <param name="hashes">The hashes of its files; null to work them out anew.</param>
internal sealed class BookParts(Composition whole, IBookFiles files, string fingerprint, BookHashes? hashes = null)
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
        var part = whole.Book with { Jobs = [], Customers = new Dictionary<string, Customer>() };
        PlanInput[] inputs = [new("public part of the book", _hashes.Of(paths, PicturesIn(PicturesOf(part)))), _site];
        return new PageScope("reference", inputs, () => Within(part, LifeAssessment.None(part))) { Mark = PlannedOutput.KeyOf(ProgramMark.Value, inputs) };
    }

    /// <summary>The units of each cluster with their jobs: all that their owners' pages may quote.</summary>
    public IEnumerable<(PageScope Scope, IReadOnlyList<Unit> Units)> Clusters()
    {
        foreach (var ids in UnitClusters.Of(whole.Book).All)
        {
            Unit[] units = [.. ids.Select(id => whole.Book.Units[id])];
            var part = PartOf(units);
            yield return (new PageScope(NameOf(units), InputsOf(part, PicturesOf(part), _hashes, files, _site), () => Within(part)), units);
        }
    }

    /// <summary>The name of a part.</summary>
    /// <param name="units">Its units.</param>
    public static string NameOf(IReadOnlyList<Unit> units) => NameOf(units[0].Id);

    /// <summary>The name of a part.</summary>
    /// <param name="firstUnit">The id of the first of its units.</param>
    public static string NameOf(string firstUnit) => $"unit {firstUnit}";

    /// <summary>What stands for everything in a part.</summary>
    /// <param name="part">The part with its jobs.</param>
    /// <param name="pictures">Its pictures.</param>
    /// <param name="hashes">Hashes of the book's files.</param>
    /// <param name="files">The book's files.</param>
    /// <param name="site">Stands for templates, texts and keys.</param>
    public static IReadOnlyList<PlanInput> InputsOf(ShopBook part, PictureIndex pictures, BookHashes hashes, IBookFiles files, PlanInput site) =>
        [new PlanInput("part of the book", hashes.Of(PartShelves.TextsOf(part, part.Jobs.Select(j => j.Folder), files), PicturesIn(pictures))), site];

    /// <summary>What a page says of pictures: it follows from their sizes alone; a picture itself is a file of its own.</summary>
    public static string PicturesIn(PictureIndex pictures) => string.Join(
        '\n', pictures.Usable.Values.OrderBy(p => p.Path, StringComparer.Ordinal).Select(p => FormattableString.Invariant($"{p.Path} {p.Large} {p.Middle} {p.Small}")));

    private ShopBook PartOf(Unit[] units)
    {
        Job[] jobs = [.. units.SelectMany(u => whole.Book.JobsOf(u.Id)).OrderBy(j => j.Received).ThenBy(j => j.Number, StringComparer.Ordinal)];
        return PartShelves.Of(whole.Book, units, jobs.SelectMany(j => JobLinks.Of(j).Venues)) with { Jobs = jobs };
    }

    private Composition Within(ShopBook part, LifeAssessment? lives = null)
    {
        var judged = part.Jobs.ToDictionary(j => j.Number, j => whole.Assessment.Jobs[j.Number], StringComparer.Ordinal);
        return whole with
        {
            Assessment = new BookAssessment(part, judged, lives ?? LifeAssessment.Of(part, judged, new ProblemList()), whole.Assessment.Gearing.Within(part), []),
            Pictures = PicturesOf(part),
            Notes = PartShelves.Some(whole.Notes, part.Jobs.SelectMany(j => new[] { j.Notes, j.InternalNotes }.OfType<string>().Select(n => $"{j.Folder}/{n}"))),
        };
    }

    private PictureIndex PicturesOf(ShopBook part) =>
        new(PartShelves.Some(whole.Pictures.Usable, part.Jobs.SelectMany(j => j.Photos.Select(p => $"{j.Folder}/photos/{p.File}")).Concat(new[] { part.Shop.Logo }.OfType<string>())));
}
