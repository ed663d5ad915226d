using AngleSharp.Html.Parser;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;

namespace Layshaft.Site.Tests.Pages;

/// <summary>What the demo's trace says on its owner's report.</summary>
public sealed class TraceSectionTests
{
    private const string Job = "jobs/2026/0628/job.yaml";
    private const string Trace = "jobs/2026/0628/trace.csv";

    [Fact]
    public void The_report_says_what_wore_the_dogs_and_where()
    {
        var section = Section(DemoBook.Review)!;
        Assert.Matches(@"^Data logger at Autumn Saloons: 2 complete laps, .* 40 rows a second\.$", section.Lead);
        Assert.Contains("simulation", section.Note, StringComparison.Ordinal);
        Assert.Contains(section.Lines, l => l.StartsWith("From third gear to second gear, the engine was not matched on", StringComparison.Ordinal) && l.Contains("(lap 3, ", StringComparison.Ordinal));
        Assert.Contains(section.Lines, l => l.Contains("above its limiter", StringComparison.Ordinal));
        Assert.Contains(section.Lines, l => l.EndsWith("the gearing assumes 130 ms.", StringComparison.Ordinal));
        Assert.True(section.Lines.Count <= 4);
        var chart = new HtmlParser().ParseDocument(section.Chart!.Markup);
        Assert.Contains(chart.QuerySelectorAll("text"), t => t.TextContent == "D");
        Assert.Contains(chart.QuerySelectorAll("text"), t => t.TextContent == "R");
    }

    [Fact]
    public void Another_trace_says_something_else()
    {
        // Every second row: too far apart for the dogs.
        var review = DemoBook.With(Trace, t => string.Join('\n', t.Split('\n').Where((_, i) => i < 2 || i % 2 == 0)));
        var lines = Section(review)!.Lines;
        Assert.Contains("The rows are too far apart to show how the dogs met.", lines);
        Assert.DoesNotContain(lines, l => l.Contains("not matched", StringComparison.Ordinal));
    }

    [Fact]
    public void Other_gears_than_those_on_record_are_said_so() =>
        Assert.Contains(Section(DemoBook.With(Job, t => t.Replace("  drop_pair: 33/27\n  final_drive: 39/10\ntrace:", "  drop_pair: 31/29\n  final_drive: 39/10\ntrace:", StringComparison.Ordinal)))!.Lines, l => l.Contains("differ from what 31/29", StringComparison.Ordinal));

    [Fact]
    public void A_mistake_in_the_trace_is_a_problem_with_its_row()
    {
        var review = DemoBook.With(Trace, t => string.Join('\n', t.Split('\n').Select((l, i) => i == 99 ? "x,1,2,3,4" : l)));
        var problem = Assert.Single(review.Problems, p => p.Code == "trace-value");
        Assert.Equal((Trace, 100, 1), (problem.Place.File, problem.Place.Line, problem.Place.Column));
    }

    private static TraceSection? Section(BookReview review)
    {
        var composition = DemoBook.Composition(review);
        var job = review.Assessment!.Book.Jobs.Single(j => j.Folder == "jobs/2026/0628");
        var unit = review.Assessment.Book.Units[job.Unit];
        var view = OwnerView.Of(composition.Book, unit).Single();
        return TraceSection.Compose(new ReportContext(composition, view, review.Assessment.Jobs[job.Number]))?.Model as TraceSection;
    }
}
