using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Site.Charts.Stack;
using UnitsNet;

namespace Layshaft.Site.Pages.Report;

/// <summary>
/// Where the shafts stand in a drawing that is turned into one plane, by their centre distances, and the usual proportions
/// of what a gearbox file does not give.
/// </summary>
internal static class StackHeights
{
    /// <summary>Height of each shaft whose place is known, above the layshaft.</summary>
    public static IReadOnlyDictionary<ShaftPosition, Length> Of(Gearbox gearbox)
    {
        var main = gearbox.MainGears!.CentreDistance;
        var heights = new Dictionary<ShaftPosition, Length> { [ShaftPosition.Lay] = Length.Zero, [ShaftPosition.Main] = main };
        if (gearbox.DropGears is { } drop)
        {
            ShaftPosition[] shafts = [.. gearbox.Parts.Where(p => p.Kind == PartKind.DropGear).Select(p => p.Shaft).OfType<ShaftPosition>().Distinct()];
            if (shafts.Length == 2 && shafts.SingleOrDefault(s => s is ShaftPosition.Lay or ShaftPosition.Main, (ShaftPosition)(-1)) is >= 0 and var known)
            {
                // Away from the shaft that is already there.
                heights[shafts.Single(s => s != known)] = known == ShaftPosition.Lay ? -drop.Cut.CentreDistance : main + drop.Cut.CentreDistance;
            }
        }

        // An input shaft whose own gear meshes with the layshaft lies in line with the mainshaft.
        if (!heights.ContainsKey(ShaftPosition.Input) && gearbox.Parts.Any(p => p is { Kind: PartKind.Gear, Shaft: ShaftPosition.Input }))
        {
            heights[ShaftPosition.Input] = main;
        }

        return heights;
    }

    /// <summary>The centre distances between shafts that are drawn.</summary>
    public static IEnumerable<(ShaftPosition First, ShaftPosition Second, Length Distance)> Dimensions(Gearbox gearbox, IReadOnlyCollection<ShaftPosition> used)
    {
        if (used.Contains(ShaftPosition.Main) && used.Contains(ShaftPosition.Lay))
        {
            yield return (ShaftPosition.Main, ShaftPosition.Lay, gearbox.MainGears!.CentreDistance);
        }

        ShaftPosition[] drop = [.. gearbox.Parts.Where(p => p.Kind == PartKind.DropGear).Select(p => p.Shaft).OfType<ShaftPosition>().Distinct()];
        if (gearbox.DropGears is { } gears && drop.Length == 2 && drop.All(used.Contains))
        {
            yield return (drop[0], drop[1], gears.Cut.CentreDistance);
        }
    }

    /// <summary>A shaft that fits inside the smallest gear, mm: seven tenths of its root circle (an outline, no figure).</summary>
    public static double ShaftDiameter(IEnumerable<StackPart> gears) => 2 * 0.7 * gears.Min(StackRadii.Root);

    /// <summary>An outer module that makes the crown wheel about twice as large as the centre distance, mm (an outline, no figure).</summary>
    public static double CrownModule(GearPair cut, Teeth teeth) => 1.95 * cut.CentreDistance.Millimeters / teeth.Driven;
}
