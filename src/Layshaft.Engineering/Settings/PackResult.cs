using Layshaft.Engineering.Measurement;
using UnitsNet.Units;

namespace Layshaft.Engineering.Settings;

/// <summary>Turns counts by thickness into packs with the value that they give and its uncertainty.</summary>
internal sealed class PackResult(ShimTask task, IReadOnlyList<ShimStock> stock, PackWindow window)
{
    /// <summary>A pack from the shelf.</summary>
    public ShimPack FromStock(int[] counts) => Of(counts, [], null);

    /// <summary>A pack whose counts are those from the shelf followed by those to buy, in the same order.</summary>
    public ShimPack WithPurchase(int[] counts) => Of(counts[..stock.Count], counts[stock.Count..], null);

    /// <summary>A pack too thick, brought to a wanted total by grinding its thickest shim; none where too little of it would be left.</summary>
    public ShimPack? WithGrinding(int[] counts, int wantedTenths)
    {
        var thickest = Array.FindIndex(counts, count => count > 0);
        var left = Tenths(thickest) - (Total(counts) - wantedTenths);

        // A shim ground to less than half was the wrong blank to start from.
        return 2 * left >= Tenths(thickest) ? Of(counts, [], (thickest, left)) : null;
    }

    private ShimPack Of(int[] shelf, int[] bought, (int Kind, int ToTenths)? grinding)
    {
        var all = shelf.Select((count, kind) => count + bought.ElementAtOrDefault(kind)).ToArray();
        var total = Total(all) - (grinding is { } ground ? Tenths(ground.Kind) - ground.ToTenths : 0);
        var change = task.Effect == ShimEffect.Reduces ? window.TrialTenths - total : total - window.TrialTenths;
        var result = Result(window.MeasuredTenths + change, all);
        var (low, high) = (task.Target.Low.Millimeters, task.Target.High.Millimeters);
        return new ShimPack(
            [.. Uses(all, bought, grinding)],
            TenthMicrometres.Of(total),
            result,
            UnitsNet.Length.FromMillimeters(Math.Abs((2 * total) - window.TwiceMiddleTenths) / 20_000.0),
            BandDecision.Of(result.Number.Value, result.Number.ExpandedUncertainty, low, high));
    }

    private IEnumerable<ShimUse> Uses(int[] all, int[] bought, (int Kind, int ToTenths)? grinding) =>
        Enumerable.Range(0, all.Length).Where(kind => all[kind] > 0).Select(kind => new ShimUse(
            stock[kind].Thickness,
            all[kind],
            bought.ElementAtOrDefault(kind),
            grinding is { } ground && ground.Kind == kind ? TenthMicrometres.Of(ground.ToTenths) : null));

    private MeasuredQuantity Result(int valueTenths, int[] counts)
    {
        // Shim tolerances are independent of each other: each shim adds its own square (JCGM 100:2008, 5.1.2).
        var measured = task.Trial.Measured.In(LengthUnit.Millimeter).Number;
        var shims = counts.SelectMany((count, kind) => Enumerable.Repeat(
            UncertaintyComponent.Rectangular("shim tolerance", stock[kind].Tolerance.Millimeters), count));
        var trial = UncertaintyComponent.Known("trial pack", task.Trial.PackUncertainty.Millimeters);
        var budget = measured.UncertaintyIsKnown ? measured.Budget.With([trial, .. shims]) : measured.Budget;
        return new MeasuredQuantity(new MeasuredValue(valueTenths / 10_000.0, budget, measured.Confidence), LengthUnit.Millimeter);
    }

    private int Total(int[] counts) => counts.Select((count, kind) => count * Tenths(kind)).Sum();

    private int Tenths(int kind) => TenthMicrometres.Nearest(stock[kind].Thickness, "shim thickness");
}
