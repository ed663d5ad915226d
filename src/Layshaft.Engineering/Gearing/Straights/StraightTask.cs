namespace Layshaft.Engineering.Gearing;

/// <summary>One straight in SI.</summary>
internal readonly struct StraightTask
{
    internal StraightTask(Straight straight, CarModel car)
    {
        LengthM = straight.Length.Meters;
        StartMps = straight.StartSpeed.MetersPerSecond;
        CornerMps = straight.CornerMinimum?.MetersPerSecond ?? StartMps;
        EndMps = straight.EndSpeed.MetersPerSecond;
        BrakingMps2 = straight.Braking.MetersPerSecondSquared;
        BrakingPointM = straight.BrakingDistance is { } distance ? LengthM - distance.Meters : null;
        UnitsNet.Speed wind = car.Car.Conditions.Wind?.Against(straight.Heading) ?? default;
        Road = new RoadLoad(car, straight.Grade, wind.MetersPerSecond + car.Car.AddedHeadWind.MetersPerSecond);
    }

    internal double LengthM { get; }

    internal double StartMps { get; }

    /// <summary>Lowest speed in the corner before the straight.</summary>
    internal double CornerMps { get; }

    internal double EndMps { get; }

    internal double BrakingMps2 { get; }

    internal double? BrakingPointM { get; }

    internal RoadLoad Road { get; }

    internal MotionBounds Bounds => new()
    {
        UntilTimeS = StraightRunner.LongestS,
        RiseToMps = double.PositiveInfinity,
        FallToMps = double.NegativeInfinity,
        FinishM = BrakingPointM ?? LengthM,
        EndSpeedSquare = EndMps * EndMps,
        PerTwiceBraking = BrakingPointM is null ? 1 / (2 * BrakingMps2) : 0,
    };

    /// <summary>Where braking must begin from a steady speed.</summary>
    internal double BrakingFromM(double speedMps)
    {
        MotionBounds bounds = Bounds;
        return -bounds.PastFinishM(0, speedMps);
    }
}
