using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>What to build in, or what is missing. Where neither purchase nor grinding helps, one shim between <see cref="From"/> and <see cref="To"/> does.</summary>
/// <param name="FromTenths">Least pack thickness that gives a value in the band, in tenths of a micrometre; may be below 0.</param>
/// <param name="ToTenths">Greatest such thickness, in tenths of a micrometre.</param>
/// <param name="Packs">Packs from stock: the best first, then up to two runners-up; empty where stock cannot do it.</param>
/// <param name="Purchase">Where stock cannot do it: the pack with the fewest shims to buy of a thickness that is listed.</param>
/// <param name="Grinding">Where stock cannot do it: the pack with one shim ground down, to the middle of the band.</param>
public sealed record ShimPlan(int FromTenths, int ToTenths, IReadOnlyList<ShimPack> Packs, ShimPack? Purchase, ShimPack? Grinding)
{
    /// <summary>Whether the shop's stock can do it.</summary>
    public bool StockSuffices => Packs.Count > 0;

    /// <summary>Whether even no shim at all is too much: something else in the assembly is wrong, or the trial was.</summary>
    public bool IsImpossible => ToTenths < 0;

    /// <summary>Least pack thickness that gives a value in the band.</summary>
    public Length From => TenthMicrometres.Of(FromTenths);

    /// <summary>Greatest pack thickness that gives a value in the band.</summary>
    public Length To => TenthMicrometres.Of(ToTenths);
}
