using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Gearing;

/// <summary>Data of <see cref="RankingBars"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Choices">Best first; at least one.</param>
/// <param name="Loss">The axis, for example "seconds a lap lost to the best".</param>
public sealed record RankingInput(ChartFrame Frame, IReadOnlyList<RankedChoice> Choices, Axis Loss);

/// <summary>One choice, for example a drop pair.</summary>
/// <param name="Label">Its name, for example "27/30".</param>
/// <param name="Loss">What it costs against the best; 0 or more.</param>
/// <param name="LossText">The same, written with its unit.</param>
/// <param name="Chosen">Whether this one is to be fitted: its row is pointed out.</param>
public sealed record RankedChoice(string Label, double Loss, string LossText, bool Chosen);

/// <summary>What each choice costs against the best, as short bars.</summary>
public static class RankingBars
{
    private const double Bar = 10;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No choices, a negative loss, or a number that is not finite.</exception>
    public static RawHtml Draw(RankingInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Choices is null || input.Choices.Count == 0 || input.Choices.Any(c => c.Loss < 0))
        {
            throw new ArgumentException("The chart needs at least one choice, and no loss below 0.", nameof(input));
        }

        var rows = Rows.Lay(ChartSize.Wide, [.. input.Choices.Select(c => c.Label)], 2, Bar, 16);
        var most = input.Choices.Max(c => c.Loss);
        var room = ChartSheet.Width(size) - rows.BarLeft - TextWidth.Widest(input.Choices.Select(c => c.LossText)) - 12;
        Scale scale = new(0, most > 0 ? most : 1, rows.BarLeft, rows.BarLeft + Math.Max(60, room));
        return ChartSheet.Picture(input.Frame, size, rows.Bottom + BaseLine.Height, svg =>
        {
            BaseLine.Rule(svg, scale, 2, rows.Bottom, input.Loss);
            svg.Line("axis", scale.Start, 2, scale.Start, rows.Bottom);
            for (var i = 0; i < input.Choices.Count; i++)
            {
                var (choice, row) = (input.Choices[i], rows.All[i]);
                var end = scale.At(choice.Loss);
                if (choice.Chosen)
                {
                    svg.Path("pointer", new PathData().Move(2, row.BarMiddle - 5).To(11, row.BarMiddle).To(2, row.BarMiddle + 5).Close().ToString());
                }

                Rows.Name(svg, row, choice.Chosen ? "row-name strong" : "row-name");
                svg.Rect(choice.Chosen ? "bar-full" : "bar", scale.Start, row.BarMiddle - (Bar / 2), end - scale.Start, Bar);
                svg.Label(choice.Chosen ? "label strong" : "label", end + 5, row.BarMiddle + 4.5, choice.LossText);
            }
        });
    }
}
