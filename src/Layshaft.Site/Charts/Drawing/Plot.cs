namespace Layshaft.Site.Charts.Drawing;

/// <summary>The ruled field of a chart with two axes: hairline grid, ticks, names.</summary>
internal sealed class Plot
{
    private const double Row = 17;

    private Plot(Scale x, Scale y) => (X, Y) = (x, y);

    public Scale X { get; }

    /// <summary>Values upwards, places downwards.</summary>
    public Scale Y { get; }

    public double Left => X.Start;

    public double Right => X.End;

    public double Top => Y.End;

    public double Bottom => Y.Start;

    public ChartPoint At(ChartPoint value) => new(X.At(value.X), Y.At(value.Y));

    public string Path(IEnumerable<ChartPoint> values) => PathData.Through(values.Select(At));

    /// <summary>Rules the field and writes both axes.</summary>
    public static Plot Rule(SvgWriter svg, PlotRequest request)
    {
        var width = ChartSheet.Width(request.Size);
        var top = Row + 8 + (request.SecondX is null ? 0 : Row);
        var bottom = request.Height - (2 * Row) - 6;
        var yTicks = NiceTicks.Between(request.YFrom, request.YTo, (int)((bottom - top) / 38));
        var yLabels = request.Y.Labels(yTicks);
        var left = Math.Ceiling(TextWidth.Widest(yLabels)) + 8;
        var right = width - Math.Max(8, request.RightMargin);
        Plot plot = new(new Scale(request.XFrom, request.XTo, left, right), new Scale(request.YFrom, request.YTo, bottom, top));

        for (var i = 0; i < yTicks.Count; i++)
        {
            var y = plot.Y.At(yTicks[i]);
            svg.Line("grid", left, y, right, y);
            svg.Label("tick", left - 5, y + 4.5, yLabels[i], Anchor.End);
        }

        foreach (var (x, label) in FittingTicks(plot.X, request.X.Format, 1))
        {
            svg.Line("grid", x, top, x, bottom);
            svg.Line("axis", x, bottom, x, bottom + 4);
            svg.Label("tick", x, bottom + Row, label, Anchor.Middle);
        }

        svg.Path("axis", new PathData().Move(left, top).To(left, bottom).To(right, bottom).ToString());
        svg.Label("axis-name", right, bottom + (2 * Row) + 1, request.X.Name, Anchor.End);
        svg.Label("axis-name", 1, 13, request.Y.Name);
        if (request.SecondX is not null)
        {
            RuleSecond(svg, plot, request.SecondX);
        }

        return plot;
    }

    private static void RuleSecond(SvgWriter svg, Plot plot, SecondAxis second)
    {
        if (!(second.Factor > 0))
        {
            throw new ArgumentException("The factor of a second axis must be above zero.", nameof(second));
        }

        svg.Line("axis", plot.Left, plot.Top, plot.Right, plot.Top);
        foreach (var (x, label) in FittingTicks(plot.X, second.Format, second.Factor))
        {
            svg.Line("axis", x, plot.Top, x, plot.Top - 4);
            svg.Label("tick", x, plot.Top - 7, label, Anchor.Middle);
        }

        svg.Label("axis-name", plot.Right, 13, second.Name, Anchor.End);
    }

    /// <summary>As many round ticks as their labels leave room for.</summary>
    private static List<(double X, string Label)> FittingTicks(Scale scale, Func<double, string> format, double factor)
    {
        var length = scale.End - scale.Start;
        for (var most = Math.Max(2, (int)(length / 56)); ; most--)
        {
            var ticks = NiceTicks.Between(scale.From * factor, scale.To * factor, most)
                .Select(t => (X: scale.At(t / factor), Label: format(t))).ToList();
            var widest = TextWidth.Widest(ticks.Select(t => t.Label)) + 8;
            if (most <= 2 || ticks.Count < 2 || ticks[1].X - ticks[0].X >= widest)
            {
                return ticks;
            }
        }
    }
}

/// <summary>What a ruled field is asked for.</summary>
internal sealed record PlotRequest(ChartSize Size, double Height, Axis X, double XFrom, double XTo, Axis Y, double YFrom, double YTo)
{
    public SecondAxis? SecondX { get; init; }

    /// <summary>Room kept free at the right for labels at line ends.</summary>
    public double RightMargin { get; init; }
}
