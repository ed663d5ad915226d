using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Wear;

/// <summary>Data of <see cref="GearWorkBars"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Gears">One row per gear; at least one.</param>
/// <param name="Share">The axis; both bars are shares on it.</param>
/// <param name="WorkName">What the hollow bar is, for example "work done by the dogs".</param>
/// <param name="WearName">What the filled bar is, for example "wear found".</param>
public sealed record GearWorkInput(ChartFrame Frame, IReadOnlyList<GearWork> Gears, Axis Share, string WorkName, string WearName);

/// <summary>One gear's work and wear.</summary>
/// <param name="Label">The gear.</param>
/// <param name="Work">Share of the engagement energy that this gear's dogs took; 0 or more.</param>
/// <param name="WorkText">The same, written.</param>
/// <param name="Wear">Wear found, as a share; null where nothing was measured.</param>
/// <param name="WearText">The same, written; or that nothing was measured.</param>
public sealed record GearWork(string Label, double Work, string WorkText, double? Wear, string WearText);

/// <summary>The work that the dogs of each gear did beside the wear found on them: why some rings wear first.</summary>
public static class GearWorkBars
{
    private const double Bar = 12;
    private const double BarPair = (2 * Bar) + 6;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No gears, a negative share, or a number that is not finite.</exception>
    public static RawHtml Draw(GearWorkInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Gears is null || input.Gears.Count == 0 || input.Gears.Any(g => g.Work < 0 || g.Wear < 0))
        {
            throw new ArgumentException("The chart needs at least one gear, and no share below 0.", nameof(input));
        }

        var rows = Rows.Lay(ChartSize.Wide, [.. input.Gears.Select(g => g.Label)], 2, BarPair, 2);
        var most = input.Gears.SelectMany(g => new[] { g.Work, g.Wear ?? 0 }).Max();

        // The first gear's bars say what they are; its texts are the longest, so the scale leaves room for them.
        string[] work = [.. input.Gears.Select((g, i) => i == 0 ? $"{g.WorkText} {input.WorkName}" : g.WorkText)];
        string[] wear = [.. input.Gears.Select((g, i) => i == 0 ? $"{g.WearText} {input.WearName}" : g.WearText)];
        var width = ChartSheet.Width(size) - rows.BarLeft - 8;
        var length = Room(input.Gears, work, wear, most, width);
        Scale scale = new(0, most > 0 ? most : 1, rows.BarLeft, rows.BarLeft + length);
        return ChartSheet.Picture(input.Frame, size, rows.Bottom + BaseLine.Height, svg =>
        {
            BaseLine.Rule(svg, scale, 2, rows.Bottom, input.Share);
            for (var i = 0; i < input.Gears.Count; i++)
            {
                var (gear, row) = (input.Gears[i], rows.All[i]);
                Rows.Name(svg, row, "row-name strong");
                DrawBar(svg, scale, "bar-hollow", gear.Work, row.BarMiddle - Bar - 2, work[i]);
                DrawBar(svg, scale, "bar-full", gear.Wear ?? 0, row.BarMiddle + 2, wear[i]);
            }
        });
    }

    /// <summary>The longest scale at which every text still fits behind its bar.</summary>
    private static double Room(IReadOnlyList<GearWork> gears, string[] work, string[] wear, double most, double width)
    {
        var length = width;
        for (var i = 0; i < gears.Count; i++)
        {
            foreach (var (share, text) in new[] { (gears[i].Work, work[i]), (gears[i].Wear ?? 0, wear[i]) })
            {
                var part = most > 0 ? share / most : 0;
                length = part > 0 ? Math.Min(length, (width - TextWidth.Of(text) - 6) / part) : length;
            }
        }

        return Math.Max(60, length);
    }

    private static void DrawBar(SvgWriter svg, Scale scale, string cssClass, double share, double y, string text)
    {
        var end = scale.At(share);
        if (share > 0)
        {
            svg.Rect(cssClass, scale.Start, y, end - scale.Start, Bar);
        }

        svg.Label("label", end + 5, y + Bar - 1.5, text);
    }
}
