using System.Globalization;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Stack;

namespace Layshaft.Site.Tests.Charts;

internal static partial class Samples
{
    /// <summary>Driven and driver teeth of an invented six-speed box, first gear first, with middle and face width, mm.</summary>
    public static readonly (int Driven, int Driver, double Middle, double Width)[] MainGears =
        [(38, 16, 37, 18), (34, 19, 78, 17), (32, 22, 98, 16.5), (30, 25, 137, 16), (28, 27, 156.5, 15.5), (26, 28, 194, 15)];

    public const double MainModule = 3;

    public static GearStackInput Stack()
    {
        List<StackPart> parts = [];
        for (var i = 0; i < MainGears.Length; i++)
        {
            var (driven, driver, middle, width) = MainGears[i];
            var mark = i is 1 or 2 ? Watch : Reuse;
            parts.Add(new StackPart(StackPartKind.Gear, "main", middle, width, Note(Tooth(driven), mark, $"main-{i + 1}"), driven, MainModule));
            parts.Add(new StackPart(StackPartKind.Gear, "lay", middle, width, Note(Tooth(driver), i == 3 ? Renew : Reuse, $"lay-{i + 1}"), driver, MainModule));
        }

        foreach (var (name, middle, mark) in new[] { ("1·2", 57.5, Watch), ("3·4", 117.5, Renew), ("5·6", 175.5, Reuse) })
        {
            parts.Add(new StackPart(StackPartKind.Hub, "main", middle, 18, null));
            parts.Add(new StackPart(StackPartKind.DogRing, "main", middle, 14, Note(name, mark, $"ring-{name}")));
        }

        foreach (var (shaft, middle, width) in new[] { ("input", 14.0, 16.0), ("lay", 14, 20), ("lay", 216, 20), ("main", 13, 24), ("main", 216, 20) })
        {
            parts.Add(new StackPart(StackPartKind.Bearing, shaft, middle, width, shaft == "lay" ? Note(string.Empty, Reuse, $"bearing-{middle}") : null));
        }

        parts.Add(new StackPart(StackPartKind.Seal, "input", 0, 8, null));
        parts.Add(new StackPart(StackPartKind.Gear, "input", 243, 18, Note("23", Reuse, "drop-driver"), 23, 2.5));
        parts.Add(new StackPart(StackPartKind.Gear, "lay", 243, 18, Note("30", Reuse, "drop-driven"), 30, 2.5));
        return new GearStackInput(
            Frame("stack", "The gear stack with its grades"),
            [new StackShaft("main", "main shaft", 148.25, 32), new StackShaft("lay", "lay shaft", 66.25, 30), new StackShaft("input", "input shaft", 0, 24)],
            parts,
            new StackFinalDrive("main", -3, 11, 35, 4.6, Note("35/11", Reuse, "final-drive")),
            [new StackDimension("main", "lay", "82 mm"), new StackDimension("lay", "input", "66.25 mm")]);
    }

    private static string Tooth(int teeth) => teeth.ToString(CultureInfo.InvariantCulture);

    private static StackNote Note(string label, GradeMark mark, string target) => new(label, mark, $"#{target}", $"{target}: {mark.Name}");
}
