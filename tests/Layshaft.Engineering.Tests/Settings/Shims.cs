using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Settings;

/// <summary>Short ways to write shim tasks in tests: millimetres.</summary>
internal static class Shims
{
    public static ShimTask Task(
        double trialMm, double measuredMm, (double Low, double High) bandMm, ShimEffect effect, params (double Mm, int Count)[] stock)
    {
        var measured = MeasuredQuantity.From([Length.FromMillimeters(measuredMm)], Instrument.Unknown);
        return new ShimTask(
            new TrialBuild(Length.FromMillimeters(trialMm), Length.Zero, measured),
            new TargetBand(Length.FromMillimeters(bandMm.Low), Length.FromMillimeters(bandMm.High)),
            effect,
            [.. stock.Select(shim => new ShimStock(Length.FromMillimeters(shim.Mm), shim.Count, Length.Zero))]);
    }

    public static IEnumerable<(double Mm, int Count)> Of(ShimPack pack) =>
        pack.Shims.Select(shim => (Math.Round(shim.Thickness.Millimeters, 3), shim.Count));
}
