namespace Layshaft.Engineering.Gearing;

/// <summary>No drive, as during a shift: only the wheels turn with the car.</summary>
internal readonly struct CoastLaw(CarModel car, RoadLoad road) : IAccelerationLaw
{
    public double At(double speedMps)
    {
        double speed = Math.Max(speedMps, 0);
        double radius = car.StaticRadiusM * (1 + (car.GrowthPerMps2 * speed * speed));
        return -road.ResistanceN(speed, out _) / (car.MassKg + (car.WheelInertiaKgM2 / (radius * radius)));
    }

    public double At(double speedMps, out bool isGripped)
    {
        isGripped = false;
        return At(speedMps);
    }

    public double? NextBend(double speedMps, bool isRising) => null;
}
