using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>
/// Quick-change gears share one pair of shafts: every pair of tooth numbers has to run on the same centre distance, and
/// profile shift makes up what the tooth sum does not give (ISO 21771:2007, clause 5).
/// </summary>
public sealed record FixedCentreDistance
{
    private const double ShiftStep = 0.05;

    /// <summary>Describes the shafts and the gears' system.</summary>
    /// <param name="centreDistance">Distance of the shafts, above 0.</param>
    /// <param name="module">Module of all pairs, above 0.</param>
    /// <param name="pressureAngle">Pressure angle of the basic rack, 10° to 35°.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public FixedCentreDistance(Length centreDistance, Length module, Angle pressureAngle)
    {
        if (!(centreDistance > Length.Zero) || !(module > Length.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(centreDistance), centreDistance, "centre distance and module are above 0");
        }

        if (!(pressureAngle.Degrees is >= 10 and <= 35))
        {
            throw new ArgumentOutOfRangeException(nameof(pressureAngle), pressureAngle, "a pressure angle lies between 10° and 35°");
        }

        (CentreDistance, Module, PressureAngle) = (centreDistance, module, pressureAngle);
    }

    /// <summary>Distance of the shafts a.</summary>
    public Length CentreDistance { get; }

    /// <summary>Module m.</summary>
    public Length Module { get; }

    /// <summary>Pressure angle α of the basic rack.</summary>
    public Angle PressureAngle { get; }

    /// <summary>What a tooth sum needs: x₁ + x₂ = (z₁ + z₂)(inv α_w - inv α)/(2 tan α).</summary>
    /// <param name="toothSum">z₁ + z₂, 10 or more.</param>
    /// <returns>The need, or <see langword="null"/> for so many teeth that the base circles would overlap.</returns>
    public ToothSumFit? ForSum(int toothSum)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(toothSum, 10);
        var alphaRad = PressureAngle.Radians;
        var reference = toothSum * Module / 2;
        var cosine = reference * Math.Cos(alphaRad) / CentreDistance;
        if (cosine >= 1)
        {
            return null;
        }

        var workingRad = Math.Acos(cosine);
        var shiftSum = toothSum * (Involute.Function(workingRad) - Involute.Function(alphaRad)) / (2 * Math.Tan(alphaRad));
        return new ToothSumFit(toothSum, Angle.FromRadians(workingRad), shiftSum, (CentreDistance - reference) / Module);
    }

    /// <summary>All tooth sums whose shift sum lies within limits, in order.</summary>
    /// <param name="limits">Limits; each gear may take the greatest shift, so a sum may need twice that.</param>
    /// <returns>The fits, fewest teeth first.</returns>
    public IReadOnlyList<ToothSumFit> ToothSums(FitLimits? limits = null)
    {
        var greatest = 2 * (limits ?? new FitLimits()).GreatestShift;
        var middle = (int)Math.Round(2 * CentreDistance / Module);
        var reach = (int)Math.Ceiling(greatest) + 10;
        return [.. Enumerable.Range(middle - reach, (2 * reach) + 1)
            .Where(sum => sum >= 10)
            .Select(ForSum)
            .OfType<ToothSumFit>()
            .Where(fit => Math.Abs(fit.ShiftSum) <= greatest)];
    }

    /// <summary>
    /// Fits one pair. The shift sum is shared equally where that works; otherwise in the nearest share, moved in steps of 0.05
    /// (to the smaller gear first), that meets every limit. Where none does, the equal share is given with what stands against it.
    /// </summary>
    /// <param name="driverTeeth">Teeth of the driver, 5 or more.</param>
    /// <param name="drivenTeeth">Teeth of the driven gear, 5 or more.</param>
    /// <param name="limits">What counts as unreasonable; common practice where nothing is given.</param>
    /// <returns>The fit, or <see langword="null"/> for so many teeth that the base circles would overlap.</returns>
    public DropPairFit? Fit(int driverTeeth, int drivenTeeth, FitLimits? limits = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(driverTeeth, 5);
        ArgumentOutOfRangeException.ThrowIfLessThan(drivenTeeth, 5);
        limits ??= new FitLimits();
        if (ForSum(driverTeeth + drivenTeeth) is not { } sum)
        {
            return null;
        }

        if (Math.Abs(sum.ShiftSum) > 2 * limits.GreatestShift)
        {
            return new DropPairFit(sum, null, [FitTrouble.ExtremeShift]);
        }

        var towardsDriver = driverTeeth <= drivenTeeth ? 1 : -1;
        DropPairFit? equal = null;
        for (var step = 0; step * ShiftStep <= 2 * limits.GreatestShift; step++)
        {
            foreach (var side in step == 0 ? [1] : new[] { towardsDriver, -towardsDriver })
            {
                var fit = Shared(sum, driverTeeth, drivenTeeth, (sum.ShiftSum / 2) + (side * step * ShiftStep), limits);
                if (fit.IsReasonable)
                {
                    return fit;
                }

                equal ??= fit;
            }
        }

        return equal;
    }

    private DropPairFit Shared(ToothSumFit sum, int driverTeeth, int drivenTeeth, double driverShift, FitLimits limits)
    {
        var drivenShift = sum.ShiftSum - driverShift;
        if (Math.Abs(driverShift) > limits.GreatestShift + 1e-9 || Math.Abs(drivenShift) > limits.GreatestShift + 1e-9)
        {
            return new DropPairFit(sum, null, [FitTrouble.ExtremeShift]);
        }

        var driver = new SpurGear(driverTeeth, Module, PressureAngle, driverShift);
        var driven = new SpurGear(drivenTeeth, Module, PressureAngle, drivenShift);
        var pair = new GearPair(driver, driven, CentreDistance).WithFullTipClearance();
        return pair.Driver.TipDiameter <= driver.BaseDiameter || pair.Driven.TipDiameter <= driven.BaseDiameter
            ? new DropPairFit(sum, null, [FitTrouble.ExtremeShift])
            : new DropPairFit(sum, pair, [.. Troubles(pair, limits)]);
    }

    private static IEnumerable<FitTrouble> Troubles(GearPair pair, FitLimits limits)
    {
        if (pair.Driver.IsUndercut || pair.Driven.IsUndercut)
        {
            yield return FitTrouble.Undercut;
        }

        var leastTip = limits.LeastTipThickness * pair.Driver.Module;
        if (pair.Driver.TipThickness < leastTip || pair.Driven.TipThickness < leastTip)
        {
            yield return FitTrouble.PointedTeeth;
        }

        if (pair.ContactRatio < limits.LeastContactRatio)
        {
            yield return FitTrouble.LowContactRatio;
        }

        if (pair.Interferes)
        {
            yield return FitTrouble.Interference;
        }
    }
}
