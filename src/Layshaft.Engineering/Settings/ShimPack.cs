using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>A pack and the value that it is expected to give.</summary>
/// <param name="Shims">Thickness and how many of it, thickest first.</param>
/// <param name="Thickness">Total thickness.</param>
/// <param name="Result">The value expected, with its uncertainty from measurement, trial pack and shim tolerances.</param>
/// <param name="OffMiddle">Distance of that value from the middle of the band, 0 or more.</param>
/// <param name="Conformity">Whether the uncertainty leaves it inside the band: one too close to call has to be measured after the build.</param>
public sealed record ShimPack(
    IReadOnlyList<ShimUse> Shims, Length Thickness, MeasuredQuantity Result, Length OffMiddle, Conformity Conformity)
{
    /// <summary>How many shims the pack has.</summary>
    public int ShimCount => Shims.Sum(shim => shim.Count);
}
