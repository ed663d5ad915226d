using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Charts.Stack;

/// <summary>Draws the bevel pinion over the shown piece of its crown wheel.</summary>
internal static class FinalDrivePainter
{
    public static void Draw(SvgWriter svg, StackLayout layout, GradeMark? grade)
    {
        if (layout.FinalDrive is not { } drive)
        {
            return;
        }

        DrawCrown(svg, layout, drive, StackPainter.Outline(grade));
        DrawPinion(svg, layout, drive, StackPainter.Outline(grade));
    }

    private static void DrawCrown(SvgWriter svg, StackLayout layout, FinalDriveShape drive, string outline)
    {
        var inner = drive.CrownRadius - drive.Face;
        ChartPoint On(double radius, double angle) => new(
            layout.X(drive.Centre - (drive.Direction * radius * Math.Cos(angle))), layout.Y(drive.Axis + (radius * Math.Sin(angle))));

        const double half = FinalDriveShape.HalfAngle;
        var (a, b, c, d) = (On(drive.CrownRadius, half), On(drive.CrownRadius, -half), On(inner, -half), On(inner, half));
        var clockwise = drive.Direction < 0;
        PathData ring = new();
        ring.Move(a.X, a.Y).Arc(drive.CrownRadius * layout.PerMm, clockwise, b.X, b.Y).To(c.X, c.Y).Arc(inner * layout.PerMm, !clockwise, d.X, d.Y).Close();
        svg.Path(outline + " plain", ring.ToString());

        // One line per tooth, at the wheel's true pitch.
        PathData teeth = new();
        var pitch = 2 * Math.PI / drive.CrownTeeth;
        var each = (int)(half / pitch);
        for (var i = -each; i <= each; i++)
        {
            var (from, to) = (On(drive.CrownRadius, i * pitch), On(inner, i * pitch));
            teeth.Move(from.X, from.Y).To(to.X, to.Y);
        }

        svg.Path("bevel-tooth", teeth.ToString());
    }

    private static void DrawPinion(SvgWriter svg, StackLayout layout, FinalDriveShape drive, string outline)
    {
        // Teeth run towards the crown wheel's centre, where both cones have their tip.
        var small = drive.PinionRadius * (drive.CrownRadius - drive.Face) / drive.CrownRadius;
        var (x1, x2) = (layout.X(drive.Back), layout.X(drive.Front));
        double Y(double radius) => layout.Y(drive.Axis + radius);
        svg.Path(outline + " plain", new PathData().Move(x1, Y(drive.PinionRadius)).To(x2, Y(small)).To(x2, Y(-small)).To(x1, Y(-drive.PinionRadius)).Close().ToString());
        PathData teeth = new();
        foreach (var share in (double[])[-0.75, -0.45, -0.15, 0.15, 0.45, 0.75])
        {
            teeth.Move(x1, Y(drive.PinionRadius * share)).To(x2, Y(small * share));
        }

        svg.Path("bevel-tooth", teeth.ToString());
        svg.Line("centre-line", Math.Min(x1, x2) - 6, Y(0), Math.Max(x1, x2), Y(0));
    }
}
