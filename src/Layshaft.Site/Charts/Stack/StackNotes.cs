using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Charts.Stack;

/// <summary>
/// The marks above and below the drawing, each on a leader to its part: above for the highest shaft, below for the
/// rest. Rows are added until a finger can hit each mark.
/// </summary>
internal sealed class StackNotes
{
    private const double Slot = 25;
    private const double RowHeight = 46;
    private const double Radius = 9.5;

    private readonly List<Placed> above;
    private readonly List<Placed> below;
    private readonly double width;

    public StackNotes(GearStackInput input, ChartSize size)
    {
        width = ChartSheet.Width(size);
        var highest = input.Shafts.Select(s => s.Height).DefaultIfEmpty(0).Max();
        var upper = input.Shafts.Where(s => s.Height >= highest).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        List<Placed> all = [.. input.Parts.Select((p, i) => (p, i)).Where(p => p.p.Note is not null)
            .OrderBy(p => p.p.Middle).ThenBy(p => p.i).Select(p => new Placed(p.p.Note!, p.p.ShaftId, p.i))];
        if (input.FinalDrive?.Note is { } note)
        {
            all.Add(new Placed(note, input.FinalDrive.ShaftId, -1));
        }

        above = InParallel(input, all.Where(p => upper.Contains(p.ShaftId)));
        below = InParallel(input, all.Where(p => !upper.Contains(p.ShaftId)));
        TopRoom = 8 + (RowsOf(above) * RowHeight) + 12;
        BottomRoom = 14 + (RowsOf(below) * RowHeight) + 6;
    }

    public double TopRoom { get; }

    public double BottomRoom { get; }

    public bool AnyLink => above.Concat(below).Any(p => p.Note.Link is not null);

    public void Draw(SvgWriter svg, StackLayout layout)
    {
        DrawSide(svg, layout, above, 1);
        DrawSide(svg, layout, below, -1);
    }

    private static double Room(StackNote note) => Math.Max(Slot, TextWidth.Of(note.Label) + 5);

    private int RowsOf(List<Placed> notes) => (int)Math.Ceiling(notes.Sum(n => Room(n.Note)) / (width - 4));

    private void DrawSide(SvgWriter svg, StackLayout layout, List<Placed> notes, int side)
    {
        // Sorted by place, dealt to the rows in turn, so that leaders of one row pass between the marks of the other.
        var ordered = notes.OrderBy(n => Target(layout, n, side).X).ToList();
        var rows = RowsOf(notes);
        for (var row = 0; row < rows; row++)
        {
            var mine = ordered.Where((_, i) => i % rows == row).ToList();
            var targets = mine.Select(n => Target(layout, n, side)).ToList();
            var centres = LabelSpread.Apart([.. targets.Select(t => t.X)], [.. mine.Select(n => Room(n.Note))], 2, width - 2);
            var y = side > 0 ? layout.Top - 30 - (row * RowHeight) : layout.Bottom + 30 + (row * RowHeight);
            for (var i = 0; i < mine.Count; i++)
            {
                DrawOne(svg, layout, mine[i], targets[i], centres[i], y, side);
            }
        }
    }

    private static void DrawOne(SvgWriter svg, StackLayout layout, Placed placed, ChartPoint target, double x, double y, int side)
    {
        var note = placed.Note;
        ChartLink.Around(svg, note.Link, ChartLink.NameOf(note.Grade, note.Label, note.AccessibleName), () =>
        {
            var from = y + (side * (note.Grade is null ? 0 : Radius + 1));
            var knee = y + (side * 18);
            svg.Path("leader", new PathData().Move(x, from).To(x, knee - (side * 4)).To(target.X, knee + (side * 8)).To(target.X, target.Y).ToString());
            svg.Circle("leader-dot", target.X, target.Y, 1.6);
            if (note.Link is not null && placed.Part >= 0)
            {
                var box = layout.Bounds[placed.Part];
                svg.Rect("hit", layout.X(box.From), layout.Y(box.High), (box.To - box.From) * layout.PerMm, 2 * box.Radius * layout.PerMm);
            }

            if (note.Link is not null)
            {
                var top = side > 0 ? y - 27 : y - 12;
                svg.Rect("hit", x - (Room(note) / 2), top, Room(note), 39);
            }

            if (note.Grade is not null)
            {
                Marks.Grade(svg, note.Grade, x, y, Radius);
            }

            if (note.Label.Length > 0)
            {
                svg.Label("label", x, side > 0 ? y - 15 : y + 24, note.Label, Anchor.Middle);
            }
        });
    }

    /// <summary>Just inside the outline of the part, on the side of its mark.</summary>
    private static ChartPoint Target(StackLayout layout, Placed placed, int side)
    {
        if (placed.Part < 0)
        {
            var drive = layout.FinalDrive!;
            var high = drive.Axis + (side * drive.CrownRadius * Math.Sin(FinalDriveShape.HalfAngle * 0.8));
            var along = drive.Centre - (drive.Direction * (drive.CrownRadius - (drive.Face / 2)) * Math.Cos(FinalDriveShape.HalfAngle * 0.8));
            return new ChartPoint(layout.X(along), layout.Y(high));
        }

        var box = layout.Bounds[placed.Part];
        var inside = Math.Min(3.5 / layout.PerMm, box.Radius / 3);
        return new ChartPoint(layout.X(((box.From + box.To) / 2) + (placed.Aside * (box.To - box.From))), layout.Y(box.Axis + (side * (box.Radius - inside))));
    }

    /// <summary>
    /// Parts that stand over each other (a hub in its ring, two drop gears) get leaders side by side; each to a place
    /// of its own across the width.
    /// </summary>
    private static List<Placed> InParallel(GearStackInput input, IEnumerable<Placed> notes)
    {
        List<Placed> placed = [];
        foreach (var group in notes.GroupBy(n => n.Part < 0 ? double.NaN : Math.Round(input.Parts[n.Part].Middle)))
        {
            var members = group.ToList();
            placed.AddRange(members.Select((n, i) => n with { Aside = (i - ((members.Count - 1) / 2.0)) * 0.5 / members.Count }));
        }

        return placed;
    }

    /// <summary>A note with the index of its part (−1 for the final drive) and its place across the part's width.</summary>
    private sealed record Placed(StackNote Note, string ShaftId, int Part, double Aside = 0);
}
