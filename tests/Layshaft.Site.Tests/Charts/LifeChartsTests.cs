using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Charts.Photos;

namespace Layshaft.Site.Tests.Charts;

public class LifeChartsTests
{
    [Theory]
    [InlineData(ChartSize.Wide)]
    [InlineData(ChartSize.Compact)]
    public void Measured_points_lie_where_the_ticks_say(ChartSize size)
    {
        Drawing drawing = new(TrendChart.Draw(Samples.Trend(), size));
        var (hours, width) = (drawing.Across("hours run"), drawing.Upwards());
        var points = drawing.Elements("mark mark-solid").ToList();

        Assert.Equal(5, points.Count);
        Assert.Equal(38, hours(DrawnText.Number(points[^1], "cx")), 0.1);
        Assert.Equal(8.55, width(DrawnText.Number(points[^1], "cy")), 0.005);
    }

    [Fact]
    public void The_crossing_stands_on_the_limit_line_with_its_bounds_as_a_whisker()
    {
        Drawing drawing = new(TrendChart.Draw(Samples.Trend(), ChartSize.Wide));
        var hours = drawing.Across("hours run");
        var line = drawing.Elements("marker-line").Single();
        var bounds = drawing.Paths("whisker")[^1];

        Assert.Equal(59.7, hours(DrawnText.Number(line, "x1")), 0.1);
        Assert.Equal(8.3, drawing.Upwards()(DrawnText.Number(line, "y1")), 0.005);
        Assert.Equal(53, hours(bounds[0].X), 0.1);
        Assert.Equal(67, hours(bounds[1].X), 0.1);
    }

    [Fact]
    public void One_reading_without_a_fit_is_drawn_alone()
    {
        var input = Samples.Trend() with { Points = [new(12, 8.9, 0)], Fit = null, Band = null, Crossing = null };
        Drawing drawing = new(TrendChart.Draw(input, ChartSize.Compact));

        Assert.Single(drawing.Elements("mark mark-solid"));
        Assert.Empty(drawing.Elements("whisker"));
        Assert.Empty(drawing.Elements("band"));
    }

    [Fact]
    public void Survival_starts_at_one_and_slopes_where_the_moment_of_failure_is_not_known()
    {
        Drawing drawing = new(SurvivalChart.Draw(Samples.Survival(), ChartSize.Wide));
        var (hours, share) = (drawing.Across("hours run"), drawing.Upwards());
        var steps = drawing.Paths("line").Single();

        Assert.Equal(1, share(steps[0].Y), 0.003);
        Assert.Equal(14, hours(steps[1].X), 0.1);
        Assert.Equal(1, share(steps[1].Y), 0.003);
        Assert.Equal(21, hours(steps[2].X), 0.1);
        Assert.Equal(0.93, share(steps[2].Y), 0.003);
        Assert.Equal(72, hours(steps[^1].X), 0.1);
        Assert.Equal(0.33, share(steps[^1].Y), 0.003);
    }

    [Fact]
    public void Ten_thousand_lives_are_drawn_no_finer_than_the_eye_can_tell()
    {
        const int Count = 10_000;
        var steps = Enumerable.Range(1, Count).Select(i => new SurvivalStep(i * 0.01, i * 0.01, Math.Exp(-i / 5000.0))).ToList();
        var input = Samples.Survival() with { Steps = steps, Censored = [.. steps.Select(s => s.To)], Until = 100, Weibull = null, B10 = null };
        Drawing drawing = new(SurvivalChart.Draw(input, ChartSize.Wide));
        var (hours, share) = (drawing.Across("hours run"), drawing.Upwards());
        var corners = drawing.Paths("line").Single();

        Assert.InRange(corners.Count, 100, 4000);
        Assert.InRange(drawing.Elements("tick-heavy").Count(), 100, 4000);
        Assert.All(corners, c => Assert.Equal(Math.Exp(-hours(c.X) / 50), share(c.Y), 0.005));
        Assert.Equal(100, hours(corners[^1].X), 0.2);
        Assert.Equal(Math.Exp(-2), share(corners[^1].Y), 0.003);
    }

    [Fact]
    public void B10_is_read_at_nine_tenths_surviving_and_lies_on_the_fitted_curve()
    {
        Drawing drawing = new(SurvivalChart.Draw(Samples.Survival(), ChartSize.Wide));
        var corner = drawing.Paths("marker-line").Single()[1];
        var curve = drawing.Paths("line run").Single();
        var (before, after) = (curve.Last(p => p.X <= corner.X), curve.First(p => p.X >= corner.X));

        Assert.Equal(0.9, drawing.Upwards()(corner.Y), 0.003);
        Assert.InRange(corner.Y, before.Y, after.Y);
    }

