using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>How a corner sits in the gears.</summary>
public enum CornerFit
{
    /// <summary>One gear serves from the corner's lowest speed to its exit.</summary>
    InBand,

    /// <summary>
    /// The engine turns below its usable band at the corner's lowest speed, in any gear that comes to the exit. In first gear the
    /// clutch slips until the band is reached.
    /// </summary>
    BelowBand,

    /// <summary>
    /// No one gear serves: the lower one reaches its limiter before the exit and the next is below the usable band at the
    /// lowest speed. The shift inside the corner costs its time.
    /// </summary>
    BetweenGears,
}

/// <summary>The gear for one corner: of the gears in which the engine pulls from the lowest speed to the exit, the quickest.</summary>
/// <param name="Straight">The straight that the corner leads onto.</param>
/// <param name="Gear">Gear number at the lowest speed, from 1.</param>
/// <param name="ExitGear">Gear number at the exit, in which the straight begins: the same, or one higher after a shift in the corner.</param>
/// <param name="MinimumSpeed">The corner's lowest speed.</param>
/// <param name="EngineSpeed">Engine speed at the lowest speed.</param>
/// <param name="EngineSpeedAtExit">Engine speed at the exit, in <paramref name="ExitGear"/>.</param>
/// <param name="Fit">How the corner sits in the gears.</param>
public sealed record CornerGear(
    string Straight,
    int Gear,
    int ExitGear,
    Speed MinimumSpeed,
    RotationalSpeed EngineSpeed,
    RotationalSpeed EngineSpeedAtExit,
    CornerFit Fit)
{
    /// <summary>Whether the corner falls between gears or below the band.</summary>
    public bool Falls => Fit != CornerFit.InBand;

    internal static CornerGear For(CarModel car, GearLimits gears, Straight straight, in StraightFigures figures)
    {
        double exitMps = Math.Min(straight.StartSpeed.MetersPerSecond, gears.LimiterMps[^1]);
        double minimumMps = Math.Min(straight.CornerMinimum?.MetersPerSecond ?? exitMps, exitMps);
        int gear = figures.Fit == CornerFit.BetweenGears ? figures.FirstGear - 1 : figures.FirstGear;
        return new CornerGear(
            straight.Name,
            gear + 1,
            figures.FirstGear + 1,
            Speed.FromMetersPerSecond(minimumMps),
            RotationalSpeed.FromRevolutionsPerMinute(car.EngineRpm(minimumMps, gears.OverallRatio[gear])),
            RotationalSpeed.FromRevolutionsPerMinute(car.EngineRpm(exitMps, gears.OverallRatio[figures.FirstGear])),
            figures.Fit);
    }
}
