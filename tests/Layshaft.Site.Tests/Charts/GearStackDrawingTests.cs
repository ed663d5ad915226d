using System.Xml.Linq;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Stack;

namespace Layshaft.Site.Tests.Charts;

public class GearStackDrawingTests
{
    private static readonly StackShaft Main = new("main", "main shaft", 82, 30);
    private static readonly StackShaft Lay = new("lay", "lay shaft", 0, 30);

    [Theory]
    [InlineData(ChartSize.Wide)]
    [InlineData(ChartSize.Compact)]
    public void Two_meshing_gears_are_drawn_to_one_scale_in_both_directions(ChartSize size)
    {
        // 38 and 16 teeth of module 3: outer diameters 120 and 54 mm, 18 mm wide, axes 82 mm apart.
        Drawing drawing = new(GearStackDrawing.Draw(Stack(Gear("main", 37, 38), Gear("lay", 37, 16)), size));
        var teeth = drawing.Elements("tooth plain").ToList();
        var axes = drawing.Elements("centre-line").Select(l => DrawnText.Number(l, "y1")).ToList();
        var perMm = (axes[1] - axes[0]) / 82;

        Assert.Equal(4, teeth.Count);
        Assert.Equal(120, (Bottom(teeth[1]) - Top(teeth[0])) / perMm, 0.05);
        Assert.Equal(54, (Bottom(teeth[3]) - Top(teeth[2])) / perMm, 0.05);
        Assert.All(teeth, t => Assert.Equal(18, DrawnText.Number(t, "width") / perMm, 0.05));
    }

    [Fact]
    public void A_tooth_is_two_and_a_quarter_modules_high()
    {
        Drawing drawing = new(GearStackDrawing.Draw(Stack(Gear("main", 37, 38), Gear("lay", 37, 16)), ChartSize.Wide));
        var axes = drawing.Elements("centre-line").Select(l => DrawnText.Number(l, "y1")).ToList();

        Assert.All(drawing.Elements("tooth plain"), t => Assert.Equal(6.75, DrawnText.Number(t, "height") * 82 / (axes[1] - axes[0]), 0.05));
    }

    [Fact]
    public void The_pitch_lines_of_a_mesh_without_profile_shift_fall_together()
    {
        // 34 + 20 teeth of module 3 make exactly 81 mm.
        var input = Stack(Gear("main", 37, 34), Gear("lay", 37, 20)) with { Shafts = [Main with { Height = 81 }, Lay] };
        Drawing drawing = new(GearStackDrawing.Draw(input, ChartSize.Wide));
        var pitch = drawing.Elements("pitch-line").Select(l => DrawnText.Number(l, "y1")).ToList();

        Assert.Equal(pitch[1], pitch[2], 0.02);
    }

    [Fact]
    public void Dogs_stand_only_on_faces_towards_a_dog_ring_on_the_same_shaft()
    {
        var withRing = Stack(Gear("main", 30, 38), Gear("lay", 30, 16), new StackPart(StackPartKind.DogRing, "main", 50, 14, null), Gear("main", 120, 30));
        var without = withRing with { Parts = [.. withRing.Parts.Where(p => p.Kind != StackPartKind.DogRing)] };
        static int Sections(GearStackInput input) => new Drawing(GearStackDrawing.Draw(input, ChartSize.Wide)).Elements("section").Count();

        // The ring itself draws two faces; one gear face near it bears dogs, above and below the axis.
        Assert.Equal(4, Sections(withRing) - Sections(without));
    }

    [Fact]
    public void Each_crown_wheel_tooth_stands_at_the_true_pitch()
    {
        Drawing drawing = new(GearStackDrawing.Draw(Samples.Stack(), ChartSize.Wide));
        var lines = drawing.Paths("bevel-tooth")[0];

        // 0.62 rad to each side at 2π/35 a tooth: three teeth to each side of the middle one, two points a line.
        Assert.Equal(14, lines.Count);
    }

