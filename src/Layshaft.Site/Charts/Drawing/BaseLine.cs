namespace Layshaft.Site.Charts.Drawing;

/// <summary>The one axis of a bar chart, ruled under its rows.</summary>
internal static class BaseLine
{
    /// <summary>Room that the axis takes under the rows.</summary>
    public const double Height = 40;

    public static void Rule(SvgWriter svg, Scale scale, double top, double bottom, Axis axis)
    {
        for (var most = Math.Max(2, (int)((scale.End - scale.Start) / 60)); ; most--)
        {
            var ticks = NiceTicks.Between(scale.From, scale.To, most);
            var widest = TextWidth.Widest(ticks.Select(t => axis.Format(t))) + 10;
            if (most > 2 && ticks.Count > 1 && scale.At(ticks[1]) - scale.At(ticks[0]) < widest)
            {
                continue;
            }

            Ticks(svg, scale, top, bottom, [.. ticks.Select(t => new AxisTick(t, axis.Format(t)))]);
            svg.Label("axis-name", scale.End, bottom + 36, axis.Name, Anchor.End);
            return;
        }
    }

    /// <summary>Rules ticks that the caller placed; a label that finds no room is left out, its line is kept.</summary>
    public static void Ticks(SvgWriter svg, Scale scale, double top, double bottom, IReadOnlyList<AxisTick> ticks)
    {
        svg.Line("axis", scale.Start, bottom, scale.End, bottom);
        var free = double.NegativeInfinity;
        foreach (var tick in ticks.Where(t => scale.Holds(t.Value)).OrderBy(t => t.Value))
        {
            var x = scale.At(tick.Value);
            svg.Line("grid", x, top, x, bottom);
            svg.Line("axis", x, bottom, x, bottom + 4);
            var half = TextWidth.Of(tick.Label) / 2;
            var centre = Math.Max(half, x);
            if (centre - half > free)
            {
                svg.Label("tick", centre, bottom + 18, tick.Label, Anchor.Middle);
                free = centre + half + 6;
            }
        }
    }
}
