using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Gearing;

/// <summary>Data of <see cref="RankingChart"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Choices">Fastest first; at least one.</param>
/// <param name="Loss">The axis, such as "seconds a lap slower than the recommended one".</param>
public sealed record RankingInput(ChartFrame Frame, IReadOnlyList<RankedChoice> Choices, Axis Loss);

/// <summary>What a choice is, as its marker shows.</summary>
public enum ChoiceMark
{
    /// <summary>An ordinary choice: a circle.</summary>
    Other,

    /// <summary>The recommended one: a filled circle, its row pointed out.</summary>
    Recommended,

    /// <summary>What is fitted: a square.</summary>
    Fitted,

    /// <summary>A choice past a limit: a cross.</summary>
    PastLimit,
}

/// <summary>One choice of gears.</summary>
/// <param name="Label">Its name with what it is, such as "33/27 with 39/10, fitted".</param>
/// <param name="Loss">Time against the recommended one; negative for a faster one.</param>
/// <param name="Uncertainty">Half the whisker; 0 draws none.</param>
/// <param name="LossText">The time, written with its unit.</param>
/// <param name="Mark">What it is.</param>
public sealed record RankedChoice(string Label, double Loss, double Uncertainty, string LossText, ChoiceMark Mark);

/// <summary>What each choice costs against the recommended one, as points with their uncertainty.</summary>
public static class RankingChart
{
    private const double RowHeight = 12;
    private const double Radius = 4.2;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No choices, a negative uncertainty, or a number that is not finite.</exception>
    public static RawHtml Draw(RankingInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Choices is null || input.Choices.Count == 0 || input.Choices.Any(c => !(c.Uncertainty >= 0)))
        {
            throw new ArgumentException("The chart needs at least one choice, and no uncertainty below 0.", nameof(input));
        }

        double[] values = [.. input.Choices.Select(c => TextWidth.Of(c.LossText))];
        var rows = Rows.Lay(size, [.. input.Choices.Select(c => c.Label)], 2, RowHeight, 16, values);
        var (least, most) = (input.Choices.Min(c => c.Loss - c.Uncertainty), input.Choices.Max(c => c.Loss + c.Uncertainty));
        var right = ChartSheet.Width(size) - (size == ChartSize.Wide ? values.Max() + 16 : 8);
        Scale scale = new(Math.Min(0, least), Math.Max(most, Math.Min(0, least) + 1e-3), rows.BarLeft + 6, right);
        return ChartSheet.Picture(input.Frame, size, rows.Bottom + BaseLine.Height, svg =>
        {
            BaseLine.Rule(svg, scale, 2, rows.Bottom, input.Loss);
            svg.Line("axis", scale.At(0), 2, scale.At(0), rows.Bottom);
            for (var i = 0; i < input.Choices.Count; i++)
            {
                Row(svg, input.Choices[i], rows.All[i], scale, size);
            }
        });
    }

    private static void Row(SvgWriter svg, RankedChoice choice, Row row, Scale scale, ChartSize size)
    {
        var isBest = choice.Mark == ChoiceMark.Recommended;
        if (isBest)
        {
            svg.Path("pointer", new PathData().Move(2, row.NameBaseline - 9).To(11, row.NameBaseline - 4).To(2, row.NameBaseline + 1).Close().ToString());
        }

        Rows.Name(svg, row, isBest ? "row-name strong" : "row-name");
        var valueAt = size == ChartSize.Wide ? row.BarMiddle + 4.5 : row.ValueBaseline;
        svg.Label(isBest ? "row-value strong" : "row-value", ChartSheet.Width(size) - 2, valueAt, choice.LossText, Anchor.End);
        var x = scale.At(choice.Loss);
        if (choice.Uncertainty > 0)
        {
            Marks.Whisker(svg, scale.At(choice.Loss - choice.Uncertainty), row.BarMiddle, scale.At(choice.Loss + choice.Uncertainty), row.BarMiddle);
        }

        var (shape, cssClass) = choice.Mark switch
        {
            ChoiceMark.Recommended => (0, "mark-solid"),
            ChoiceMark.Fitted => (1, "mark"),
            ChoiceMark.PastLimit => (4, "mark-open"),
            _ => (0, "mark"),
        };
        Marks.Draw(svg, cssClass, shape, x, row.BarMiddle, Radius);
    }
}
