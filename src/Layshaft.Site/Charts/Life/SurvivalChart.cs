using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Life;

/// <summary>
/// What share of a part type survives how many hours: the estimate from the inspections, straight where they do not show how it comes
/// down, the fitted Weibull curve, and the life that nine in ten reach.
/// </summary>
public static class SurvivalChart
{
    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">Steps that do not rise in hours, a share outside 0 to 1, a number that is not finite.</exception>
    public static RawHtml Draw(SurvivalInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        for (var i = 0; i < input.Steps.Count; i++)
        {
            var step = input.Steps[i];
            if (!(step.To >= step.From) || (i > 0 && !(step.To > input.Steps[i - 1].To && step.From >= input.Steps[i - 1].To)) || !(step.Surviving is >= 0 and <= 1))
            {
                throw new ArgumentException("The steps must rise in hours, with shares between 0 and 1.", nameof(input));
            }
        }

        if (input.Weibull is not null)
        {
            Polyline.Checked(input.Weibull.Points, input.Weibull.Label);
        }

        var height = size == ChartSize.Wide ? 400.0 : 370.0;
        return ChartSheet.Picture(input.Frame, size, height, svg =>
        {
            var longest = new[] { input.Until, input.Steps.Select(s => s.To).DefaultIfEmpty(0).Max(), input.Weibull?.Points[^1].X ?? 0, input.B10?.Upper ?? 0 }.Max();
            var plot = Plot.Rule(svg, new PlotRequest(size, height, input.Hours, 0, longest * 1.04, input.Surviving, 0, 1.1));
            svg.Path("line", PathData.Through(Steps(plot, input)));
            DrawWeibull(svg, plot, input.Weibull);
            DrawCensored(svg, plot, input);
            DrawB10(svg, plot, input.B10);
            LabelSteps(svg, plot, input);
        });
    }

    // What lies closer together than this cannot be told apart, and a shop of ten seasons has ten thousand lives in a drawing.
    private const double Finest = 0.25;

    /// <summary>The corners of the stairs, from full survival at zero hours to the end of the observation.</summary>
    private static List<ChartPoint> Steps(Plot plot, SurvivalInput input)
    {
        List<ChartPoint> corners = [plot.At(new ChartPoint(0, 1))];
        var last = 1.0;
        foreach (var step in input.Steps)
        {
            corners.Add(plot.At(new ChartPoint(step.From, last)));
            last = step.Surviving;
            corners.Add(plot.At(new ChartPoint(step.To, last)));
        }

        corners.Add(plot.At(new ChartPoint(Math.Max(input.Until, input.Steps.Select(s => s.To).DefaultIfEmpty(0).Max()), last)));
        return Thinned(corners);
    }

    private static List<ChartPoint> Thinned(List<ChartPoint> corners)
    {
        var kept = new List<ChartPoint>();
        for (var i = 0; i < corners.Count; i++)
        {
            if (i == 0 || i == corners.Count - 1 || Math.Max(Math.Abs(corners[i].X - kept[^1].X), Math.Abs(corners[i].Y - kept[^1].Y)) >= Finest)
            {
                kept.Add(corners[i]);
            }
        }

        return kept;
    }

    private static void DrawWeibull(SvgWriter svg, Plot plot, NamedPoints? weibull)
    {
        if (weibull is null)
        {
            return;
        }

        svg.Path("line run", plot.Path(weibull.Points), Marks.Dash(1));
        var end = plot.At(weibull.Points[^1]);
        svg.Label("label strong", plot.Right - 2, Math.Min(plot.Bottom - 5, end.Y + 20), weibull.Label, Anchor.End);
    }

    private static void DrawCensored(SvgWriter svg, Plot plot, SurvivalInput input)
    {
        var (next, share, last) = (0, 1.0, double.NegativeInfinity);
        foreach (var hours in input.Censored.Order())
        {
            for (; next < input.Steps.Count && input.Steps[next].To <= hours; next++)
            {
                share = input.Steps[next].Surviving;
            }

            // Within a stretch the tick lies on the straight line.
            var inside = next < input.Steps.Count && input.Steps[next] is { } step && hours > step.From
                ? share + (step.Surviving - share) * (hours - step.From) / (step.To - step.From)
                : share;
            var at = plot.At(new ChartPoint(hours, inside));
            if (at.X >= last + Finest)
            {
                svg.Line("tick-heavy", at.X, at.Y - 6, at.X, at.Y + 1);
                last = at.X;
            }
        }
    }

    private static void DrawB10(SvgWriter svg, Plot plot, BoundedMark? b10)
    {
        if (b10 is null)
        {
            return;
        }

        var at = plot.At(new ChartPoint(b10.Value, 0.9));
        svg.Path("marker-line", new PathData().Move(plot.Left, at.Y).To(at.X, at.Y).To(at.X, plot.Bottom).ToString());
        if (b10.Lower is not null && b10.Upper is not null)
        {
            Marks.Whisker(svg, plot.X.At(b10.Lower.Value), plot.Bottom - 9, plot.X.At(b10.Upper.Value), plot.Bottom - 9);
        }

        Marks.Draw(svg, "mark mark-accent", 3, at.X, at.Y, 4.5);
        svg.Label("label strong", Math.Min(plot.Left + 6, plot.Right - TextWidth.Of(b10.Label)), plot.Bottom - 20, b10.Label);
    }

    private static void LabelSteps(SvgWriter svg, Plot plot, SurvivalInput input)
    {
        svg.Label("label", plot.Left + 6, plot.Bottom - 42, input.StepsLabel);
        if (input.Censored.Count > 0)
        {
            svg.Line("tick-heavy", plot.Left + 9, plot.Bottom - 69, plot.Left + 9, plot.Bottom - 60);
            svg.Label("label", plot.Left + 16, plot.Bottom - 60, input.CensoredLabel);
        }
    }
}
