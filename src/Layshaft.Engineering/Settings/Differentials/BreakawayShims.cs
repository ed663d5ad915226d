using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Settings.Differentials;

/// <summary>Shim packs behind the preload spring towards a breakaway torque, from a trial build.</summary>
/// <param name="Plan">The packs; each torque is expressed as the spring travel that gives it.</param>
/// <param name="Packs">The packs from stock with the torques they should give, best first.</param>
/// <param name="PerTenth">Change of the breakaway torque with 0.1 mm of shim, by plates and spring rate.</param>
public sealed record BreakawayShims(ShimPlan Plan, IReadOnlyList<BreakawayPack> Packs, Torque PerTenth)
{
    /// <summary>
    /// How well a calculated change is known, as a share of it (k = 2): friction and spring rate differ by about a fifth between
    /// sets of plates and oils (common practice, no source).
    /// </summary>
    public const double ChangeUncertainty = 0.2;

    /// <summary>Calculates the packs.</summary>
    /// <param name="pack">The plates.</param>
    /// <param name="springRate">Rate of the preload spring at its fitted height, more than 0.</param>
    /// <param name="trial">The trial assembly, with the breakaway torque measured on it.</param>
    /// <param name="low">Lowest breakaway torque allowed.</param>
    /// <param name="high">Highest breakaway torque allowed.</param>
    /// <param name="effect">What a thicker pack does to the torque.</param>
    /// <param name="stock">Shims at hand, those of the trial pack among them.</param>
    /// <exception cref="ArgumentException">The measured value is not a torque, the band is upside down, or the spring rate is not above 0.</exception>
    public static BreakawayShims For(
        PlatePack pack, ForcePerLength springRate, TrialBuild trial, Torque low, Torque high, ShimEffect effect, IReadOnlyList<ShimStock> stock)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(springRate.NewtonsPerMeter, nameof(springRate));
        var measured = trial.Measured.In(TorqueUnit.NewtonMeter).Number;
        var perMillimetre = pack.ChangeWith(Length.FromMillimeters(1), springRate).NewtonMeters;
        Length Travel(Torque torque) => Length.FromMillimeters(torque.NewtonMeters / perMillimetre);
        var travel = new MeasuredQuantity(
            measured with
            {
                Value = measured.Value / perMillimetre,
                Budget = measured.Budget.Scaled(1 / perMillimetre),
                StandardDeviation = measured.StandardDeviation / perMillimetre,
                Resolution = measured.Resolution / perMillimetre,
            },
            LengthUnit.Millimeter);
        var plan = ShimPacks.For(new ShimTask(trial with { Measured = travel }, new TargetBand(Travel(low), Travel(high)), effect, stock));
        return new BreakawayShims(
            plan,
            [.. plan.Packs.Select(p => PackOf(p, measured, perMillimetre, low, high)).OrderBy(p => p.Conformity)],
            pack.ChangeWith(Length.FromMillimeters(0.1), springRate));
    }

    private static BreakawayPack PackOf(ShimPack pack, MeasuredValue trial, double perMillimetre, Torque low, Torque high)
    {
        var expected = pack.Result.Number.Value * perMillimetre;
        var ofChange = ChangeUncertainty * (expected - trial.Value);
        var ofTrial = pack.Result.Number.ExpandedUncertainty * perMillimetre;
        var uncertainty = Math.Sqrt((ofChange * ofChange) + (ofTrial * ofTrial));
        return new BreakawayPack(
            pack,
            Torque.FromNewtonMeters(expected),
            Torque.FromNewtonMeters(uncertainty),
            BandDecision.Of(expected, uncertainty, low.NewtonMeters, high.NewtonMeters));
    }
}

/// <summary>A pack and the breakaway torque it should give.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Expected">Expected breakaway torque.</param>
/// <param name="Uncertainty">Its expanded uncertainty, from the trial, the shims and <see cref="BreakawayShims.ChangeUncertainty"/>.</param>
/// <param name="Conformity">Where that lies to the target.</param>
public sealed record BreakawayPack(ShimPack Pack, Torque Expected, Torque Uncertainty, Conformity Conformity);
