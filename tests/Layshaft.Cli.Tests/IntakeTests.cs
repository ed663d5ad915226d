using System.Text.RegularExpressions;
using Layshaft.Book.Reading;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public sealed partial class IntakeTests : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-intake-");

    private string Book => Path.Combine(home.FullName, "book");

    public IntakeTests()
    {
        Run("new-book", Book);
        Directory.Delete(Path.Combine(Book, "jobs", "2026", "0002"), recursive: true); // the open job: the unit left in March
    }

    public void Dispose() => home.Delete(recursive: true);

    [Fact]
    public void Only_the_blanks_are_problems_and_filled_in_there_are_none()
    {
        var (code, output, errors) = Run("intake", "d4-001", Book, "--received", "2026-11-16");
        Assert.True(code == ExitCode.Fine, errors);
        Assert.Contains("jobs/2026/0002/job.yaml", output.Replace('\\', '/'), StringComparison.Ordinal);

        var blanks = BookReader.ReadFolder(Book).Problems;
        Assert.Equal([("nothing-written", "use"), ("nothing-written", "complaint")], blanks.Select(p => (p.Code, Lines()[p.Place.Line - 1].Split(':')[0])));

        Change(t => Blank().Replace(t, m => m.Groups[1].Value == "use" ? "use: 37.5 h" : "complaint: Look it over."));
        Assert.Empty(BookReader.ReadFolder(Book).Problems);
    }

    [Fact]
    public void With_its_brackets_filled_in_it_is_a_whole_inspection()
    {
        Run("intake", "d4-001", Book, "--received", "2026-11-16", "--use", "37.5 h", "--complaint", "Third is \"slow\": look.", "--technician", "jo");
        Assert.Empty(BookReader.ReadFolder(Book).Book!.Jobs[^1].Findings);
        Change(text => NewSize().Replace(text, "[$2]$1new $2 mm,").Replace("input-seal: []", "input-seal: renew", StringComparison.Ordinal));

        var read = BookReader.ReadFolder(Book);

        Assert.Empty(read.Problems);
        var job = read.Book!.Jobs[^1];
        Assert.Equal("Third is \"slow\": look.", job.Complaint);
        Assert.Equal(["ring-34", "ring-12", "fork-12", "main-front", "input-seal"], job.Findings.Select(f => f.Part)); // watched last time comes first
        Assert.All(job.Findings.SkipLast(1), f => Assert.NotNull(f.Measurements.Single().Instrument));
        Assert.Equal(["main-float"], job.Settings.Select(s => s.Setting)); // what is not yet built has empty brackets
    }

    [Fact]
    public void It_carries_what_was_set_what_was_watched_and_what_is_in_it()
    {
        Run("intake", "d4-001", Book, "--received", "2026-11-16");
        var text = string.Join('\n', Lines());

        Assert.StartsWith("# yaml-language-server: $schema=../../../schema/job.json\n# D4-001: next job after 0001 (finished 2026-03-14, 18.5 h)\nunit: d4-001\n", text, StringComparison.Ordinal);
        Assert.Contains("FIRST: Dog ring, 3rd and 4th, graded 'watch' in job 0001 and not renewed", text, StringComparison.Ordinal);
        Assert.Contains("ring-34: []   # Dog ring, 3rd and 4th, Dog corner radius, 3rd-gear side: new 0.30 mm, limit 1.20 mm; last time 0.83 mm, 0.86 mm, 0.84 mm\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("last time 1.14 mm", text, StringComparison.Ordinal); // that ring is gone
        Assert.Contains("ring-12: B7, fitted in job 0001 at 18.5 h", text, StringComparison.Ordinal);
        Assert.Contains("found_pack: []   # shims removed; job 0001 fitted [0.50 mm, 0.10 mm]", text, StringComparison.Ordinal);
        Assert.Contains("main-nut: []   # Mainshaft nut: target 145 N·m to 165 N·m; 155 N·m as built in job 0001", text, StringComparison.Ordinal);
        Assert.Contains("drop_pair: 28/25, final_drive: 41/11", text, StringComparison.Ordinal);
        Assert.Contains("float-found: Measure and record the end float as found, before slackening a nut. CAUTION: ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_moved_to_another_unit_is_offered_there_only()
    {
        File.WriteAllText(Path.Combine(Book, "units", "d4-002.yaml"), File.ReadAllText(Path.Combine(Book, "units", "d4-001.yaml")).Replace("D4-001", "D4-002", StringComparison.Ordinal));
        var folder = Directory.CreateDirectory(Path.Combine(Book, "jobs", "2026", "0003"));
        File.WriteAllText(Path.Combine(folder.FullName, "job.yaml"), "unit: d4-002\nreceived: 2026-05-04\nuse: 20 h\ncomplaint: x\nverdict: y\nrenewed: [{ part: ring-12, from: d4-001 }]\nbuild_list: { done: [trial, pack, selector, nuts, oil], signed_by: jo, on: 2026-05-09 }\nfinished: 2026-05-10\n");

        Run("intake", "d4-001", Book, "--received", "2026-11-16", "--number", "0004");
        var (code, _, errors) = Run("intake", "d4-002", Book, "--received", "2026-11-16", "--number", "0005");
        Assert.True(code == ExitCode.Fine, errors);

        var (donor, taker) = (File.ReadAllText(JobFile("0004")), File.ReadAllText(JobFile("0005")));
        Assert.Contains("#   ring-12: moved to D4-002; write the one you fit under 'renewed'", donor, StringComparison.Ordinal);
        Assert.DoesNotContain("  ring-12: []", donor, StringComparison.Ordinal);
        Assert.Contains("#   ring-12: fitted in job 0003 at 20 h", taker, StringComparison.Ordinal);
        Assert.Contains("  ring-12: []", taker, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_that_is_in_already_is_not_booked_in_twice_even_while_its_file_has_blanks()
    {
        Run("intake", "d4-001", Book, "--received", "2026-11-16");
        var before = File.ReadAllBytes(JobFile("0002"));

        var (code, _, errors) = Run("intake", "d4-001", Book, "--received", "2026-11-17");

        Assert.Equal(ExitCode.Problems, code);
        Assert.Contains("jobs/2026/0002", errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(JobFile("0002")));
        Assert.False(Directory.Exists(Path.Combine(Book, "jobs", "2026", "0003")));
    }

    [Fact]
    public void Blanks_of_a_job_without_a_customers_page_are_notes_and_stop_nobodys_report()
    {
        Run("intake", "d4-001", Book, "--received", "2026-11-16");
        var site = Path.Combine(home.FullName, "site");

        var (checkedCode, _, notes) = Run("check", Book);
        var (published, _, errors) = Run("publish", Book, "--out", site);

        Assert.Equal((ExitCode.Fine, ExitCode.Fine), (checkedCode, published));
        Assert.Contains("The site is published without it.", notes, StringComparison.Ordinal);
        Assert.Contains("The site is published without it.", errors, StringComparison.Ordinal);
        Assert.Contains("The value is missing", errors, StringComparison.Ordinal);
        Assert.Single(Directory.GetDirectories(Path.Combine(site, "customers")), d => Directory.Exists(Path.Combine(d, "0001")));

        // Once the customer has a page of the job, a slip in it stops the publish.
        Change(t => t + "estimate: {sent: 2026-11-18, lines: [{work: Look, price: 10}]}\n");
        Assert.Equal(ExitCode.Problems, Run("check", Book).Code);
        Assert.Equal(ExitCode.Problems, Run("publish", Book, "--out", site).Code);
        Assert.Single(Directory.GetDirectories(Path.Combine(site, "customers")), d => Directory.Exists(Path.Combine(d, "0001")));
    }

    [Fact]
    public void A_folder_that_stands_there_is_never_written_into()
    {
        Directory.CreateDirectory(Path.Combine(Book, "jobs", "2026", "0002", "photos"));
        File.WriteAllText(Path.Combine(Book, "jobs", "2026", "0002", "photos", "a.txt"), "mine");

        Assert.Equal(ExitCode.WrongUse, Run("intake", "d4-001", Book, "--received", "2026-11-16", "--number", "0002").Code);
        Run("intake", "d4-001", Book, "--received", "2026-11-16");

        Assert.True(File.Exists(JobFile("0003")));
        Assert.False(File.Exists(JobFile("0002")));
    }

    [Fact]
    public void Blanks_of_another_unit_do_not_stand_in_the_way()
    {
        File.WriteAllText(Path.Combine(Book, "units", "d4-002.yaml"), File.ReadAllText(Path.Combine(Book, "units", "d4-001.yaml")).Replace("D4-001", "D4-002", StringComparison.Ordinal));
        Run("intake", "d4-001", Book, "--received", "2026-11-16");

        var (code, output, errors) = Run("intake", "D4-002", Book, "--received", "2026-11-16", "--use", "3 h", "--complaint", "First look.");

        Assert.True(code == ExitCode.Fine, errors);
        Assert.Contains("its first job", output, StringComparison.Ordinal);
        Assert.DoesNotContain(BookReader.ReadFolder(Book).Problems, p => p.Place.File.Contains("0003", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("d4-01", "2026-11-16", "3 h", "d4-001")]
    [InlineData("d4-001", "2026-01-16", "37 h", "2026-03-02")]
    [InlineData("d4-001", "16.11.2026", "37 h", "year-month-day")]
    [InlineData("d4-001", "2026-11-16", "3 h", "18.5 h")]
    [InlineData("d4-001", "2026-11-16", "300 km", "18.5 h")]
    [InlineData("d4-001", "2026-11-16", "37", "unit")]
    public void What_cannot_be_is_refused_with_a_hint_and_nothing_is_written(string unit, string day, string use, string hint)
    {
        var (code, _, errors) = Run("intake", unit, Book, "--received", day, "--use", use);

        Assert.Equal(ExitCode.WrongUse, code);
        Assert.Contains(hint, errors, StringComparison.Ordinal);
        Assert.False(File.Exists(JobFile("0002")));
    }

    [Fact]
    public void Every_unit_of_the_demo_that_is_out_can_come_in()
    {
        var demo = Path.Combine(home.FullName, "demo");
        foreach (var file in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "demo-data"), "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(demo, Path.GetRelativePath(Path.Combine(AppContext.BaseDirectory, "demo-data"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        var book = BookReader.ReadFolder(demo).Book!;
        var written = new List<string>();
        foreach (var unit in book.Units.Values)
        {
            var use = book.JobsOf(unit.Id).LastOrDefault()?.Use ?? unit.UseAtStart;
            var (code, _, errors) = Run("intake", unit.Id, demo, "--received", "2027-02-01", "--use", use.ToString(), "--complaint", "x");
            var isIn = book.JobsOf(unit.Id).LastOrDefault() is { Stage: not (Layshaft.Book.Records.JobStage.Finished or Layshaft.Book.Records.JobStage.Declined) };
            Assert.True(code == ExitCode.Fine != isIn, $"{unit.Id}: {errors}");
            written.AddRange(isIn ? [] : [unit.Id]);
        }

        Assert.True(written.Count >= 2);
        Assert.Equal(written.Count, Directory.GetFiles(Path.Combine(demo, "jobs", "2027"), "job.yaml", SearchOption.AllDirectories).Length);
        Assert.True(File.Exists(Path.Combine(demo, "jobs", "2027", "0637", "job.yaml")));
        Assert.DoesNotContain(BookReader.ReadFolder(demo).Problems, p => p.Severity != Layshaft.Book.Problems.Severity.Notice);
        var differential = Directory.GetFiles(Path.Combine(demo, "jobs", "2027"), "job.yaml", SearchOption.AllDirectories).Select(File.ReadAllText).Single(t => t.Contains("unit: pd-041", StringComparison.Ordinal));
        Assert.Contains("#   found: { ramps: 45°/80°, plates: O-I-O-I-O }", differential, StringComparison.Ordinal);
        Assert.DoesNotContain("# Fitted", differential, StringComparison.Ordinal);
    }

    private string JobFile(string number) => Path.Combine(Book, "jobs", "2026", number, "job.yaml");

    private string[] Lines() => File.ReadAllLines(JobFile("0002"));

    private void Change(Func<string, string> change) => File.WriteAllText(JobFile("0002"), change(File.ReadAllText(JobFile("0002"))));

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }

    [GeneratedRegex("^(use|complaint): .*FILL IN.*$", RegexOptions.Multiline, 1000)]
    private static partial Regex Blank();

    [GeneratedRegex(@"\[\](.*)new ([^,]+) mm,", RegexOptions.None, 1000)]
    private static partial Regex NewSize();
}
