using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Settings.Differentials;

/// <summary>The breakaway torque measured after a change of shims against the one that trial, plates and spring lead to.</summary>
/// <param name="Expected">Expected torque.</param>
/// <param name="Built">Measured torque.</param>
/// <param name="Uncertainty">Expanded uncertainty of the difference, that of the calculated change included.</param>
public sealed record BreakawayCheck(Torque Expected, Torque Built, Torque Uncertainty)
{
    /// <summary>Whether they contradict each other.</summary>
    public bool Contradicts => Math.Abs((Built - Expected).NewtonMeters) > Uncertainty.NewtonMeters;

    /// <summary>Compares the two.</summary>
    /// <param name="pack">The plates.</param>
    /// <param name="springRate">Rate of the preload spring.</param>
    /// <param name="trial">The trial assembly, with the torque measured on it.</param>
    /// <param name="fitted">Thickness of the fitted pack.</param>
    /// <param name="built">Torque measured with it.</param>
    /// <param name="effect">What a thicker pack does to the torque.</param>
    public static BreakawayCheck Of(PlatePack pack, ForcePerLength springRate, TrialBuild trial, Length fitted, MeasuredQuantity built, ShimEffect effect)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(built);
        var (before, after) = (trial.Measured.In(TorqueUnit.NewtonMeter).Number, built.In(TorqueUnit.NewtonMeter).Number);
        var added = effect == ShimEffect.Increases ? fitted - trial.PackThickness : trial.PackThickness - fitted;
        var change = pack.ChangeWith(added, springRate).NewtonMeters;
        var shims = 2 * pack.ChangeWith(trial.PackUncertainty, springRate).NewtonMeters;
        var parts = new[] { BreakawayShims.ChangeUncertainty * change, shims, before.ExpandedUncertainty, after.ExpandedUncertainty };
        return new BreakawayCheck(
            Torque.FromNewtonMeters(before.Value + change),
            Torque.FromNewtonMeters(after.Value),
            Torque.FromNewtonMeters(Math.Sqrt(parts.Sum(u => u * u))));
    }
}
