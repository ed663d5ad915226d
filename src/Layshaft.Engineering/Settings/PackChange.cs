using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>What a change of a shim pack between two builds says.</summary>
public enum PackVerdict
{
    /// <summary>The pack is the same.</summary>
    Same,

    /// <summary>No more than measuring, or the choice of shims, may make.</summary>
    NotClear,

    /// <summary>The space has grown.</summary>
    Grown,

    /// <summary>The space has shrunk.</summary>
    Shrunk,
}

/// <summary>A pack as built, with what it left.</summary>
/// <param name="Pack">Thickness of the shims.</param>
/// <param name="Left">The float, or another length, that was measured with them; null when none was.</param>
public sealed record BuiltPack(Length Pack, MeasuredQuantity? Left);

/// <summary>
/// How a pack changed between two builds. The pack alone tells little: a thinner one may have left more float. The space
/// between the seats is pack plus float where more shim leaves less (pack minus it where more shim leaves more), and its
/// change is held against the expanded uncertainty of a difference, √(U₁² + U₂²) (JCGM 100:2008, 5.1.2). Where the floats
/// were not measured with known uncertainty, a change of no more than one step of the shims in stock is not called a change.
/// </summary>
/// <param name="Thickness">Change of the pack; positive when it is thicker.</param>
/// <param name="Space">Change of the space; null when the floats cannot be compared.</param>
/// <param name="Uncertainty">Expanded uncertainty of that change; null likewise.</param>
/// <param name="Verdict">What it says.</param>
public sealed record PackChange(Length Thickness, Length? Space, Length? Uncertainty, PackVerdict Verdict)
{
    // Packs are sums of decimal thicknesses: what is left below this is rounding.
    private static readonly Length s_rounding = Length.FromMicrometers(0.5);

    /// <summary>Compares two builds.</summary>
    /// <param name="first">The earlier build.</param>
    /// <param name="last">The later build.</param>
    /// <param name="effect">What more shim does to the length that is left.</param>
    /// <param name="step">One step of the shims in stock; zero when it is not known.</param>
    public static PackChange Between(BuiltPack first, BuiltPack last, ShimEffect effect, Length step)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(last);
        var thickness = last.Pack - first.Pack;
        if (Known(first.Left) is not { } before || Known(last.Left) is not { } after)
        {
            return new PackChange(thickness, null, null, Judge(thickness, thickness, step + s_rounding));
        }

        var left = after.Value - before.Value;
        var space = effect == ShimEffect.Reduces ? thickness + left : thickness - left;
        var uncertainty = Length.FromMeters(Math.Sqrt((before.Expanded.Meters * before.Expanded.Meters) + (after.Expanded.Meters * after.Expanded.Meters)));
        return new PackChange(thickness, space, uncertainty, Judge(thickness, space, uncertainty));
    }

    private static PackVerdict Judge(Length thickness, Length change, Length allowed) =>
        Abs(thickness) < s_rounding ? PackVerdict.Same
        : Abs(change) <= allowed ? PackVerdict.NotClear
        : change > Length.Zero ? PackVerdict.Grown : PackVerdict.Shrunk;

    private static Length Abs(Length length) => Length.FromMeters(Math.Abs(length.Meters));

    private static (Length Value, Length Expanded)? Known(MeasuredQuantity? measured) =>
        measured is { Number.UncertaintyIsKnown: true, Value: Length value, ExpandedUncertainty: Length expanded } ? (value, expanded) : null;
}
