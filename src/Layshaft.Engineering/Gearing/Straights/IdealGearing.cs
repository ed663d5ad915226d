namespace Layshaft.Engineering.Gearing;

/// <summary>What an ideal takes over from the gearings that it is held against.</summary>
/// <param name="LeastRatio">The least overall ratio.</param>
/// <param name="GreatestRatio">The greatest overall ratio.</param>
/// <param name="Efficiency">The greatest efficiency of any gear.</param>
internal readonly record struct IdealGearing(double LeastRatio, double GreatestRatio, double Efficiency)
{
    /// <summary>The bounds of some gearings of one car.</summary>
    internal static IdealGearing Of(CarModel car, IEnumerable<Drivetrain> trains)
    {
        var (least, greatest, efficiency) = (double.MaxValue, 0.0, 0.0);
        foreach (Drivetrain train in trains)
        {
            for (int gear = 1; gear <= train.Gears.Count; gear++)
            {
                least = Math.Min(least, train.OverallRatio(gear));
                greatest = Math.Max(greatest, train.OverallRatio(gear));
                efficiency = Math.Max(efficiency, car.EfficiencyIn(train, gear));
            }
        }

        return new IdealGearing(least, greatest, efficiency);
    }
}
