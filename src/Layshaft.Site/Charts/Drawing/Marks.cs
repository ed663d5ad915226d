namespace Layshaft.Site.Charts.Drawing;

/// <summary>Point markers and dash patterns that tell lines apart without colour.</summary>
internal static class Marks
{
    private static readonly string[] Dashes = [string.Empty, "8 3", "3 3", "10 3 2 3", "14 4", "6 2 2 2 2 2"];

    /// <summary>The dash pattern of the n-th line of a family; solid first.</summary>
    public static string Dash(int n) => Dashes[n % Dashes.Length];

    /// <summary>The marker of the n-th line of a family.</summary>
    public static void Draw(SvgWriter svg, string cssClass, int n, double x, double y, double radius)
    {
        switch (n % 5)
        {
            case 0:
                svg.Circle(cssClass, x, y, radius);
                break;
            case 1:
                svg.Rect(cssClass, x - radius, y - radius, 2 * radius, 2 * radius);
                break;
            case 2:
                svg.Path(cssClass, Triangle(x, y, radius * 1.25));
                break;
            case 3:
                svg.Path(cssClass, new PathData().Move(x, y - (radius * 1.3)).To(x + (radius * 1.3), y).To(x, y + (radius * 1.3)).To(x - (radius * 1.3), y).Close().ToString());
                break;
            default:
                svg.Path(cssClass, new PathData().Move(x - radius, y - radius).To(x + radius, y + radius).Move(x - radius, y + radius).To(x + radius, y - radius).ToString());
                break;
        }
    }

    /// <summary>A grade mark with its letter, about <paramref name="radius"/> around the point.</summary>
    public static void Grade(SvgWriter svg, GradeMark mark, double x, double y, double radius)
    {
        var letterAt = y + (radius * 0.5);
        switch (mark.Shape)
        {
            case GradeShape.Circle:
                svg.Circle("grade grade-circle", x, y, radius);
                break;
            case GradeShape.Triangle:
                svg.Path("grade grade-triangle", Triangle(x, y + (radius * 0.12), radius * 1.34));
                letterAt = y + (radius * 0.8);
                break;
            case GradeShape.Square:
                svg.Rect("grade grade-square", x - (radius * 0.92), y - (radius * 0.92), radius * 1.84, radius * 1.84);
                break;
            default:
                throw new ArgumentException("A grade mark has an unknown shape.", nameof(mark));
        }

        svg.Label(mark.Shape == GradeShape.Square ? "grade-letter grade-letter-solid" : "grade-letter", x, letterAt, mark.Letter, Anchor.Middle);
    }

    /// <summary>A short line with a bar at each end.</summary>
    public static void Whisker(SvgWriter svg, double x1, double y1, double x2, double y2, double cap = 4)
    {
        PathData path = new();
        path.Move(x1, y1).To(x2, y2);
        var (dx, dy) = Math.Abs(x2 - x1) >= Math.Abs(y2 - y1) ? (0.0, cap) : (cap, 0.0);
        path.Move(x1 - dx, y1 - dy).To(x1 + dx, y1 + dy).Move(x2 - dx, y2 - dy).To(x2 + dx, y2 + dy);
        svg.Path("whisker", path.ToString());
    }

    private static string Triangle(double x, double y, double radius) =>
        new PathData().Move(x, y - radius).To(x + (radius * 0.9), y + (radius * 0.7)).To(x - (radius * 0.9), y + (radius * 0.7)).Close().ToString();
}
