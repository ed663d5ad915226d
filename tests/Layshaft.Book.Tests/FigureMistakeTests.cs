using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

/// <summary>Figures and dates that a slip of the pen explains: each is noted with what was probably meant.</summary>
public class FigureMistakeTests
{
    private const string Job = "jobs/2026/0001/job.yaml";

    [Theory]
    [InlineData("received: 2026-03-02", "received: 2062-03-02")]
    [InlineData("finished: 2026-03-14", "finished: 2036-03-14")]
    [InlineData("finished: 2026-03-14", "finished: 2027-03-14")]
    [InlineData("on: 2026-04-12", "on: 2062-04-12")]
    [InlineData("on: 2026-04-12", "on: 2016-04-12")]
    [InlineData("by: 2026-11-30", "by: 2062-11-30")]
    public void A_day_far_from_all_others_is_noted_at_its_place(string good, string slip)
    {
        var read = Books.SmallWith(Job, text => text.Contains(good, StringComparison.Ordinal) ? text.Replace(good, slip, StringComparison.Ordinal) : throw new ArgumentException(good, nameof(good)));

        var note = Assert.Single(read.Problems, p => p.Code == "unlikely-date");
        Assert.Equal((Severity.Notice, "Check the year."), (note.Severity, note.Remedy));
        Assert.True(note.Place.Line > 1 && note.Place.Column > 1);
    }

    [Theory]
    [InlineData("shop.yaml", "calibrated: 2026-01-10", "calibrated: 2062-01-10")]
    [InlineData("units/0001.yaml", "from: 20", "from: 21")]
    public void A_day_far_after_the_latest_job_is_noted_in_other_files_too(string file, string good, string slip)
    {
        var read = Books.SmallWith(file, text => text.Contains(good, StringComparison.Ordinal) ? text.Replace(good, slip, StringComparison.Ordinal) : throw new ArgumentException(good, nameof(good)));

        Assert.NotEmpty(read.Problems);
        Assert.All(read.Problems, p => Assert.Equal(("unlikely-date", file), (p.Code, p.Place.File)));
    }

    // new 0.30 mm, limit 1.20 mm
    [Theory]
    [InlineData("7.8 mm", "unlikely-reading", Severity.Stops, "Did you mean 0.78 mm?")]
    [InlineData("78 mm", "unlikely-reading", Severity.Stops, "Did you mean 0.78 mm?")]
    [InlineData("5.9 mm", "unlikely-reading", Severity.Notice, "Did you mean 0.59 mm?")]
    [InlineData("30.7 mm", "unlikely-reading", Severity.Stops, "Did you mean 0.307 mm or 30.7 thou?")]
    [InlineData("0.078 mm", "better-than-new", Severity.Notice, "Did you mean 0.78 mm?")]
    [InlineData("0.78 thou", "better-than-new", Severity.Notice, "Did you mean 0.78 mm?")]
    [InlineData("0.9 mm, 0.92 mm, 0.092 mm", "unlikely-reading", Severity.Notice, "Did you mean 0.92 mm?")]
    public void A_reading_that_a_slip_explains_is_told_with_what_was_meant(string readings, string code, Severity severity, string remedy)
    {
        var problem = Assert.Single(With(readings).Problems);

        Assert.Equal((code, severity, remedy), (problem.Code, problem.Severity, problem.Remedy));
    }

    [Theory]
    [InlineData("0.30 mm")]
    [InlineData("0.29 mm")]
    [InlineData("0.25 mm")]
    [InlineData("1.2 mm")]
    [InlineData("1.9 mm")]
    [InlineData("2.9 mm")]
    [InlineData("0.9 mm, 1.4 mm")]
    public void A_reading_that_wear_or_a_new_part_explains_is_fine(string readings) => Assert.Empty(With(readings).Problems);

    [Fact]
    public void A_measure_written_twice_for_one_place_of_a_part_is_noted()
    {
        var read = Books.SmallWith(Job, text => text.Replace("    conditions:", "      - {measure: corner, readings: [0.92 mm]}\n    conditions:", StringComparison.Ordinal));

        var note = Assert.Single(read.Problems);
        Assert.Equal(("measured-twice", Severity.Notice), (note.Code, note.Severity));
    }

    [Theory]
    [InlineData("2026-03-10", "not finished until 2026-03-14")]
    [InlineData("2026-03-15", null)]
    public void A_unit_that_comes_in_while_its_last_job_is_open_is_noted(string received, string? words)
    {
        var files = Books.SmallFiles();
        files["jobs/2026/0002/job.yaml"] = System.Text.Encoding.UTF8.GetBytes($"unit: \"0001\"\nreceived: {received}\nuse: 22 h\ncomplaint: It whines.\n");

        var problems = BookReader.Read(new MemoryBookFiles(files)).Problems;

        Assert.Equal(words is null ? 0 : 1, problems.Count);
        Assert.All(problems, p => Assert.Equal(("still-on-bench", Severity.Notice), (p.Code, p.Severity)));
        Assert.All(problems, p => Assert.Contains(words!, p.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_unit_with_an_open_job_is_not_taken_in_again_unnoticed()
    {
        var files = Books.SmallFiles();
        foreach (var (number, day) in new[] { ("0002", "2026-05-02"), ("0003", "2026-05-20") })
        {
            files[$"jobs/2026/{number}/job.yaml"] = System.Text.Encoding.UTF8.GetBytes($"unit: \"0001\"\nreceived: {day}\nuse: 22 h\ncomplaint: It whines.\n");
        }

        var note = Assert.Single(BookReader.Read(new MemoryBookFiles(files)).Problems);

        Assert.Equal(("still-on-bench", "jobs/2026/0003/job.yaml"), (note.Code, note.Place.File));
    }

    [Fact]
    public void A_value_as_built_with_its_point_in_another_place_is_noted()
    {
        var read = Books.SmallWith(Job, text => text.Replace("built: [0.08 mm]", "built: [0.8 mm]", StringComparison.Ordinal));

        Assert.Contains(read.Problems, p => p is { Code: "unlikely-reading", Remedy: "Did you mean 0.08 mm?" });
    }

    [Theory]
    [InlineData("demo-data")]
    [InlineData("src/Layshaft.Cli/StarterBook")]
    public void Our_own_books_have_no_doubtful_figure(string book)
    {
        string[] doubtful = ["unlikely-date", "unlikely-reading", "better-than-new", "measured-twice", "still-on-bench"];

        Assert.DoesNotContain(BookReader.ReadFolder(OwnBooks.Folder(book)).Problems, p => doubtful.Contains(p.Code));
    }

    private static BookRead With(string readings) => Books.SmallWith(Job, text => text.Replace("[0.92 mm, 0.97 mm, 0.95 mm]", $"[{readings}]", StringComparison.Ordinal));
}
