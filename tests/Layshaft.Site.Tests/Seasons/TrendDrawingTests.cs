using System.Text.RegularExpressions;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.History;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>Drawings of how parts wear.</summary>
public sealed partial class TrendDrawingTests
{
    private static readonly Composition s_demo = DemoBook.Composition();

    [Fact]
    public void No_band_reaches_below_a_size_of_none()
    {
        var below = 0;
        foreach (var unit in s_demo.Book.Units.Values)
        {
            foreach (var trend in UnitTrends.Of(unit, s_demo.Assessment.Lives, s_demo.Assessment.Jobs).Where(t => t.Line is not null))
            {
                var markup = TrendDrawing.Of(trend, s_demo).ToString();
                Assert.NotEmpty(Tick().Matches(markup));
                Assert.DoesNotContain(Tick().Matches(markup), t => t.Groups[1].Value[0] is '-' or '−');
                // Some of the sizes are so small that a wider band would cross 0.
                below += trend.Line!.PredictionAt(0).Lower < 0 || trend.Line.PredictionAt(2.5 * trend.UseNow.Amount).Lower < 0 || (trend.Line with { Level = 0.9999999 }).PredictionAt(0).Lower < 0 ? 1 : 0;
            }
        }

        Assert.True(below > 0, "no band would reach there");
    }

    [GeneratedRegex("class=\"tick\"[^>]*>([^<]+)<")]
    private static partial Regex Tick();
}
