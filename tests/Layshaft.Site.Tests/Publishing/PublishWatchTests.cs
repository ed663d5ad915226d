using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>What a look at the book is good for besides telling whether anything changed.</summary>
public sealed class PublishWatchTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public PublishWatchTests()
    {
        foreach (var path in new[] { "shop.yaml", "units/a.yaml", "jobs/2026/0001/job.yaml", "jobs/2026/0001/photos/größe 1.jpg", "jobs/2026/0001/empty", ".hidden/x", "jobs/.draft", "a/b/c/d/e/f/g/h.txt" })
        {
            Write(path);
        }
    }

    public void Dispose() => _temp.Dispose();

    private string Book => _temp.At("book");

    private void Write(string path)
    {
        var place = StateFolder.Place(Book, path);
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        File.WriteAllText(place, path.EndsWith("empty", StringComparison.Ordinal) ? string.Empty : path);
        File.SetLastWriteTimeUtc(place, new DateTime(2026, 3, 1, 12, 0, path.Length, DateTimeKind.Utc));
    }

    private FolderBookFiles? Seen(string output) => PublishWatch.Begin(Book, output, TemplateFolders.BesideProgram())!.BookFiles();

    [Fact]
    public void It_has_seen_the_files_that_a_look_through_the_book_would_find()
    {
        var seen = Seen(_temp.At("reports"))!;
        var problems = new ProblemList();
        Assert.Equal(FolderBookFiles.Look(Book, problems).All, seen.All);
        Assert.Equal(0, problems.Count);
        Assert.Equal(6, seen.All.Count);
        Assert.Equal("units/a.yaml"u8.ToArray(), seen.Read("units/a.yaml"));
        Assert.Throws<FileNotFoundException>(() => seen.Read("../book/shop.yaml"));
    }

    [Fact]
    public void Where_something_is_worth_a_word_the_book_is_looked_through_again()
    {
        File.CreateSymbolicLink(Path.Combine(Book, "jobs", "link.txt"), Path.Combine(Book, "shop.yaml"));
        Assert.Null(Seen(_temp.At("reports")));
        File.Delete(Path.Combine(Book, "jobs", "link.txt"));
        Assert.NotNull(Seen(_temp.At("reports")));
        Directory.CreateSymbolicLink(Path.Combine(Book, "jobs", "link"), Path.Combine(Book, "units"));
        Assert.Null(Seen(_temp.At("reports")));
        Directory.Delete(Path.Combine(Book, "jobs", "link"));
        Directory.CreateDirectory(StateFolder.Place(Book, "a/b/c/d/e/f/g/i"));
        Assert.NotNull(Seen(_temp.At("reports")));
        Directory.CreateDirectory(StateFolder.Place(Book, "a/b/c/d/e/f/g/i/j"));
        Assert.Null(Seen(_temp.At("reports")));
        var problems = new ProblemList();
        FolderBookFiles.Look(Book, problems);
        Assert.Equal("too-deep-folder", Assert.Single(problems.InOrder()).Code);
    }

    [Fact]
    public void A_site_within_its_book_was_left_out_so_the_book_is_looked_through_again() => Assert.Null(Seen(Path.Combine(Book, "reports")));
}
