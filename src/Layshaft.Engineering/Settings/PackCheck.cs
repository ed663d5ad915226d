using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Settings;

/// <summary>
/// Whether a trial, the pack that was fitted after it and the value measured at the end agree: one of the three is wrong where
/// they differ by more than their uncertainty.
/// </summary>
/// <param name="Expected">The value that trial and packs let expect.</param>
/// <param name="Built">The value that was measured.</param>
/// <param name="Difference">Built less expected, with the uncertainty of both.</param>
public sealed record PackCheck(MeasuredQuantity Expected, MeasuredQuantity Built, MeasuredQuantity Difference)
{
    /// <summary>Whether the difference is greater than its expanded uncertainty. Where no uncertainty is known, nothing can be said.</summary>
    public bool Contradicts =>
        Difference.Number.UncertaintyIsKnown && Math.Abs(Difference.Number.Value) > Difference.Number.ExpandedUncertainty;

    /// <summary>
    /// Compares. Each micrometre of shim moves the value by one, as it does for end float and axial preload; shims that were in
    /// both packs are taken to be the same ones, so that only the others bring their tolerance (JCGM 100:2008, 5.1.2).
    /// </summary>
    /// <param name="trialPack">Shims of the trial.</param>
    /// <param name="trial">The value measured with them, a length.</param>
    /// <param name="pack">Shims that were fitted.</param>
    /// <param name="built">The value measured with those, a length.</param>
    /// <param name="effect">What a thicker pack does.</param>
    /// <param name="tolerance">±t of one shim, 0 or more.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">A measurement is no length.</exception>
    public static PackCheck Of(
        IReadOnlyList<Length> trialPack, MeasuredQuantity trial, IReadOnlyList<Length> pack, MeasuredQuantity built, ShimEffect effect, Length tolerance)
    {
        ArgumentNullException.ThrowIfNull(trialPack);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(built);
        var (before, after) = (trial.In(LengthUnit.Millimeter), built.In(LengthUnit.Millimeter));
        var thicker = (PackThickness.Of(pack) - PackThickness.Of(trialPack)).Millimeters;
        var shims = Enumerable.Repeat(UncertaintyComponent.Rectangular("shim tolerance", tolerance.Millimeters), Changed(trialPack, pack));
        var expected = before.Number with
        {
            Value = before.Number.Value + (effect == ShimEffect.Reduces ? -thicker : thicker),
            Budget = before.Number.UncertaintyIsKnown ? before.Number.Budget.With(shims) : before.Number.Budget,
        };
        var known = expected.UncertaintyIsKnown && after.Number.UncertaintyIsKnown;
        var difference = new MeasuredValue(
            after.Number.Value - expected.Value,
            known ? after.Number.Budget.With(expected.Budget.Components) : new UncertaintyBudget([]),
            after.Number.Confidence);
        return new PackCheck(
            new MeasuredQuantity(expected, LengthUnit.Millimeter), after, new MeasuredQuantity(difference, LengthUnit.Millimeter));
    }

    private static int Changed(IReadOnlyList<Length> one, IReadOnlyList<Length> other)
    {
        var rest = other.Select(s => TenthMicrometres.Nearest(s, "shim")).ToList();
        var gone = one.Count(s => !rest.Remove(TenthMicrometres.Nearest(s, "shim")));
        return gone + rest.Count;
    }
}
