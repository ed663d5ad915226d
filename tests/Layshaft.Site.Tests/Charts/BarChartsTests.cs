using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Charts.Wear;

namespace Layshaft.Site.Tests.Charts;

public class BarChartsTests
{
    [Fact]
    public void Work_and_wear_share_one_scale()
    {
        Drawing drawing = new(GearWorkBars.Draw(Samples.GearWork(), ChartSize.Compact));
        var share = drawing.Across("share");

        Assert.Equal([0.05, 0.29, 0.38, 0.19, 0.09], drawing.Elements("bar-hollow").Select(Right).Select(share), Within(0.005));
        Assert.Equal([0.12, 0.41, 0.74, 0.33], drawing.Elements("bar-full").Select(Right).Select(share), Within(0.005));
    }

    [Fact]
    public void A_long_series_name_behind_a_long_bar_shortens_the_scale_instead_of_leaving_the_sheet()
    {
        var input = Samples.GearWork() with { Gears = [new GearWork("1", 0.9, "90 %", 1, "100 %")] };
        Drawing drawing = new(GearWorkBars.Draw(input, ChartSize.Compact));

        Assert.True(DrawnText.Span(drawing.Text("100 % wear allowance used")).Right <= 360);
    }

    [Fact]
    public void A_ranked_choice_lies_at_its_time_and_its_mark_says_what_it_is()
    {
        Drawing drawing = new(RankingChart.Draw(Samples.Ranking(), ChartSize.Wide));
        var loss = drawing.Across("seconds a lap slower");

        Assert.Equal([-0.02, 0.08], drawing.Elements("mark").Where(e => e.Name.LocalName == "circle").Select(e => DrawnText.Number(e, "cx")).Select(loss), Within(0.003));
        Assert.Equal(0, loss(DrawnText.Number(Assert.Single(drawing.Elements("mark-solid")), "cx")), 3e-3);
        Assert.Single(drawing.Elements("mark"), e => e.Name.LocalName == "rect");
        Assert.Single(drawing.Elements("mark-open"));
        Assert.Single(drawing.Elements("pointer"));
        Assert.Equal(4, drawing.Elements("whisker").Count());
    }

    [Fact]
    public void Choices_that_cost_nothing_draw_without_a_division_by_zero()
    {
        var input = Samples.Ranking() with { Choices = [new RankedChoice("28/29", 0, 0, "0 s", ChoiceMark.Recommended), new RankedChoice("56/58", 0, 0, "0.00 s", ChoiceMark.Other)] };

        Assert.NotEmpty(RankingChart.Draw(input, ChartSize.Compact).Markup);
    }

    [Fact]
    public void A_life_span_keeps_its_length_in_proportion_and_only_used_marks_are_in_the_key()
    {
        var input = Samples.Life() with { Parts = [new LifeBar("layshaft", [new(0, 390, BarStart.Fitted, BarEnd.Renewed, null), new(390, 780, BarStart.Fitted, BarEnd.Renewed, null)])] };
        Drawing drawing = new(LifeBars.Draw(input, ChartSize.Wide));
        var widths = drawing.Elements("bar").Select(e => DrawnText.Number(e, "width")).ToList();

        Assert.Equal(widths[0], widths[1], 0.02);
        Assert.Equal(["renewed", "fitted new"], drawing.Elements("row-value").Select(e => e.Value).OrderDescending(StringComparer.Ordinal));
    }

    [Fact]
    public void A_span_that_ends_before_it_starts_is_refused()
    {
        var input = Samples.Life() with { Parts = [new LifeBar("layshaft", [new(9, 8, BarStart.Fitted, BarEnd.Renewed, null)])] };

        Assert.Throws<ArgumentException>(() => LifeBars.Draw(input, ChartSize.Wide));
    }

    private static double Right(System.Xml.Linq.XElement bar) => DrawnText.Number(bar, "x") + DrawnText.Number(bar, "width");

    private static Func<double, double, bool> Within(double tolerance) => (a, b) => Math.Abs(a - b) <= tolerance;
}
