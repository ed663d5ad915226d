using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Photos;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>A photo whose header is whole and whose picture is not shows only when it is decoded.</summary>
public sealed class DamagedPhotoTests : IDisposable
{
    private const string Photo = "book/jobs/2026/0009/photos/ring.jpg";
    private readonly TempFolder _temp = new();

    public DamagedPhotoTests()
    {
        foreach (var (path, text) in SmallBook.Files())
        {
            _temp.Write($"book/{path}", text);
        }

        WriteJob("Fine.");
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void It_is_a_problem_of_each_publish_until_it_is_whole_and_the_rest_goes_on()
    {
        var whole = SyntheticPhoto.Jpeg(1200, 900, number: 3);
        _temp.WriteBytes(Photo, whole[..(whole.Length / 2)]);
        var first = Publish();
        var problem = Assert.Single(Damaged(first));
        Assert.Equal(("picture", Severity.LeftOut, "jobs/2026/0009/job.yaml"), (problem.Code, problem.Severity, problem.Place.File));
        Assert.StartsWith("ring.jpg is incomplete: the image ends at ", problem.Message, StringComparison.Ordinal);
        Assert.Contains("Copy it from the phone or camera again. Until then a placeholder is shown.", problem.ToString(), StringComparison.Ordinal);
        var pictures = Pictures();
        Assert.Equal(["ring-1200.jpg", "ring-480.jpg", "ring-960.jpg"], pictures.Keys);

        // Nothing of the photo changed: it is said again.
        WriteJob("Fine, and dandy.");
        Assert.Equal(problem.Message, Assert.Single(Damaged(Publish())).Message);
        Assert.Equal(pictures, Pictures());

        _temp.WriteBytes(Photo, whole);
        Assert.Empty(Damaged(Publish()));
        Assert.All(Pictures(), p => Assert.NotEqual(pictures[p.Key], p.Value));

        // What is whole is not made again.
        WriteJob("Fine as ever.");
        var prepared = Prepare();
        var result = new Publisher(new PublishOptions { Book = _temp.At("book") }).Publish(prepared.Builder!.Plan(), _temp.At("site"));
        Assert.DoesNotContain(result.Changed, c => c.EndsWith(".jpg", StringComparison.Ordinal));
        Assert.True(result.Kept >= pictures.Count);
    }

    [Fact]
    public void It_stands_at_its_place_among_the_problems_that_were_known_before()
    {
        var whole = SyntheticPhoto.Jpeg(1200, 900, number: 3);
        _temp.WriteBytes(Photo, whole[..(whole.Length / 2)]);
        _temp.Write("book/shop.yaml", $"colour: '#f2b705'\n{SmallBook.Shop}");
        var published = Publish();
        Assert.DoesNotContain(published.Problems, p => p.Code == "picture");
        Assert.Equal(["jobs/2026/0009/job.yaml", "shop.yaml"], published.AllProblems().Where(p => p.Code == "picture" || p.Place.File == "shop.yaml").Select(p => p.Place.File));
    }

    private void WriteJob(string verdict) => _temp.Write(
        "book/jobs/2026/0009/job.yaml",
        SmallBook.Job("a", "2026-11-01", "80 h", $"complaint: New.\nverdict: {verdict}\nfinished: 2026-11-10\nphotos:\n  - {{ file: ring.jpg, caption: A ring }}\n" + SmallBook.Rings(0.60, 0.70, 0.80, 0.65)));

    private SitePreparation Prepare()
    {
        var prepared = SitePreparation.Of(BookReview.OfFolder(_temp.At("book")), _temp.At("book"));
        Assert.True(prepared.Builder is not null, string.Join('\n', prepared.Problems));
        Assert.DoesNotContain(prepared.Problems, p => p.Code == "picture");
        return prepared;
    }

    private static IEnumerable<Problem> Damaged(SitePreparation published) => published.AllProblems().Where(p => p.Code == "picture");

    private SitePreparation Publish()
    {
        var prepared = Prepare();
        Assert.Equal(PublishOutcome.Published, new Publisher(new PublishOptions { Book = _temp.At("book") }).Publish(prepared.Builder!.Plan(), _temp.At("site")).Outcome);
        return prepared;
    }

    private SortedDictionary<string, string> Pictures() => new(
        Directory.EnumerateFiles(_temp.At("site/customers"), "ring-*.jpg", SearchOption.AllDirectories)
            .DistinctBy(Path.GetFileName)
            .ToDictionary(p => Path.GetFileName(p), p => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(p)))),
        StringComparer.Ordinal);
}
