using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Cli.Commands;
using Layshaft.Cli.Entering;
using UnitsNet;

namespace Layshaft.Cli.Tests;

/// <summary>Readings typed at the bench go into the job file at once, and nothing else in it changes.</summary>
public sealed class EnterTests : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-enter-");

    private string Book => Path.Combine(home.FullName, "book");

    private string JobFile => Path.Combine(Book, "jobs", "2026", "0002", "job.yaml");

    public EnterTests()
    {
        Run("", "new-book", Book);
        Directory.Delete(Path.Combine(Book, "jobs", "2026", "0002"), recursive: true);
        Run("", "intake", "d4-001", Book, "--received", "2026-11-16", "--use", "37.5 h", "--complaint", "Look it over.");
    }

    public void Dispose() => home.Delete(recursive: true);

    [Fact]
    public void Readings_go_into_the_brackets_and_every_other_byte_stays()
    {
        var before = File.ReadAllText(JobFile);

        // ring-12: two readings; ring-34: skipped; fork-12: with a unit; bearing: a comma; seal: a grade; float; nut
        var (code, output, errors) = Run("0.52\n0,53\n\n\n5.91 mm\n\n0,031\n\nrenew\n0.07\n\n00155.0\n\n", "enter", "0002", Book);

        Assert.True(code == ExitCode.Fine, errors);
        var expected = before
            .Replace("ring-12: []", "ring-12: [0.52, 0.53]", StringComparison.Ordinal)
            .Replace("fork-12: []", "fork-12: [5.91]", StringComparison.Ordinal)
            .Replace("main-front: []", "main-front: [0.031]", StringComparison.Ordinal)
            .Replace("input-seal: []", "input-seal: renew", StringComparison.Ordinal)
            .Replace("main-float: []", "main-float: [0.07]", StringComparison.Ordinal)
            .Replace("main-nut: []", "main-nut: [155.0]", StringComparison.Ordinal);
        Assert.Equal(expected, File.ReadAllText(JobFile));
        Assert.Contains("24 % of the wear allowance used, reuse", output, StringComparison.Ordinal);
        Assert.Contains("last time 0.83 mm, 0.86 mm, 0.84 mm", output, StringComparison.Ordinal);
        Assert.Contains("7 changes written", output, StringComparison.Ordinal);
        Assert.DoesNotContain(BookReader.ReadFolder(Book).Problems, p => p.Severity == Severity.Stops);
        Assert.Equal(["job.yaml"], Directory.GetFiles(Path.GetDirectoryName(JobFile)!).Select(Path.GetFileName));
    }

    [Fact]
    public void One_can_go_back_delete_a_reading_and_stop()
    {
        Run("0.52\n0.88\nx\n\nb\n0.54\nq\n", "enter", "0002", Book);
        Assert.Contains("ring-12: [0.52, 0.54]   #", File.ReadAllText(JobFile), StringComparison.Ordinal);
        Assert.Contains("ring-34: []", File.ReadAllText(JobFile), StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_that_is_cut_off_has_kept_every_reading_that_was_entered()
    {
        Run("0.52\n0.5", "enter", "0002", Book); // the input ends without an Enter after the last one
        Assert.Contains("ring-12: [0.52, 0.5]", File.ReadAllText(JobFile), StringComparison.Ordinal);
        Run("\n0.9\n", "enter", "0002", Book);
        Assert.Contains("ring-12: [0.52, 0.5]", File.ReadAllText(JobFile), StringComparison.Ordinal);
        Assert.Contains("ring-34: [0.9]", File.ReadAllText(JobFile), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("52", "Nothing was written. Type the reading again.")] // no wear makes 52 mm of 0.3 mm
    [InlineData("3 N·m", "is not a unit of this measure")]
    [InlineData("1.2.3", "is not a reading")]
    [InlineData("0.52 0.53", "is not a unit")]
    [InlineData("watch", "is not a reading")]
    public void What_cannot_be_a_reading_is_not_written(string typed, string said)
    {
        var before = File.ReadAllText(JobFile);
        var (_, output, _) = Run(typed + "\nq\n", "enter", "0002", Book);
        Assert.Contains(said, output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(JobFile));
    }

    [Fact]
    public void A_part_that_got_better_is_doubted()
    {
        var (_, output, _) = Run("\n0.40\nq\n", "enter", "0002", Book);
        Assert.Contains("CHECK: less worn than last time", output, StringComparison.Ordinal);
        Assert.Contains("ring-34: [0.40]", File.ReadAllText(JobFile), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.52", "0.52")]
    [InlineData("0,520", "0.520")]
    [InlineData("+00000.940", "0.940")]
    [InlineData("-0.02", "-0.02")]
    [InlineData(" 12.5mm ", "12.5")]
    [InlineData("0.1 in", "2.54")]
    [InlineData(".5", "0.5")]
    public void A_gauge_may_type_a_comma_zeros_a_sign_and_a_unit(string typed, string read) =>
        Assert.Equal(read, GaugeText.Read(typed, Length.FromMillimeters(1)).Value);

    [Theory]
    [InlineData("unit: a\n", "unit: a\n\ninspection:\n  ring: {r1: [0.5]}\n")]
    [InlineData("unit: a\r\ninspection:\r\n  fork: [1]  # x\r\n", "unit: a\r\ninspection:\r\n  fork: [1]  # x\r\n  ring: {r1: [0.5]}\r\n")]
    [InlineData("inspection:\n    hub: [1]\nunit: a\n", "inspection:\n    ring: {r1: [0.5]}\n    hub: [1]\nunit: a\n")]
    [InlineData("inspection: {fork: 1}\n", "inspection: {fork: 1, ring: {r1: [0.5]}}\n")]
    [InlineData("inspection:\n  ring:   # it\n    r2: [1, 2]   # two\n", "inspection:\n  ring:   # it\n    r1: [0.5]\n    r2: [1, 2]   # two\n")]
    [InlineData("inspection:\n  ring: {r2: 1}\n", "inspection:\n  ring: {r2: 1, r1: [0.5]}\n")]
    [InlineData("inspection:\n  ring: {r1: , r2: 1}\n", "inspection:\n  ring: {r1: [0.5], r2: 1}\n")]
    [InlineData("inspection:\n  ring:\n    r1: 0.4 mm # was\n", "inspection:\n  ring:\n    r1: [0.5] # was\n")]
    [InlineData("inspection:\n  ring: []\n", "inspection:\n  ring: {r1: [0.5]}\n")]
    [InlineData("inspection:\n", "inspection:\n  ring: {r1: [0.5]}\n")]
    [InlineData("inspection:\n  fork: [1]", "inspection:\n  fork: [1]\n  ring: {r1: [0.5]}\n")]
    public void A_reading_finds_its_place_in_any_layout(string text, string expected) =>
        Assert.Equal(expected, new JobText("job.yaml", text).With("[0.5]", ["fork"], "inspection", "ring", "r1")?.Text);

    [Theory]
    [InlineData("inspection:\n  ring:\n    r1:\n      - 0.5 # first\n      - 0.6\n")]
    [InlineData("inspection: [1]\n")]
    [InlineData("findings:\n  - part: ring\n    measurements:\n      - {measure: r1, readings: [0.5]}\n")]
    public void What_is_written_in_another_form_is_left_alone(string text)
    {
        var job = new JobText("job.yaml", text);
        Assert.True(job.Has("inspection", "ring", "r1") || job.With("[0.5]", [], "inspection", "ring", "r1") is null);
    }

    [Theory]
    [InlineData("0003", "There is no job '0003'.")]
    [InlineData("0001", "is finished")]
    public void Only_an_open_job_is_entered(string number, string said)
    {
        var (code, _, errors) = Run("", "enter", number, Book);
        Assert.Equal(ExitCode.WrongUse, code);
        Assert.Contains(said, errors, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Errors) Run(string typed, params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        using var input = new StringReader(typed);
        return (Entry.Run(words, input, output, errors), output.ToString(), errors.ToString());
    }
}
