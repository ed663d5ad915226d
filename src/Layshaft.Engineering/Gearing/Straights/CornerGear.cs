using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>How a corner sits in the gears.</summary>
public enum CornerFit
{
    /// <summary>One gear serves from the corner's lowest speed to its exit.</summary>
    InBand,

    /// <summary>The gear that serves the exit is below the usable band at the corner's lowest speed.</summary>
    BelowBand,

    /// <summary>
    /// No one gear serves: the lower one reaches its limiter before the exit and the next is below the usable band at the
    /// lowest speed, so that a shift inside the corner would be needed.
    /// </summary>
    BetweenGears,
}

/// <summary>The gear for one corner.</summary>
/// <param name="Straight">The straight that the corner leads onto.</param>
/// <param name="Gear">
/// Gear number from 1: the one that the upshift plan asks for at the exit, or, when that is below the usable band at the
/// lowest speed, the lowest that comes to the exit within the limiter. The run down the straight begins in it.
/// </param>
/// <param name="MinimumSpeed">The corner's lowest speed.</param>
/// <param name="EngineSpeed">Engine speed in that gear at the lowest speed.</param>
/// <param name="EngineSpeedAtExit">Engine speed in that gear at the exit.</param>
/// <param name="Fit">How the corner sits in the gears.</param>
public sealed record CornerGear(
    string Straight,
    int Gear,
    Speed MinimumSpeed,
    RotationalSpeed EngineSpeed,
    RotationalSpeed EngineSpeedAtExit,
    CornerFit Fit)
{
    /// <summary>Whether the corner falls between gears or below the band.</summary>
    public bool Falls => Fit != CornerFit.InBand;

    internal static CornerGear For(CarModel car, GearLimits gears, Straight straight)
    {
        double exitMps = straight.StartSpeed.MetersPerSecond;
        double minimumMps = straight.CornerMinimum?.MetersPerSecond ?? exitMps;
        int gear = Choose(car, gears, minimumMps, exitMps);
        return new CornerGear(
            straight.Name,
            gear + 1,
            Speed.FromMetersPerSecond(minimumMps),
            RotationalSpeed.FromRevolutionsPerMinute(car.EngineRpm(minimumMps, gears.OverallRatio[gear])),
            RotationalSpeed.FromRevolutionsPerMinute(car.EngineRpm(exitMps, gears.OverallRatio[gear])),
            FitOf(car, gears, minimumMps, exitMps));
    }

    internal static CornerFit FitOf(CarModel car, GearLimits gears, double minimumMps, double exitMps)
    {
        int gear = Choose(car, gears, minimumMps, exitMps);
        if (exitMps <= 0 || car.EngineRpm(minimumMps, gears.OverallRatio[gear]) >= car.Car.Engine.UsableFromRpm)
        {
            return CornerFit.InBand; // a standing start is made with the clutch
        }

        bool lowerServesMinimum = gear > 0
            && car.EngineRpm(minimumMps, gears.OverallRatio[gear - 1]) >= car.Car.Engine.UsableFromRpm;
        return lowerServesMinimum ? CornerFit.BetweenGears : CornerFit.BelowBand;
    }

    /// <summary>
    /// The gear (from 0) in which the car comes out: the one that the upshift plan asks for at the exit, or, when that is below
    /// the usable band at the lowest speed, the lowest that comes to the exit within its limiter.
    /// </summary>
    internal static int Choose(CarModel car, GearLimits gears, double minimumMps, double exitMps)
    {
        int planned = gears.Best(exitMps);
        if (car.EngineRpm(minimumMps, gears.OverallRatio[planned]) >= car.Car.Engine.UsableFromRpm)
        {
            return planned;
        }

        int gear = 0;
        while (gear < gears.Count - 1 && gears.LimiterMps[gear] < exitMps)
        {
            gear++;
        }

        return gear;
    }
}
