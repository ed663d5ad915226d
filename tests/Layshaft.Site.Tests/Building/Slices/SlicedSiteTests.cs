using Layshaft.Site.Building;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Building.Slices;

/// <summary>A book that is read part by part.</summary>
public sealed class SlicedSiteTests
{
    [Fact]
    public void Only_a_part_in_which_something_changed_is_read_again()
    {
        using var book = new EditedBook();
        book.Again();
        Assert.Equal(3, book.SlicesRead);
        book.Again();
        Assert.Equal(0, book.SlicesRead);

        // A job of the second unit, a note of it, a picture of the first.
        foreach (var (kind, value) in new[] { (15, 1), (13, 2), (7, 1) })
        {
            book.Change(kind, value);
            book.Again();
            Assert.Equal(1, book.SlicesRead);
        }

        // What all parts name.
        book.Change(3, 1);
        book.Again();
        Assert.Equal(3, book.SlicesRead);
    }

    [Fact]
    public void Units_that_a_part_moved_between_are_read_together()
    {
        using var book = new EditedBook();
        book.Again();
        book.Change(12, 0);
        book.Again();
        Assert.Equal(1, book.SlicesRead);
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Fact]
    public void A_page_of_the_shop_is_made_again_only_when_what_it_tells_of_changed()
    {
        using var book = new EditedBook();
        book.Again();
        book.Change(1, 7);
        Assert.DoesNotContain(book.Again().Changed, p => p.StartsWith("shop/", StringComparison.Ordinal));
        book.Change(15, 7);
        book.Change(13, 7);
        Assert.Contains("shop/index.html", book.Again().Changed);
    }

