using Layshaft.Site.Html;

namespace Layshaft.Site.Charts;

/// <summary>Draws one chart in both sizes; the stylesheet shows the one that fits the screen and hides the other.</summary>
public static class ChartPair
{
    /// <summary>Draws the chart twice inside one <c>div.chart-pair</c>.</summary>
    /// <typeparam name="TInput">The chart's input record.</typeparam>
    /// <param name="input">The chart's input.</param>
    /// <param name="draw">The chart, for example <c>SpeedPerGearChart.Draw</c>.</param>
    /// <returns>Both drawings; a hidden one is also hidden from screen readers.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The chart refuses its input.</exception>
    public static RawHtml Of<TInput>(TInput input, Func<TInput, ChartSize, RawHtml> draw)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(draw);
        return new RawHtml(
            ["<div class=\"chart-pair\">\n", draw(input, ChartSize.Wide).Markup, "\n", draw(input, ChartSize.Compact).Markup, "\n</div>"]);
    }
}
