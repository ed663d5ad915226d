using Layshaft.Engineering.Gearing;

namespace Layshaft.Engineering.Traces;

/// <summary>Whether a trace was made with the drop pair and final drive that should be in the car. Immutable.</summary>
/// <remarks>
/// Engine over road speed is the gears over the rolling circumference, so other gears and another tyre look alike. The
/// circumference is taken as known to 2 % when it was measured, 4 % by the size code, the recorded speed to 2 %, and the mean
/// slip as 0 to 5 % (common practice, no source).
/// </remarks>
public sealed class FittedGearCheck
{
    private const double MostSlip = 0.05;
    private const double UsualSlip = 0.015;

    private FittedGearCheck(bool isAsExpected, IReadOnlyList<GearSet> others) => (IsAsExpected, Others) = (isAsExpected, others);

    /// <summary>Whether what should be fitted explains the trace.</summary>
    public bool IsAsExpected { get; }

    /// <summary>The stocked sets that explain it when the expected does not, those with the expected final drive first, since drop gears are changed more often.</summary>
    public IReadOnlyList<GearSet> Others { get; }

    /// <summary>Checks.</summary>
    /// <param name="fit">How the trace fits the gears, with what should be in the car.</param>
    /// <param name="car">The car with what should be in it.</param>
    /// <param name="stock">What else could be fitted.</param>
    public static FittedGearCheck Of(GearFit fit, Car car, GearingStock stock)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(stock);
        double tyre = car.Tyre.Basis == CircumferenceBasis.Measured ? 0.02 : 0.04;
        double either = Math.Sqrt((tyre * tyre) + (0.02 * 0.02));
        double seen = Math.Log(fit.FactorOverExpected);
        double expected = Factor(car.Drivetrain.DropPair, car.Drivetrain.FinalDrive);
        bool Explains(double off) => off >= -either && off <= either + MostSlip;
        if (Explains(seen))
        {
            return new FittedGearCheck(true, []);
        }

        return new FittedGearCheck(
            false,
            [
                .. stock.DropPairs.SelectMany(pair => stock.FinalDrives.Select(final => new GearSet(pair, final)))
                    .Select(set => (Set: set, Off: seen + expected - Factor(set.DropPair, set.FinalDrive)))
                    .Where(set => Explains(set.Off))
                    .OrderBy(set => set.Set.FinalDrive != car.Drivetrain.FinalDrive)
                    .ThenBy(set => Math.Abs(set.Off - UsualSlip))
                    .Select(set => set.Set),
            ]);
    }

    private static double Factor(ToothPair? pair, FinalDrive final) => Math.Log((pair?.Ratio ?? 1) * final.Ratio);
}