    [Fact]
    public void The_cache_may_be_lost_or_damaged()
    {
        using var book = new EditedBook();
        book.Again();
        var bytes = File.ReadAllBytes(book.Kept("cache"));
        bytes[bytes.Length / 2] ^= 0x55;
        File.WriteAllBytes(book.Kept("cache"), bytes);
        book.Change(15, 1);
        book.Again();
        Assert.Equal(3, book.SlicesRead);
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
        File.Delete(book.Kept("cache"));
        book.Change(15, 2);
        book.Again();
        Assert.Equal(3, book.SlicesRead);
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Fact]
    public void A_picture_depends_on_its_file_and_the_picture_code_and_on_no_other_build_of_the_program()
    {
        using var book = new EditedBook();
        book.Again();
        var traces = new SiteCache(book.InSite(string.Empty)).Traces;
        var photo = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(book.Bytes("jobs/2023/0001/photos/ring.jpg")));
        var key = PlannedOutput.KeyOf(PictureFingerprint.Value, [new PlanInput("jobs/2023/0001/photos/ring.jpg", photo)]);
        Trace[] pictures = [.. traces.Files.Where(f => f.Path.Contains("/ring-", StringComparison.Ordinal))];
        Assert.NotEmpty(pictures);
        Assert.All(pictures, f => Assert.Equal(key, f.Key));
        Assert.DoesNotContain(ProgramFingerprint.Value.Split(' ')[0], PictureFingerprint.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cache_of_an_earlier_publish_does_no_harm()
    {
        using var book = new EditedBook();
        book.Again();
        var bytes = File.ReadAllBytes(book.Kept("cache"));

        // There and back again, with what was known before the first change put in its place after it.
        book.Change(15, 1);
        book.Again();
        File.WriteAllBytes(book.Kept("cache"), bytes);
        book.Change(7, 1);
        book.Again();
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
        book.Write("jobs/2025/0004/job.yaml", book.Text("jobs/2025/0004/job.yaml").Replace("Looks worn 1.", "Looks worn.", StringComparison.Ordinal));
        book.Again();
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Fact]
    public void Where_a_job_alone_changed_no_other_file_is_opened()
    {
        using var book = new EditedBook();
        book.Again();

        // Nobody would know of these: their size and time are what they were.
        book.WriteUnnoticed("units/c.yaml", "gearbox", "gearbix");
        book.WriteUnnoticed("jobs/2025/0004/job.yaml", "received", "recieved");
        book.Change(1, 7);
        var result = book.Again();
        Assert.Equal(1, book.SlicesRead);
        Assert.NotEmpty(result.Changed);
        Assert.All(result.Changed, f => Assert.StartsWith("customers/", f, StringComparison.Ordinal));
        Assert.DoesNotContain(book.Problems, p => p.Severity == Layshaft.Book.Problems.Severity.Stops);
    }

    [Fact]
    public void A_file_that_has_gone_from_a_job_is_missed()
    {
        using var book = new EditedBook();
        book.Again();
        book.Remove("jobs/2023/0001/photos/ring.jpg");
        Assert.False(book.CanBeSliced());
        Assert.Contains(book.ProblemsOfTheWhole(), p => p.Code == "missing-file");
    }

    [Fact]
    public void Another_secret_moves_the_pages_of_all_customers()
    {
        using var book = new EditedBook();
        book.Again();
        book.Write(".layshaft-secret", "another-secret-for-tests-long-enough-9876543210");
        book.Again();
        Assert.Equal(3, book.SlicesRead);
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Fact]
    public void A_part_whose_pictures_are_young_is_read_again_and_no_other()
    {
        using var book = new EditedBook();
        book.Again();
        book.Touch("jobs/2023/0001/photos/ring.jpg", DateTime.UtcNow);
        book.Again();
        Assert.Equal(1, book.SlicesRead);
        book.Again();
        Assert.Equal(1, book.SlicesRead);
        book.Touch("jobs/2023/0001/photos/ring.jpg", DateTime.UtcNow.AddDays(-1));
        book.Again();
        Assert.Equal(1, book.SlicesRead);
        book.Again();
        Assert.Equal(0, book.SlicesRead);
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Fact]
    public void A_file_that_somebody_damaged_in_the_site_is_made_again_though_nothing_changed_in_the_book()
    {
        using var book = new EditedBook();
        book.Again();
        var page = book.Tree("site").Keys.First(p => p.StartsWith("customers", StringComparison.Ordinal) && p.EndsWith("index.html", StringComparison.Ordinal));
        File.WriteAllText(book.InSite(page), "nothing");
        var result = book.Again();
        Assert.Equal(0, book.SlicesRead);
        Assert.Equal((PublishOutcome.Published, 1), (result.Outcome, result.Made));
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Theory]
    [InlineData("jobs/2025/0003/job.yaml", "unit: nobody\nreceived: 2025-11-01\nuse: 60 h\n")]
    [InlineData("jobs/2025/0003/job.yaml", "unit: a\nreceived: 2025-11-01\nuse: 1 h\n")]
    [InlineData("jobs/2025/0003/job.yaml", "unit: [a\n")]
    [InlineData("jobs/2026/0003/job.yaml", "unit: b\nreceived: 2026-11-01\nuse: 60 h\ncomplaint: x\n")]
    public void A_job_that_no_customer_has_a_page_of_stops_nothing(string path, string text)
    {
        using var book = new EditedBook();
        book.Write(path, text);
        Assert.False(book.CanBeSliced());
        Assert.DoesNotContain(book.ProblemsOfTheWhole(), p => p.Severity == Layshaft.Book.Problems.Severity.Stops);
        Assert.Contains(book.ProblemsOfTheWhole(), p => p.Code == "job-left-out" && p.Place.File == path);
    }

    [Theory]
    [InlineData("jobs/2025/0003/job.yaml", "unit: a\nreceived: 2025-11-01\nuse: 60 h\nrenewed: [{ part: front, from: nobody }]\n")]
    [InlineData("units/b.yaml", "gearbox: nothing\n")]
    [InlineData("venues/hill.yaml", "name: Hill\n")]
    [InlineData("jobs/2025/0004/internal.md", "[here](javascript:alert(1))\n")]
    public void A_book_that_something_stops_is_read_as_a_whole(string path, string text)
    {
        using var book = new EditedBook();
        book.Write(path, text);
        Assert.False(book.CanBeSliced());
        Assert.Contains(book.ProblemsOfTheWhole(), p => p.Severity == Layshaft.Book.Problems.Severity.Stops);
    }
}
