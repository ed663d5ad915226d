namespace Layshaft.Engineering.Gearing;

/// <summary>One acceleration at every speed.</summary>
internal readonly struct SteadyLaw(double mps2) : IAccelerationLaw
{
    public double At(double speedMps) => mps2;

    public double At(double speedMps, out bool isGripped)
    {
        isGripped = false;
        return At(speedMps);
    }

    public double? NextBend(double speedMps, bool isRising) => null;
}
