using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Cli.Commands;
using Layshaft.Cli.Preview;
using Layshaft.Cli.Terminal;

namespace Layshaft.Cli.Tests;

/// <summary>What is said at many places is printed once; what must be mended is printed at each.</summary>
public sealed class ProblemGroupTests : IDisposable
{
    private const string Overdue = "note: 'Outside micrometer 0 to 25 mm' was due for calibration on ";

    // Of the five jobs, three come in while the one before is open.
    private const string Summary = "No problems, 8 notes.";
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-groups-");

    private string Book => Path.Combine(home.FullName, "book");

    public void Dispose() => home.Delete(recursive: true);

    [Fact]
    public void Four_notes_that_say_the_same_become_one_line_at_the_first_place()
    {
        Problem[] problems = [Note("a", "Old."), Note("b", "Torn."), Note("c", "Old."), Note("d", "Old."), Note("e", "Old.")];
        Assert.Equal(
            ["a(1,2): note: Old. Renew it. Repeated at 3 more places, the last in e(1,2). [age]", "b(1,2): note: Torn. Renew it. [age]"],
            ProblemLines.Of(problems));
        Assert.Equal("No problems, 5 notes.", ProblemLines.Summary(problems));
    }

    [Fact]
    public void Three_notes_problems_and_notes_that_differ_keep_their_lines()
    {
        Problem[] problems =
        [
            .. "abc".Select(f => Note($"{f}", "Old.")),
            .. "defg".Select(f => Note($"{f}", $"Old since {f}.")),
            .. "hijk".Select(f => Note($"{f}", "Gone.") with { Severity = Severity.Stops }),
            .. "lmno".Select(f => Note($"{f}", "Left.") with { Severity = Severity.LeftOut }),
            .. "pqrs".Select(f => Note($"{f}", "Coded.") with { Code = $"code-{f}" }),
        ];
        Assert.Equal(problems.Select(p => p.ToString()), ProblemLines.Of(problems));
    }

    [Fact]
    public void A_check_prints_each_place_when_it_is_asked_to()
    {
        WriteOverdueBook();
        var (few, said) = Check();
        var once = Assert.Single(few, IsOverdue);
        Assert.Contains("jobs/2026/0001/job.yaml", once, StringComparison.Ordinal);
        Assert.Contains("Repeated at 4 more places, the last in jobs/2026/0005/job.yaml(8,", once, StringComparison.Ordinal);
        Assert.Equal([Summary, "Repeated notes are printed once; --every-place prints every occurrence."], said);

        var (all, summary) = Check("--every-place");
        Assert.Equal(["0001", "0002", "0003", "0004", "0005"], all.Where(IsOverdue).Select(l => l.Split("jobs/2026/")[1][..4]));
        Assert.All(all, l => Assert.DoesNotContain("more places", l, StringComparison.Ordinal));
        Assert.Equal([Summary], summary);
    }

    [Fact]
    public void A_publish_and_the_next_that_finds_nothing_changed_print_the_same_line_once()
    {
        WriteOverdueBook();
        var site = Path.Combine(home.FullName, "site");
        var first = Run("publish", Book, "--out", site);
        var second = Run("publish", Book, "--out", site);
        Assert.Contains("Nothing has changed.", second.Output, StringComparison.Ordinal);
        Assert.All([first, second], r => Assert.Contains("Repeated at 4 more places", Assert.Single(Lines(r.Errors), IsOverdue), StringComparison.Ordinal));
        Assert.All([first, second], r => Assert.Contains(Summary, r.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void The_preview_page_shows_it_once()
    {
        WriteOverdueBook();
        var site = new PreviewSite(Book, Path.Combine(home.FullName, "site"));
        site.Publish();
        Assert.False(site.State.IsStopped);
        Assert.Equal(5, site.State.Problems.Count(p => p.Code == "calibration-overdue"));
        var page = PreviewPages.Start(site);
        Assert.Equal(2, page.Split("was due for calibration").Length);
        Assert.Contains("Repeated at 4 more places, the last in jobs/2026/0005/job.yaml(8,", page, StringComparison.Ordinal);
    }

    private static bool IsOverdue(string line) => line.Contains(Overdue, StringComparison.Ordinal);

    private static Problem Note(string file, string message) => new("age", new Place(file, 1, 2), message, "Renew it.", Severity.Notice);

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    // The small book's one measurement with the micrometer, and four more jobs with one each.
    private void WriteOverdueBook()
    {
        var small = Path.Combine(AppContext.BaseDirectory, "Small");
        foreach (var file in Directory.EnumerateFiles(small, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Book, Path.GetRelativePath(small, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        var shop = Path.Combine(Book, "shop.yaml");
        File.WriteAllText(shop, File.ReadAllText(shop).Replace("error_limit: 0.002 mm, calibrated: 2026-01-10", "error_limit: 0.002 mm, calibrated: 2024-01-10", StringComparison.Ordinal));
        for (var i = 2; i <= 5; i++)
        {
            var folder = Directory.CreateDirectory(Path.Combine(Book, "jobs", "2026", $"000{i}"));
            File.WriteAllText(Path.Combine(folder.FullName, "job.yaml"), $$"""
                unit: "0001"
                received: 2026-0{{i + 3}}-02
                use: {{i + 20}} h
                complaint: Look at it.
                stripped: 2026-0{{i + 3}}-03
                findings:
                  - part: fork-12
                    measurements: [{measure: pad, instrument: micrometer, readings: [5.93 mm]}]
                    sentence: The fork has hardly worn.
                """);
        }
    }

    private (string[] Errors, string[] Output) Check(params string[] more)
    {
        var (_, output, errors) = Run(["check", Book, .. more]);
        return (Lines(errors), Lines(output));
    }

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }
}
