using System.Text;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>Builds the <c>d</c> of a path from straight pieces and arcs.</summary>
internal sealed class PathData
{
    private readonly StringBuilder data = new();

    public static string Through(IEnumerable<ChartPoint> points)
    {
        PathData path = new();
        foreach (var point in points)
        {
            path.To(point.X, point.Y);
        }

        return path.ToString();
    }

    public PathData Move(double x, double y) => Add('M', x, y);

    public PathData To(double x, double y) => Add(data.Length == 0 ? 'M' : 'L', x, y);

    public PathData Arc(double radius, bool clockwise, double x, double y)
    {
        data.Append('A').Append(SvgNumber.Of(radius)).Append(' ').Append(SvgNumber.Of(radius)).Append(" 0 0 ").Append(clockwise ? '1' : '0').Append(' ');
        data.Append(SvgNumber.Of(x)).Append(' ').Append(SvgNumber.Of(y));
        return this;
    }

    public PathData Close()
    {
        data.Append('Z');
        return this;
    }

    public override string ToString() => data.ToString();

    private PathData Add(char command, double x, double y)
    {
        data.Append(command).Append(SvgNumber.Of(x)).Append(' ').Append(SvgNumber.Of(y));
        return this;
    }
}
