using System.Diagnostics;
using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Tests.Hostile;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Photos;
using Layshaft.Site.Tests.Publishing;
using Layshaft.Site.Tests.Seasons;
using SkiaSharp;

namespace Layshaft.Site.Tests.Hostile;

/// <summary>A whole book with hostile files, published: a problem or a site, nothing read or written outside, no hang.</summary>
public sealed class HostileFilesTests : IDisposable
{
    private const string Photos = "jobs/2025/0003/photos";

    private readonly TempFolder home = new();

    public void Dispose() => home.Dispose();

    private string Book => Path.Combine(home.Path, "book");

    private string Out => Path.Combine(home.Path, "out");

    [Fact]
    public void A_note_of_a_hundred_megabytes_is_refused_unread()
    {
        Write();
        using (var note = File.Create(Path.Combine(Book, "jobs/2023/0001/internal.md")))
        {
            note.SetLength(100L << 20);
        }

        var problems = Guard.Run(() => SitePreparation.Of(BookReview.OfFolder(Book), Book).Problems, mostBytes: 192L << 20);
        Assert.Contains(problems, p => p.Code == "file-too-large" && p.Place.File == "jobs/2023/0001/internal.md");
    }

    [Fact]
    public void A_pipe_among_templates_and_stylesheets_does_not_hang_a_publish()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // there are no named pipes among files there
        }

        Write();
        Pipe("templates/look/more.css");
        var prepared = Guard.Run(() => SitePreparation.Of(BookReview.OfFolder(Book), Book), mostBytes: 512L << 20);
        Assert.True(prepared.Builder is not null, string.Join('\n', prepared.Problems));
        Assert.DoesNotContain(Guard.Run(() => prepared.Builder.Files().Select(f => f.Path).ToList(), mostBytes: 512L << 20), f => f.EndsWith("more.css", StringComparison.Ordinal));
        Pipe("templates/table.html");
        Assert.Contains(Guard.Run(() => SitePreparation.Of(BookReview.OfFolder(Book), Book), mostBytes: 512L << 20).Problems, p => p.Place.File == "templates/table.html" && p.Message.Contains("This file is empty", StringComparison.Ordinal));
    }

    [Fact]
    public void A_link_in_the_output_folder_leads_no_file_outside_it()
    {
        Write();
        Publish();
        var outside = Directory.CreateDirectory(Path.Combine(home.Path, "outside")).FullName;
        Directory.Delete(Path.Combine(Out, "shop"), recursive: true);
        Directory.CreateSymbolicLink(Path.Combine(Out, "shop"), outside);
        Guard.Run(() => new Publisher(new PublishOptions { Book = Book }).Publish(Sites.Plan(("shop/index.html", "new")), Out), mostBytes: 512L << 20);
        Assert.Empty(Directory.EnumerateFileSystemEntries(outside));
    }

    [Fact]
    public void A_pipe_that_a_stranger_left_in_the_output_is_left_and_does_not_hang()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Write();
        Publish();
        MakePipe(Path.Combine(Out, "customers", "pipe"));
        File.WriteAllText(Path.Combine(Book, "customers/first.yaml"), "name: Another name\nformerly: PLANTED-FIRST-NAME\n");
        Publish();
        Assert.True(File.Exists(Path.Combine(Out, "customers", "pipe")));
    }

    /// <summary>What lies in place of a photo, with the ending that it claims.</summary>
    public static TheoryData<string, string> InPlaceOfAPhoto => new()
    {
        { "a.jpg", "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"><script>alert(1)</script></svg>" },
        { "a.png", "<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><svg xmlns=\"http://www.w3.org/2000/svg\"><text>&x;</text></svg>" },
        { "a.jpg", "<html><script>alert(1)</script></html>" },
        { "a.jpg", "GIF89a/*" },
        { "a.heic", "%PDF-1.7\n" },
        { "a.webp", "" },
        { "a.avif", "push graphic-context\nimage over 0,0 0,0 'https://x.example/'\n" },
        { "a.png", "BOMB" },
        { "a.jpg", "PIPE" },
    };

    [Theory]
    [MemberData(nameof(InPlaceOfAPhoto))]
    public void What_is_no_photo_is_named_left_out_and_copied_nowhere(string name, string content)
    {
        Write($"photos:\n  - {{ file: {name}, caption: x }}\n");
        var path = Path.Combine(Book, Photos, name);
        if (content == "PIPE" && OperatingSystem.IsWindows())
        {
            return;
        }

        File.WriteAllBytes(path, content == "BOMB" ? PngChunks.Declaring(60_000, 60_000) : Encoding.Latin1.GetBytes(content));
        if (content == "PIPE")
        {
            MakePipe(path);
        }

        var prepared = Guard.Run(() => SitePreparation.Of(BookReview.OfFolder(Book), Book), mostBytes: 512L << 20);
        Assert.Contains(prepared.Problems, p => p is { Code: "picture", Severity: Severity.LeftOut } && p.Place.File.EndsWith("0003/job.yaml", StringComparison.Ordinal));
        Publish();
        Assert.DoesNotContain(Directory.EnumerateFiles(Out, "*", SearchOption.AllDirectories), f => f.EndsWith(".jpg", StringComparison.Ordinal));
        if (content.Length > 8)
        {
            Assert.DoesNotContain(Directory.EnumerateFiles(Out, "*", SearchOption.AllDirectories), f => File.ReadAllText(f).Contains(content, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Two_pictures_that_would_be_one_file_on_the_pages_are_a_problem_of_the_book()
    {
        Write("photos:\n  - { file: Strip 1.jpg, caption: x }\n  - { file: strip-1.png, caption: y }\n");
        using var bitmap = TestPicture.Quadrants(40, 30);
        File.WriteAllBytes(Path.Combine(Book, Photos, "Strip 1.jpg"), TestPicture.Encode(bitmap));
        File.WriteAllBytes(Path.Combine(Book, Photos, "strip-1.png"), TestPicture.Encode(bitmap, SKEncodedImageFormat.Png));
        Assert.Contains(BookReview.OfFolder(Book).Problems, p => p.Code == "duplicate-id" && p.Message.Contains("Strip 1.jpg", StringComparison.Ordinal));
    }

    private void Write(string more = "")
    {
        foreach (var (path, text) in SmallBook.Files())
        {
            var place = Path.Combine(Book, path);
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            File.WriteAllText(place, path.EndsWith("0003/job.yaml", StringComparison.Ordinal) ? text + more : text);
        }

        Directory.CreateDirectory(Path.Combine(Book, Photos));
    }

    private void Publish()
    {
        var prepared = SitePreparation.Of(BookReview.OfFolder(Book), Book);
        Assert.True(prepared.Builder is not null, string.Join('\n', prepared.Problems));
        var result = Guard.Run(() => new Publisher(new PublishOptions { Book = Book, Parallelism = 1 }).Publish(prepared.Builder.Plan(), Out), mostBytes: 2L << 30);
        Assert.Equal(PublishOutcome.Published, result.Outcome);
    }

    private void Pipe(string path)
    {
        var place = Path.Combine(Book, path);
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        MakePipe(place);
    }

    private static void MakePipe(string path)
    {
        File.Delete(path);
        using var made = Process.Start(new ProcessStartInfo("mkfifo") { ArgumentList = { path } })!;
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
    }
}
