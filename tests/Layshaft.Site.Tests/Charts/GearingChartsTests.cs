using System.Globalization;
using System.Xml.Linq;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;

namespace Layshaft.Site.Tests.Charts;

public class GearingChartsTests
{
    [Theory]
    [InlineData(ChartSize.Wide)]
    [InlineData(ChartSize.Compact)]
    public void Each_gear_line_ends_at_its_speed_and_the_engine_limit_as_read_on_the_ticks(ChartSize size)
    {
        Drawing drawing = new(SpeedPerGearChart.Draw(Samples.SpeedPerGear(), size));
        var speed = drawing.Across("road speed, km/h");
        var rpm = drawing.Upwards();
        var ends = drawing.Paths("line thin").Select(p => p[^1]).ToList();

        Assert.Equal(6, ends.Count);
        for (var i = 0; i < ends.Count; i++)
        {
            Assert.Equal(Samples.SpeedAtLimit[i], speed(ends[i].X), 1.0);
            Assert.Equal(Samples.EngineLimit, rpm(ends[i].Y), 25.0);
        }
    }

    [Fact]
    public void The_run_drops_straight_down_at_each_shift_to_the_next_gears_engine_speed()
    {
        Drawing drawing = new(SpeedPerGearChart.Draw(Samples.SpeedPerGear(), ChartSize.Wide));
        var rpm = drawing.Upwards();
        var run = drawing.Paths("line run").Single();

        // 0, then five shifts with two points each, then top speed.
        Assert.Equal(12, run.Count);
        for (var i = 1; i <= 5; i++)
        {
            var (before, after) = (run[(2 * i) - 1], run[2 * i]);
            Assert.Equal(before.X, after.X);
            Assert.Equal(8200, rpm(before.Y), 25.0);
            Assert.Equal(8200 * Samples.SpeedAtLimit[i - 1] / Samples.SpeedAtLimit[i], rpm(after.Y), 25.0);
        }
    }

    [Fact]
    public void Both_speed_scales_agree_to_the_conversion_factor()
    {
        Drawing drawing = new(SpeedPerGearChart.Draw(Samples.SpeedPerGear(), ChartSize.Wide));
        var kmh = drawing.Across("road speed, km/h");
        var mph = drawing.Across("mph");

        Assert.Equal(1.609344, kmh(600) / mph(600), 0.005);
    }

    [Fact]
    public void The_crossing_is_marked_on_the_drag_line()
    {
        Drawing drawing = new(WheelForceChart.Draw(Samples.WheelForce(), ChartSize.Wide));
        var drag = drawing.Paths("line drag").Single();
        var mark = drawing.Elements("mark mark-accent").Single();
        var (x, y) = (DrawnText.Number(mark, "cx"), DrawnText.Number(mark, "cy"));
        var after = drag.First(p => p.X >= x);
        var before = drag.Last(p => p.X <= x);

        Assert.InRange(y, after.Y, before.Y);
    }

    [Fact]
    public void Gears_in_the_force_chart_differ_in_dash_and_in_marker()
    {
        var root = XElement.Parse(WheelForceChart.Draw(Samples.WheelForce(), ChartSize.Wide).Markup);
        var dashes = root.Elements().Where(e => e.Attribute("class")?.Value == "line").Select(e => e.Attribute("stroke-dasharray")?.Value ?? "solid").ToList();

        Assert.Equal(6, dashes.Count);
        Assert.Equal(6, dashes.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_engine_speed_after_a_shift_is_written_as_it_was_worked_out()
    {
        var input = Samples.SpeedPerGear();
        var gears = input.Gears.Select((g, i) => i == 0 ? g with { Lands = 6543 } : g).ToList();
        Drawing drawing = new(SpeedPerGearChart.Draw(input with { Gears = gears }, ChartSize.Wide));

        Assert.Equal(Samples.Whole(6543), drawing.Elements("label quiet").First().Value);
    }

    [Fact]
    public void A_gear_without_two_points_is_refused()
    {
        var input = Samples.SpeedPerGear() with { Gears = [new GearLine("1", [new ChartPoint(0, 0)], null)] };

        Assert.Contains("'1'", Assert.Throws<ArgumentException>(() => SpeedPerGearChart.Draw(input, ChartSize.Wide)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_number_that_is_not_finite_is_refused(double bad)
    {
        Assert.Throws<ArgumentException>(() => SpeedPerGearChart.Draw(Samples.SpeedPerGear() with { TopSpeed = new LevelMark(bad, "top") }, ChartSize.Wide));
        Assert.Throws<ArgumentException>(() => SpeedPerGearChart.Draw(Samples.SpeedPerGear() with { EngineLimit = new LevelMark(bad, "limit") }, ChartSize.Wide));
    }

    [Theory]
    [InlineData("")]
    [InlineData("7up")]
    [InlineData("a\"b")]
    [InlineData("a b")]
    [InlineData("é")]
    [InlineData("a\n")]
    public void An_id_prefix_that_could_break_an_attribute_or_a_reference_is_refused(string prefix)
    {
        var input = Samples.SpeedPerGear() with { Frame = new ChartFrame(prefix, "t", "d") };

        Assert.Throws<ArgumentException>(() => SpeedPerGearChart.Draw(input, ChartSize.Wide));
    }

    [Fact]
    public void Hostile_words_arrive_as_words()
    {
        const string hostile = "</title><script>alert(1)</script>\" onload='x' &amp; \u0001\uD800 ]]>";
        var input = Samples.SpeedPerGear() with
        {
            Frame = new ChartFrame("fan", hostile, hostile),
            Speed = new Axis(hostile, v => hostile + v.ToString(CultureInfo.InvariantCulture)),
            EngineLimit = new LevelMark(8500, hostile),
        };
        var markup = SpeedPerGearChart.Draw(input, ChartSize.Compact).Markup;
        var root = XElement.Parse(markup);

        Assert.DoesNotContain("<script", markup, StringComparison.Ordinal);
        Assert.Equal(hostile.Replace('\u0001', '\uFFFD').Replace('\uD800', '\uFFFD'), root.Elements().First().Value);
    }

    [Fact]
    public void A_pair_holds_both_sizes_with_ids_of_their_own()
    {
        var pair = XElement.Parse(ChartPair.Of(Samples.SpeedPerGear(), SpeedPerGearChart.Draw).Markup);
        var ids = pair.Descendants().Attributes("id").Select(a => a.Value).ToList();

        Assert.Equal("chart-pair", pair.Attribute("class")!.Value);
        Assert.Equal(2, pair.Elements().Count());
        Assert.Equal(["fan-w-t", "fan-w-d", "fan-c-t", "fan-c-d"], ids);
    }
}
