using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Charts.Stack;

/// <summary>Draws shafts, walls and parts in section, as a drawing office does: cut faces hatched, shafts not.</summary>
internal sealed class StackPainter(SvgWriter svg, StackLayout layout, ChartFrame frame)
{
    private const string Forward = "hatch-a";
    private const string Backward = "hatch-b";
    private const string Case = "hatch-c";

    public void DefineHatching()
    {
        svg.Open("defs");
        Pattern(Forward, 4.5, 45, "hatch");
        Pattern(Backward, 3.4, -45, "hatch");
        Pattern(Case, 7, 45, "hatch hatch-case");
        svg.Close();
    }

    /// <summary>The walls that bearings in line stand in.</summary>
    public void DrawWalls()
    {
        var bearings = layout.Input.Parts.Select((p, i) => (Part: p, Box: layout.Bounds[i]))
            .Where(b => b.Part.Kind == StackPartKind.Bearing).OrderBy(b => b.Box.From).Select(b => b.Box).ToList();
        while (bearings.Count > 0)
        {
            var first = bearings[0];
            var wall = bearings.TakeWhile(b => b.From < first.To).ToList();
            bearings.RemoveRange(0, wall.Count);
            var (from, to) = (wall.Max(b => b.From), wall.Min(b => b.To));
            var middle = (from + to) / 2;
            var half = Math.Min((to - from) / 2, 6);
            Section("section case-wall", Case, middle - half, middle + half, wall.Min(b => b.Low) - 9, wall.Max(b => b.High) + 9);
        }
    }

    public void DrawShaft(StackShaft shaft)
    {
        var (from, to) = layout.Ends(shaft);
        var (x1, x2) = (layout.X(from), layout.X(to));
        var (y1, y2) = (layout.Y(shaft.Height + (shaft.Diameter / 2)), layout.Y(shaft.Height - (shaft.Diameter / 2)));
        var c = Math.Min(3, (x2 - x1) / 4);
        svg.Path("shaft", new PathData().Move(x1, y1 + c).To(x1 + c, y1).To(x2 - c, y1).To(x2, y1 + c)
            .To(x2, y2 - c).To(x2 - c, y2).To(x1 + c, y2).To(x1, y2 - c).Close().ToString());
    }

    public void DrawAxis(StackShaft shaft)
    {
        var (from, to) = layout.Ends(shaft);
        svg.Line("centre-line", layout.X(from) - 5, layout.Y(shaft.Height), layout.X(to) + 5, layout.Y(shaft.Height));
    }

    public void DrawPart(int index)
    {
        var part = layout.Input.Parts[index];
        var box = layout.Bounds[index];
        var bore = layout.Shaft(part.ShaftId).Diameter / 2;
        var outline = Outline(part.Note?.Grade);
        switch (part.Kind)
        {
            case StackPartKind.Gear:
                DrawGear(part, box, bore, outline);
                break;
            case StackPartKind.DogRing:
                DrawRing(box, bore, outline);
                break;
            case StackPartKind.Hub:
                Halves(outline, Forward, box.From, box.To, box.Axis, bore, box.Radius);
                break;
            case StackPartKind.Bearing:
                DrawBearing(box, bore, outline);
                break;
            default:
                DrawSeal(box, bore, outline);
                break;
        }
    }

    public static string Outline(GradeMark? grade) => grade?.Shape switch
    {
        GradeShape.Square => "section section-renew",
        GradeShape.Triangle => "section section-watch",
        _ => "section",
    };

    private void DrawGear(StackPart gear, PartBox box, double bore, string outline)
    {
        var root = Math.Max(bore, StackRadii.Root(gear));
        Halves("tooth", null, box.From, box.To, box.Axis, root, box.Radius);
        if (root > bore)
        {
            Halves(outline, Forward, box.From, box.To, box.Axis, bore, root);
        }

        var pitch = StackRadii.Pitch(gear);
        foreach (var side in (int[])[1, -1])
        {
            var y = layout.Y(box.Axis + (side * pitch));
            svg.Line("pitch-line", layout.X(box.From) - 2, y, layout.X(box.To) + 2, y);
        }

        foreach (var (from, to) in DogsOf(gear, box))
        {
            var ring = root * 0.86;
            Halves("section", Forward, from, to, box.Axis, Math.Max(bore * 1.25, Math.Min(ring, bore * 2.05) - 6), Math.Min(ring, bore * 2.05));
        }
    }

