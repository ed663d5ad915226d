namespace Layshaft.Engineering.Gearing;

/// <summary>The day: air, wind, tow, and the standard to which the torque curve was corrected. Immutable.</summary>
/// <param name="Air">The air.</param>
/// <param name="CurveStandard">
/// The standard to which the torque curve was corrected: the engine's torque on the day is the curve's divided by its factor.
/// </param>
/// <param name="Wind">The wind; null for calm.</param>
/// <param name="DragFactor">By what the air drag is multiplied: below 1 in a tow; 0.2 to 1.5.</param>
public sealed record Conditions(
    AirState Air, PowerStandard CurveStandard = PowerStandard.None, Wind? Wind = null, double DragFactor = 1)
{
    /// <summary>By what the curve's torque is multiplied in this air.</summary>
    public double TorqueFactor => 1 / PowerCorrection.Factor(CurveStandard, Air);
}
