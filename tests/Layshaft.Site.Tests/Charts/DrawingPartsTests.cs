using System.Globalization;
using CsCheck;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Tests.Charts;

/// <summary>Laws of the pieces that all charts share.</summary>
public class DrawingPartsTests
{
    [Theory]
    [InlineData(0, 240, 6, 50)]
    [InlineData(0, 1, 5, 0.2)]
    [InlineData(0, 0.03, 3, 0.01)]
    [InlineData(0, 1, 10, 0.1)]
    [InlineData(0, 9000, 9, 1000)]
    public void The_step_is_the_smallest_round_one_that_fits(double from, double to, int most, double step)
    {
        Assert.Equal(step, NiceTicks.Step(to - from, most), 5e-13);
    }

    [Fact]
    public void Ticks_lie_inside_the_range_are_evenly_spaced_and_no_more_than_asked()
    {
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-3, 1e6], Gen.Int[2, 20]).Sample((from, length, most) =>
        {
            var ticks = NiceTicks.Between(from, from + length, most);
            var step = NiceTicks.Step(length, most);
            Assert.InRange(ticks.Count, 0, most + 1);
            Assert.All(ticks, t => Assert.InRange(t, from - (step * 1e-6), from + length + (step * 1e-6)));
            for (var i = 1; i < ticks.Count; i++)
            {
                Assert.Equal(step, ticks[i] - ticks[i - 1], step * 1e-6);
            }
        });
    }

    [Fact]
    public void A_tick_at_three_tenths_is_written_without_a_tail()
    {
        Assert.Contains(0.3, NiceTicks.Between(0, 1, 10));
    }

    [Fact]
    public void Ticks_that_stand_together_have_as_many_decimals()
    {
        var axis = new Axis("size, mm", _ => "?") { WithDecimals = (v, decimals) => v.ToString($"F{decimals}", CultureInfo.InvariantCulture) };

        Assert.Equal(["0.08", "0.10", "0.12"], axis.Labels([0.08, 0.1, 0.12]));
        Assert.Equal(["0", "1", "2"], axis.Labels([0, 1, 2]));
        Assert.Equal(["a", "a"], new Axis("share", _ => "a").Labels([0.1, 0.12]));
    }

    [Fact]
    public void Spread_labels_never_overlap_keep_their_order_and_stay_inside_while_there_is_room()
    {
        Gen.Select(Gen.Double[0, 300], Gen.Double[1, 20]).Array[1, 15].Sample(labels =>
        {
            var wishes = labels.Select(l => l.Item1).ToArray();
            var widths = labels.Select(l => l.Item2).ToArray();
            var placed = LabelSpread.Apart(wishes, widths, 0, 300);
            var order = Enumerable.Range(0, wishes.Length).OrderBy(i => wishes[i]).ThenBy(i => i).ToArray();
            for (var k = 0; k < order.Length; k++)
            {
                var i = order[k];
                Assert.InRange(placed[i], (widths[i] / 2) - 1e-9, 300 - (widths[i] / 2) + 1e-9);
                if (k > 0)
                {
                    var before = order[k - 1];
                    Assert.True(placed[i] - placed[before] >= ((widths[i] + widths[before]) / 2) - 1e-9);
                }
            }
        });
    }

    [Fact]
    public void Labels_with_room_stay_where_they_wish_to_be()
    {
        Assert.Equal([10.0, 200, 100], LabelSpread.Apart([10, 200, 100], [10, 10, 10], 0, 300));
    }

    [Fact]
    public void Two_labels_on_one_spot_part_evenly()
    {
        Assert.Equal([45.0, 55], LabelSpread.Apart([50, 50], [10, 10], 0, 300));
    }

    [Theory]
    [InlineData(-0.001, "0")]
    [InlineData(1234.5678, "1234.57")]
    [InlineData(-0.005, "-0.01")]
    [InlineData(1e21, "1000000000000000000000")]
    public void Numbers_are_rounded_to_two_decimals_without_exponent_or_minus_zero(double value, string written)
    {
        Assert.Equal(written, SvgNumber.Of(value));
    }

    [Fact]
    public void Wrapped_lines_fit_and_lose_no_word()
    {
        var lines = TextWidth.Wrap("dog ring between third and fourth gear, drive side", 120);

        Assert.All(lines, l => Assert.True(TextWidth.Of(l) <= 120));
        Assert.Equal("dog ring between third and fourth gear, drive side", string.Join(' ', lines));
        Assert.True(lines.Count > 1);
    }
}
