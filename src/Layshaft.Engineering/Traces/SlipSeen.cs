namespace Layshaft.Engineering.Traces;

/// <summary>Slip of the driven tyres at full throttle against coasting in the same gear.</summary>
/// <param name="Slip">As a fraction of the wheel's speed.</param>
/// <param name="Uncertainty">Its expanded uncertainty (k = 2).</param>
public sealed record SlipSeen(double Slip, double Uncertainty)
{
    // From driven wheels it cannot be seen, and from wheels nobody names it is not known what is seen.
    internal static SlipSeen? Of((double Slip, double Uncertainty)? found, SpeedSource source) =>
        found is { } slip && source is SpeedSource.FreeWheels or SpeedSource.Satellite
            ? new SlipSeen(slip.Slip, slip.Uncertainty)
            : null;
}
