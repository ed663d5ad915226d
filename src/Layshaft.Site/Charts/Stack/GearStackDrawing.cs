using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Stack;

/// <summary>
/// A section through the shafts of a gearbox, turned into one plane, to scale: gears by their teeth, module and face
/// width at their centre distance. Each part carries its grade and leads to its finding.
/// </summary>
public static class GearStackDrawing
{
    /// <summary>Parts in the order in which they are drawn over each other.</summary>
    private static readonly StackPartKind[] Order =
        [StackPartKind.Bearing, StackPartKind.Seal, StackPartKind.Gear, StackPartKind.Hub, StackPartKind.DogRing];

    /// <summary>Draws the gearbox.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">The description contradicts itself, holds an unsafe link or a number that is not finite.</exception>
    public static RawHtml Draw(GearStackInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(input.Shafts);
        ArgumentNullException.ThrowIfNull(input.Parts);
        StackNotes notes = new(input, size);
        var layout = StackLayout.Of(input, size, notes.TopRoom, notes.BottomRoom);
        return ChartSheet.WithLinks(input.Frame, size, layout.Height, notes.AnyLink, svg =>
        {
            StackPainter painter = new(svg, layout, input.Frame);
            painter.DefineHatching();
            painter.DrawWalls();
            foreach (var shaft in input.Shafts)
            {
                painter.DrawShaft(shaft);
            }

            FinalDrivePainter.Draw(svg, layout, input.FinalDrive?.Note?.Grade);
            foreach (var i in Enumerable.Range(0, input.Parts.Count).OrderBy(i => Array.IndexOf(Order, input.Parts[i].Kind)).ThenBy(i => i))
            {
                painter.DrawPart(i);
            }

            foreach (var shaft in input.Shafts)
            {
                painter.DrawAxis(shaft);
            }

            LabelShafts(svg, layout);
            DrawDimensions(svg, layout);
            notes.Draw(svg, layout);
        });
    }

    private static void LabelShafts(SvgWriter svg, StackLayout layout)
    {
        // Shafts in one line share the label's place: their names stand under each other.
        foreach (var line in layout.Input.Shafts.GroupBy(s => s.Height))
        {
            var words = line.SelectMany(s => s.Label.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
            for (var i = 0; i < words.Count; i++)
            {
                svg.Label("label", 2, layout.Y(line.Key) + 4.5 + ((i - ((words.Count - 1) / 2.0)) * 15), words[i]);
            }
        }
    }

    private static void DrawDimensions(SvgWriter svg, StackLayout layout)
    {
        var x = layout.Right + 14;
        foreach (var dimension in layout.Input.Dimensions)
        {
            var (first, second) = (layout.Shaft(dimension.FirstShaftId), layout.Shaft(dimension.SecondShaftId));
            var (y1, y2) = (layout.Y(Math.Max(first.Height, second.Height)), layout.Y(Math.Min(first.Height, second.Height)));
            foreach (var shaft in (StackShaft[])[first, second])
            {
                svg.Line("dimension", layout.X(layout.Ends(shaft).To) + 6, layout.Y(shaft.Height), x + 4, layout.Y(shaft.Height));
            }

            svg.Line("dimension", x, y1, x, y2);
            svg.Path("dimension-arrow", new PathData().Move(x, y1).To(x - 2.5, y1 + 9).To(x + 2.5, y1 + 9).Close().ToString());
            svg.Path("dimension-arrow", new PathData().Move(x, y2).To(x - 2.5, y2 - 9).To(x + 2.5, y2 - 9).Close().ToString());
            var (labelX, labelY) = (x + 15, (y1 + y2) / 2);
            svg.Open("text", "label").With("x", labelX).With("y", labelY).With("text-anchor", "middle");
            svg.With("transform", $"rotate(-90 {SvgNumber.Of(labelX)} {SvgNumber.Of(labelY)})").Say(dimension.Label).Close();
        }
    }
}