    /// <summary>Dogs stand on the faces towards a dog ring near by, over half of the gap.</summary>
    private IEnumerable<(double From, double To)> DogsOf(StackPart gear, PartBox box)
    {
        const double near = 12;
        foreach (var ring in layout.PartsOn(gear.ShaftId).Where(p => p.Kind == StackPartKind.DogRing))
        {
            var (from, to) = (ring.Middle - (ring.Width / 2), ring.Middle + (ring.Width / 2));
            if (from >= box.To && from - box.To < near)
            {
                yield return (box.To, box.To + ((from - box.To) * 0.6));
            }
            else if (to <= box.From && box.From - to < near)
            {
                yield return (box.From - ((box.From - to) * 0.6), box.From);
            }
        }
    }

    private void DrawRing(PartBox box, double bore, string outline)
    {
        var inner = Math.Min(bore * 1.6, box.Radius * 0.8);
        var third = (box.To - box.From) / 3;
        var groove = box.Radius - ((box.Radius - inner) * 0.45);
        foreach (var side in (int[])[1, -1])
        {
            double Y(double radius) => layout.Y(box.Axis + (side * radius));
            PathData path = new();
            path.Move(layout.X(box.From), Y(inner)).To(layout.X(box.From), Y(box.Radius)).To(layout.X(box.From + third), Y(box.Radius))
                .To(layout.X(box.From + third), Y(groove)).To(layout.X(box.To - third), Y(groove)).To(layout.X(box.To - third), Y(box.Radius))
                .To(layout.X(box.To), Y(box.Radius)).To(layout.X(box.To), Y(inner)).Close();
            svg.Open("path", outline).With("d", path.ToString()).With("fill", Fill(Backward)).Close();
        }
    }

    private void DrawBearing(PartBox box, double bore, string outline)
    {
        var depth = box.Radius - bore;
        Halves("tooth", null, box.From, box.To, box.Axis, bore, box.Radius);
        Halves(outline, Forward, box.From, box.To, box.Axis, bore, bore + (depth * 0.3));
        Halves(outline, Backward, box.From, box.To, box.Axis, box.Radius - (depth * 0.3), box.Radius);
        foreach (var side in (int[])[1, -1])
        {
            var ball = Math.Min(depth * 0.29, (box.To - box.From) * 0.4);
            svg.Circle("ball", layout.X((box.From + box.To) / 2), layout.Y(box.Axis + (side * (bore + (depth / 2)))), ball * layout.PerMm);
        }
    }

    private void DrawSeal(PartBox box, double bore, string outline)
    {
        Halves(outline, null, box.From, box.To, box.Axis, bore, box.Radius);
        foreach (var side in (int[])[1, -1])
        {
            svg.Line("centre-line", layout.X(box.From), layout.Y(box.Axis + (side * box.Radius)), layout.X(box.To), layout.Y(box.Axis + (side * bore)));
        }
    }

    /// <summary>The two cut faces of a ring about the axis, above and below.</summary>
    private void Halves(string cssClass, string? hatch, double from, double to, double axis, double inner, double outer)
    {
        Section(cssClass, hatch, from, to, axis + inner, axis + outer);
        Section(cssClass, hatch, from, to, axis - outer, axis - inner);
    }

    private void Section(string cssClass, string? hatch, double from, double to, double low, double high)
    {
        svg.Open("rect", hatch is null ? cssClass + " plain" : cssClass).With("x", layout.X(from)).With("y", layout.Y(high));
        svg.With("width", Math.Max(0, to - from) * layout.PerMm).With("height", Math.Max(0, high - low) * layout.PerMm);
        if (hatch is not null)
        {
            svg.With("fill", Fill(hatch));
        }

        svg.Close();
    }

    private string Fill(string pattern) => $"url(#{ChartSheet.Id(frame, layout.Size, pattern)})";

    private void Pattern(string name, double step, double angle, string cssClass)
    {
        svg.Open("pattern").With("id", ChartSheet.Id(frame, layout.Size, name)).With("patternUnits", "userSpaceOnUse");
        svg.With("width", step).With("height", step).With("patternTransform", $"rotate({SvgNumber.Of(angle)})");
        svg.Rect("hatch-ground", 0, 0, step, step);
        svg.Line(cssClass, 0, 0, 0, step);
        svg.Close();
    }
}
