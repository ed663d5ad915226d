using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>What a tooth sum needs to fit a centre distance without backlash.</summary>
/// <param name="ToothSum">z₁ + z₂.</param>
/// <param name="WorkingPressureAngle">Pressure angle at which the pair runs.</param>
/// <param name="ShiftSum">Sum of the profile shift coefficients, x₁ + x₂.</param>
/// <param name="CentreDistanceFactor">y = (a - a₀)/m: how far the axes stand from the unshifted distance.</param>
public sealed record ToothSumFit(int ToothSum, Angle WorkingPressureAngle, double ShiftSum, double CentreDistanceFactor);
