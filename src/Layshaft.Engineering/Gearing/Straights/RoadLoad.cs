using System.Runtime.CompilerServices;

namespace Layshaft.Engineering.Gearing;

/// <summary>What holds the car back on one straight, and what its driven wheels can put down.</summary>
/// <remarks>
/// Air ½·ρ·c_d·A·(v + w)², rolling f₀·(1 + v/v₀)·(load on the wheels), slope m·g·sin θ.
/// </remarks>
internal readonly struct RoadLoad
{
    private readonly CarModel _car;
    private readonly double _windMps;
    private readonly double _weightN; // across the road
    private readonly double _slopeN;

    internal RoadLoad(CarModel car, double grade, double headWindMps)
    {
        _car = car;
        _windMps = headWindMps;
        double angle = Math.Atan(grade);
        _weightN = car.MassKg * StandardAtmosphere.GravityMps2 * Math.Cos(angle);
        _slopeN = car.MassKg * StandardAtmosphere.GravityMps2 * Math.Sin(angle);
    }

    /// <summary>Resistance in N; and the force in N that the driven wheels can put down at most.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double ResistanceN(double speedMps, out double gripN)
    {
        CarModel car = _car;
        double air = speedMps + _windMps;
        double downforce = car.DownforcePerMps2 * air * Math.Max(air, 0);
        double load = _weightN + downforce;
        double rolling = car.RollingCoefficient * (1 + (speedMps * car.RollingPerMps)) * load;
        double driven = (_weightN * car.DrivenShare) + (downforce * car.DownforceDrivenShare) - (rolling * car.TransferToDriven);
        gripN = Math.Min(car.GripScale * driven, car.Grip * load);
        return (car.DragPerMps2 * air * Math.Abs(air)) + rolling + _slopeN;
    }
}
