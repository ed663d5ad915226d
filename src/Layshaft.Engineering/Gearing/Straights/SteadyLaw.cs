namespace Layshaft.Engineering.Gearing;

/// <summary>One acceleration at every speed.</summary>
internal readonly struct SteadyLaw(double mps2) : IAccelerationLaw
{
    public double At(double speedMps) => mps2;

    public double? NextBend(double speedMps, bool isRising) => null;
}
