using Layshaft.Site.Pages;
using Layshaft.Site.Pages.LapSheets;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Tests.Gearing;

public class LapSheetTests
{
    private static readonly Composition s_demo = DemoBook.Composition();

    [Fact]
    public void Every_event_of_an_owner_has_a_sheet_with_each_corner_straight_and_gear()
    {
        var sheets = 0;
        foreach (var job in s_demo.Book.Jobs)
        {
            foreach (var view in OwnerView.Of(s_demo.Book, s_demo.Book.Units[job.Unit]))
            {
                var mayHave = job.Finished is not null && view.IsOwn(job) && s_demo.Assessment.Gearing.For(job) is not null;
                Assert.Equal(mayHave, LapSheetComposer.Exists(s_demo, view, job));
                if (!mayHave)
                {
                    continue;
                }

                sheets++;
                var venue = s_demo.Book.Venues[job.NextEvent!.Venue];
                var page = LapSheetComposer.Compose(s_demo, view, job);
                Assert.Equal([venue.Straights.Count(s => s.CornerSpeed is not null), venue.Straights.Count, s_demo.Assessment.Gearing.For(job)!.Case.Box.Drivetrain.Gears.Count], page.Tables.Select(t => t.Rows.Count));
                Assert.Equal(100, (double)page.Tables[2].Rows.Sum(r => r.Cells[1].Number!.Value), 1e-4);
                Assert.Contains("Calculated speeds, not permitted speeds", page.Note, StringComparison.Ordinal);
            }
        }

        Assert.True(sheets > 8);
    }

    [Fact]
    public void The_figures_are_those_of_the_lap_with_the_recommended_gears()
    {
        var job = s_demo.Book.Jobs.Single(j => j.Number == "0518");
        var gearing = s_demo.Assessment.Gearing.For(job)!;
        var run = Engineering.Gearing.VenueRun.For(gearing.Case.With(gearing.Advice.Recommended!.Set), gearing.Case.Course);
        var tables = Tables(job);
        Assert.Equal(run.Corners[1].EngineSpeed.RevolutionsPerMinute, (double)tables[0].Rows[0].Cells[3].Number!.Value, 1e-3);
        Assert.Equal("1 Capstan", tables[0].Rows[0].Cells[0].Text);
        Assert.Equal("this car", tables[0].Rows[0].Cells[6].Text);
        Assert.Equal("venue, any car", tables[0].Rows[1].Cells[6].Text);
        foreach (var (straight, row) in run.Straights.Zip(tables[1].Rows))
        {
            Assert.Equal(straight.Shifts.Count, row.Cells[2].Text.Split(';').Count(text => text.Contains('–', StringComparison.Ordinal)));
            Assert.Contains(s_demo.Figures.Distance(straight.Shifts[0].Position).Text, row.Cells[2].Text, StringComparison.Ordinal);
            Assert.Equal(straight.EngineSpeedAtTop!.Value.RevolutionsPerMinute, (double)row.Cells[4].Number!.Value, 1e-3);
        }

        // Each upshift of the lap is an engagement of the gear shifted into.
        Assert.Equal(run.Straights.Sum(s => s.Shifts.Count(shift => shift.To > shift.From)), (int)tables[2].Rows.Sum(r => r.Cells[2].Number!.Value));
    }

    [Fact]
    public void A_shift_inside_a_corner_is_said()
    {
        var review = DemoBook.With("cars/saloon-8.yaml", car => car.Replace("lowest_useful: 3800 rpm", "lowest_useful: 6100 rpm", StringComparison.Ordinal));
        var composition = DemoBook.Composition(review);
        var job = composition.Book.Jobs.Single(j => j.Number == "0628");
        var text = string.Join('\n', Tables(job, composition)[0].Rows.Select(r => r.Cells[1].Text));
        Assert.Contains("in the corner", text, StringComparison.Ordinal);
    }

    private static IReadOnlyList<TableView> Tables(Book.Records.Job job, Composition? composition = null)
    {
        var from = composition ?? s_demo;
        return LapSheetComposer.Compose(from, OwnerView.Of(from.Book, from.Book.Units[job.Unit]).First(v => v.IsOwn(job)), job).Tables;
    }
}