    [Theory]
    [InlineData(ChartSize.Wide)]
    [InlineData(ChartSize.Compact)]
    public void Each_link_leads_to_its_finding_and_its_mark_is_large_enough_for_a_finger(ChartSize size)
    {
        var root = XElement.Parse(GearStackDrawing.Draw(Samples.Stack(), size).Markup);
        var links = root.Descendants().Where(e => e.Name.LocalName == "a").ToList();

        Assert.Equal(20, links.Count);
        Assert.Contains(links, a => a.Attribute("href")!.Value == "#ring-3·4" && a.Attribute("aria-label")!.Value == "N 3·4: ring-3·4: renew");
        Assert.All(links, a =>
        {
            var hit = a.Elements().Last(e => e.Attribute("class")?.Value == "hit");
            Assert.True(DrawnText.Number(hit, "width") >= 24 && DrawnText.Number(hit, "height") >= 24);
        });
    }

    [Fact]
    public void A_leader_ends_inside_the_part_that_it_names()
    {
        var root = XElement.Parse(GearStackDrawing.Draw(Samples.Stack(), ChartSize.Compact).Markup);
        foreach (var link in root.Descendants().Where(e => e.Name.LocalName == "a" && e.Attribute("href")!.Value != "#final-drive"))
        {
            var dot = link.Elements().Single(e => e.Attribute("class")?.Value == "leader-dot");
            var part = link.Elements().First(e => e.Attribute("class")?.Value == "hit");
            Assert.InRange(DrawnText.Number(dot, "cx"), DrawnText.Number(part, "x"), DrawnText.Number(part, "x") + DrawnText.Number(part, "width"));
            Assert.InRange(DrawnText.Number(dot, "cy"), Top(part), Bottom(part));
        }
    }

    [Fact]
    public void More_marks_than_one_row_holds_take_a_second_row()
    {
        var many = Enumerable.Range(0, 20).Select(i => new StackPart(StackPartKind.Seal, "main", i * 12, 8, new StackNote("8", Samples.Reuse, $"#p{i}", "part")));
        Drawing drawing = new(GearStackDrawing.Draw(Stack([.. many]), ChartSize.Compact));
        var marks = drawing.Elements("grade grade-circle").ToList();

        Assert.Equal(20, marks.Count);
        Assert.Equal(2, marks.Select(m => DrawnText.Number(m, "cy")).Distinct().Count());
        Assert.All(marks, m => Assert.InRange(DrawnText.Number(m, "cx"), 9, 351));
    }

    [Fact]
    public void A_part_on_a_shaft_that_is_not_there_is_refused()
    {
        Assert.Contains("'idler'", Assert.Throws<ArgumentException>(() => GearStackDrawing.Draw(Stack(Gear("idler", 10, 20)), ChartSize.Wide)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, 3.0)]
    [InlineData(20, null)]
    [InlineData(0, 3.0)]
    [InlineData(20, double.NaN)]
    [InlineData(20, double.PositiveInfinity)]
    public void A_gear_without_teeth_or_module_is_refused(int? teeth, double? module)
    {
        StackPart gear = new(StackPartKind.Gear, "main", 10, 10, null, teeth, module);

        Assert.Throws<ArgumentException>(() => GearStackDrawing.Draw(Stack(gear), ChartSize.Wide));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_width_that_is_none_is_refused(double width)
    {
        Assert.Throws<ArgumentException>(() => GearStackDrawing.Draw(Stack(new StackPart(StackPartKind.Hub, "main", 10, width, null)), ChartSize.Wide));
    }

    private static GearStackInput Stack(params StackPart[] parts) =>
        new(Samples.Frame("stack", "Gear stack"), [Main, Lay], parts, null, []);

    private static StackPart Gear(string shaft, double middle, int teeth) => new(StackPartKind.Gear, shaft, middle, 18, null, teeth, 3);

    private static double Top(XElement rect) => DrawnText.Number(rect, "y");

    private static double Bottom(XElement rect) => DrawnText.Number(rect, "y") + DrawnText.Number(rect, "height");
}
