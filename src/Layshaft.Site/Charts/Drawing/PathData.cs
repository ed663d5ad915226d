using System.Text;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>Builds the <c>d</c> of a path from straight pieces and arcs.</summary>
internal sealed class PathData
{
    private readonly StringBuilder data = new(64);

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
        data.Append('A');
        Number(radius);
        data.Append(' ');
        Number(radius);
        data.Append(" 0 0 ").Append(clockwise ? '1' : '0').Append(' ');
        Pair(x, y);
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
        data.Append(command);
        Pair(x, y);
        return this;
    }

    private void Pair(double x, double y)
    {
        Number(x);
        data.Append(' ');
        Number(y);
    }

    private void Number(double value)
    {
        Span<char> text = stackalloc char[SvgNumber.Room];
        if (SvgNumber.TryWrite(value, text, out var length))
        {
            data.Append(text[..length]);
        }
        else
        {
            data.Append(SvgNumber.Of(value));
        }
    }
}
