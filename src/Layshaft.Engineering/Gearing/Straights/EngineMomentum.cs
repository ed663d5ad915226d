namespace Layshaft.Engineering.Gearing;

/// <summary>
/// What the engine's momentum gives back to the car at an upshift: the engine slows to the next gear's speed while the tyres take all
/// that they can grip. With boundless grip it is the perfectly inelastic engagement of any textbook of mechanics.
/// </summary>
/// <remarks>
/// At the contact, with F the grip, F_e the engine's own force, R the resistance, M the car and m = I·i²·η/r² the engine: the car gains
/// (F − R)·t/M, the engine loses (F − F_e)·t/m, until both have one speed. The engine is taken to keep its speed while the drive is
/// interrupted.
/// </remarks>
/// <param name="TimeS">How long the tyres are at their grip, s.</param>
/// <param name="Mps2">The car's acceleration in that time.</param>
internal readonly record struct EngineMomentum(double TimeS, double Mps2)
{
    /// <summary>What an upshift gives back.</summary>
    /// <param name="car">The car.</param>
    /// <param name="gears">Its gears.</param>
    /// <param name="road">The straight.</param>
    /// <param name="from">The gear that was left, from 0.</param>
    /// <param name="beforeMps">Road speed when the drive was interrupted.</param>
    /// <param name="afterMps">Road speed when the next gear engages.</param>
    internal static EngineMomentum At(CarModel car, GearLimits gears, RoadLoad road, int from, double beforeMps, double afterMps)
    {
        double ratio = gears.OverallRatio[from + 1];
        double engineMps = car.SpeedMps(car.EngineRpm(beforeMps, gears.OverallRatio[from]), ratio);
        double radius = car.StaticRadiusM * (1 + (car.GrowthPerMps2 * afterMps * afterMps));
        double engineKg = car.EngineInertiaKgM2 * ratio * ratio * gears.Efficiency[from + 1] / (radius * radius);
        double carKg = car.MassKg + (car.WheelInertiaKgM2 / (radius * radius));
        double resistance = road.ResistanceN(afterMps, out double grip);
        double force = Math.Min(grip, new DriveLaw(car, road, ratio, gears.Efficiency[from + 1]).WheelForceN(afterMps));
        double gain = (grip - resistance) / carKg;
        return engineKg > 0 && gain > 0 && engineMps > afterMps
            ? new EngineMomentum(engineKg * (engineMps - afterMps) / (grip - force + (engineKg * gain)), gain)
            : default;
    }
}