    [Fact]
    public void Without_any_failure_the_survival_stays_at_one()
    {
        var input = Samples.Survival() with { Steps = [], Weibull = null, B10 = null };
        Drawing drawing = new(SurvivalChart.Draw(input, ChartSize.Compact));
        var steps = drawing.Paths("line").Single();

        Assert.Equal(2, steps.Count);
        Assert.Equal(steps[0].Y, steps[1].Y);
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void A_share_that_is_none_is_refused(double share)
    {
        var input = Samples.Survival() with { Steps = [new SurvivalStep(10, 10, share)] };

        Assert.Throws<ArgumentException>(() => SurvivalChart.Draw(input, ChartSize.Wide));
    }

    [Fact]
    public void Jobs_link_to_their_pages_with_a_name_read_aloud_and_room_for_a_finger()
    {
        Drawing drawing = new(SeasonLine.Draw(Samples.Seasons(), ChartSize.Compact));
        var links = drawing.Elements("chart-link").ToList();

        Assert.Equal(["jobs/1/", "jobs/2/", "jobs/3/", "jobs/4/"], links.Select(a => a.Attribute("href")!.Value));
        Assert.Equal("W 19 July: oil leak at the output, seal: Job of 19 July: seal", links[2].Attribute("aria-label")!.Value);
        Assert.All(drawing.Elements("hit"), h => Assert.True(DrawnText.Number(h, "height") >= 24));
    }

    [Theory]
    [InlineData("javascript:alert(1)")]
    [InlineData("https://example.org/")]
    [InlineData("//example.org/")]
    [InlineData("\\\\example.org\\")]
    [InlineData("")]
    public void A_link_that_leaves_the_site_is_refused(string link)
    {
        var input = Samples.Seasons() with { Jobs = [new JobMark(100, "job", link, "job", null)] };

        Assert.Throws<ArgumentException>(() => SeasonLine.Draw(input, ChartSize.Wide));
    }

    [Fact]
    public void A_callout_lies_at_its_fraction_of_the_picture()
    {
        Drawing drawing = new(PhotoCallouts.Draw(Samples.Photo(), ChartSize.Wide));
        var circle = drawing.Elements("callout-line").First(e => e.Name.LocalName == "circle");

        Assert.Equal(0.3 * 720, DrawnText.Number(circle, "cx"), 0.01);
        Assert.Equal(0.4 * 540, DrawnText.Number(circle, "cy"), 0.01);
        Assert.Equal(0.09 * 720, DrawnText.Number(circle, "r"), 0.01);
    }

    [Fact]
    public void The_words_on_a_photo_are_part_of_its_description()
    {
        var markup = PhotoCallouts.Draw(Samples.Photo(), ChartSize.Wide).Markup;

        Assert.Contains("described in words.; rounded corner, 1.2 mm; pitting on the flank;", markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.46, 0.84, 0.66, 0.82)]
    [InlineData(0.5, 0.5, 0.5, 0.5)]
    [InlineData(0.5, 0.98, 0.6, 0.98)]
    public void Words_that_were_asked_for_at_one_place_do_not_cover_each_other(double x1, double y1, double x2, double y2)
    {
        var input = Samples.Photo() with
        {
            Callouts = [new Callout(0.34, 0.57, null, "Old: corners gone", x1, y1), new Callout(0.79, 0.54, null, "New: square corners", x2, y2)],
        };
        var words = new Drawing(PhotoCallouts.Draw(input, ChartSize.Compact)).Elements("callout-text").ToList();

        Assert.Equal(2, words.Count);
        Assert.False(DrawnText.Overlap(words[0], words[1]));
        Assert.All(words, w => Assert.InRange(DrawnText.Number(w, "y"), 10, 270));
    }

    [Theory]
    [InlineData(1.01, 0.5)]
    [InlineData(0.5, -0.01)]
    [InlineData(double.NaN, 0.5)]
    public void A_callout_outside_the_picture_is_refused(double x, double y)
    {
        var input = Samples.Photo() with { Callouts = [new Callout(x, y, null, "?")] };

        Assert.Throws<ArgumentException>(() => PhotoCallouts.Draw(input, ChartSize.Wide));
    }
}
