using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Wear;

/// <summary>
/// One measurement on a line from new to its wear limit. All gauges have one scale, so that lines below each other compare. The words
/// beside a gauge say what it shows; screen readers skip it.
/// </summary>
public static class WearGauge
{
    private const double Width = 340;
    private const double Height = 30;
    private const double Line = 14;
    private const double BarTop = 3;
    private const double BarHeight = 8;

    /// <summary>A share beyond this ends in an arrow.</summary>
    private const double MostShown = 1.25;

    /// <summary>Draws the gauge.</summary>
    /// <param name="input">What to draw.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">A share is not finite.</exception>
    public static RawHtml Draw(WearGaugeInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (!double.IsFinite(input.Share + (input.Lower ?? 0) + (input.Upper ?? 0) + input.Watch.Value + input.Renew))
        {
            throw new ArgumentException("A gauge needs finite shares.", nameof(input));
        }

        Scale scale = new(0, MostShown, 1, Width - 8);
        double At(double share) => scale.At(Math.Clamp(share, 0, MostShown));
        // Two systems of units leave no room for three labels on one line.
        var inTwoLines = Room(input.New) + Room(input.Watch) + Room(input.Limit) > Width;
        var height = inTwoLines ? Height + Line : Height;
        using SvgWriter svg = new();
        svg.Open("svg", "chart gauge").With("viewBox", $"0 0 {SvgNumber.Of(Width)} {SvgNumber.Of(height)}").With("width", Width).With("height", height);
        svg.With("font-size", ChartSheet.TextSize).With("aria-hidden", "true");
        svg.Line("axis", scale.Start, BarTop + BarHeight, scale.End, BarTop + BarHeight);
        var inside = At(Math.Min(input.Share, input.Renew));
        svg.Rect("bar", scale.Start, BarTop, inside - scale.Start, BarHeight);
        if (input.Share > input.Renew)
        {
            svg.Rect("bar-over", inside, BarTop, At(input.Share) - inside, BarHeight);
        }

        svg.Line("marker-line", At(input.Watch.Value), 0, At(input.Watch.Value), BarTop + BarHeight + 4);
        svg.Line("renew-mark", At(input.Renew), 0, At(input.Renew), BarTop + BarHeight + 4);
        if (input.Share > MostShown)
        {
            svg.Path("mark-cut", new PathData().Move(scale.End - 1, BarTop - 2).To(scale.End + 6, BarTop + (BarHeight / 2)).To(scale.End - 1, BarTop + BarHeight + 2).Close().ToString());
        }
        else if (input is { Lower: { } lower, Upper: { } upper })
        {
            Marks.Whisker(svg, At(lower), BarTop + (BarHeight / 2), At(upper), BarTop + (BarHeight / 2));
        }

        Label(svg, scale, input, inTwoLines);
        return svg.Close().Finish();
    }

    private static void Label(SvgWriter svg, Scale scale, WearGaugeInput input, bool inTwoLines)
    {
        LevelMark[] marks = inTwoLines ? [input.New, input.Limit] : [input.New, input.Watch, input.Limit];
        var centres = LabelSpread.Apart([.. marks.Select(m => scale.At(m.Value))], [.. marks.Select(Room)], -4, Width + 4);
        for (var i = 0; i < marks.Length; i++)
        {
            var x = inTwoLines ? Math.Clamp(scale.At(marks[i].Value), Room(marks[i]) / 2, Width - (Room(marks[i]) / 2)) : centres[i];
            svg.Label("quiet", x, Height - 3 + (inTwoLines && i > 0 ? Line : 0), marks[i].Label, Anchor.Middle);
        }
    }

    private static double Room(LevelMark mark) => TextWidth.Of(mark.Label) + 8;
}

/// <summary>Data of <see cref="WearGauge"/>.</summary>
/// <param name="Share">Share of the allowance between new and limit that is used: 0 as new, 1 at the limit, above 1 beyond it.</param>
/// <param name="Lower">Lower end of the measurement's uncertainty, as a share; null if unknown.</param>
/// <param name="Upper">Upper end of the measurement's uncertainty, as a share; null if unknown.</param>
/// <param name="New">The new size, at 0.</param>
/// <param name="Watch">From this share a part is monitored.</param>
/// <param name="Renew">From this share a part is renewed.</param>
/// <param name="Limit">The wear limit, at 1.</param>
public sealed record WearGaugeInput(double Share, double? Lower, double? Upper, LevelMark New, LevelMark Watch, double Renew, LevelMark Limit);
