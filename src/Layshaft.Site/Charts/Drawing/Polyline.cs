namespace Layshaft.Site.Charts.Drawing;

/// <summary>A line through points of rising X.</summary>
internal static class Polyline
{
    /// <exception cref="ArgumentException">Fewer than two points, or X does not rise.</exception>
    public static IReadOnlyList<ChartPoint> Checked(IReadOnlyList<ChartPoint>? points, string what)
    {
        if (points is null || points.Count < 2)
        {
            throw new ArgumentException($"The line '{what}' needs at least two points.", nameof(points));
        }

        for (var i = 1; i < points.Count; i++)
        {
            if (!(points[i].X > points[i - 1].X))
            {
                throw new ArgumentException($"The points of the line '{what}' must have rising X.", nameof(points));
            }
        }

        return points;
    }

    /// <summary>Y at X between the points; the end value beyond them.</summary>
    public static double At(IReadOnlyList<ChartPoint> points, double x)
    {
        if (x <= points[0].X)
        {
            return points[0].Y;
        }

        for (var i = 1; i < points.Count; i++)
        {
            if (x <= points[i].X)
            {
                var (a, b) = (points[i - 1], points[i]);
                return a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y));
            }
        }

        return points[^1].Y;
    }

    /// <summary>The part of the line between two X, end points added.</summary>
    public static IEnumerable<ChartPoint> Between(IReadOnlyList<ChartPoint> points, double from, double to) =>
        [new(from, At(points, from)), .. points.Where(p => p.X > from && p.X < to), new(to, At(points, to))];
}
