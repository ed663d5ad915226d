namespace Layshaft.Engineering.Gearing;

/// <summary>A way to take a corner: one gear from its lowest speed to its exit, or a shift on the way.</summary>
/// <param name="Gear">The gear at the exit, from 0.</param>
/// <param name="Fit">How the corner sits in the gears then; <see cref="CornerFit.BetweenGears"/> is a shift into <paramref name="Gear"/>.</param>
internal readonly record struct CornerExit(int Gear, CornerFit Fit)
{
    internal bool HasShift => Fit == CornerFit.BetweenGears;

    /// <summary>
    /// The shortest gear that serves: that of the upshift plan at the exit; if it is below the usable band at the lowest speed,
    /// the longest in the band that comes to the exit within its limiter; if there is none, a shift on the way; if the engine
    /// turns below its band in every gear, the shortest that comes to the exit.
    /// </summary>
    internal static CornerExit Shortest(CarModel car, GearLimits gears, double minimumMps, double exitMps)
    {
        int planned = gears.Best(exitMps);
        if (exitMps <= 0)
        {
            return new CornerExit(0, CornerFit.InBand); // a standing start is made with the clutch
        }

        for (int gear = planned; gear >= 0 && gears.LimiterMps[gear] >= exitMps; gear--)
        {
            if (IsInBand(car, gears, gear, minimumMps))
            {
                return new CornerExit(gear, CornerFit.InBand);
            }
        }

        int lowest = 0;
        while (lowest < gears.Count - 1 && gears.LimiterMps[lowest] < exitMps)
        {
            lowest++;
        }

        bool lowerServes = lowest > 0 && IsInBand(car, gears, lowest - 1, minimumMps);
        return new CornerExit(lowest, lowerServes ? CornerFit.BetweenGears : CornerFit.BelowBand);
    }

    /// <summary>The next longer gear from the lowest speed on; null if there is none or it is below the band there.</summary>
    internal CornerExit? Longer(CarModel car, GearLimits gears, double minimumMps, double exitMps) =>
        Fit == CornerFit.InBand && exitMps > 0 && Gear < gears.Count - 1 && IsInBand(car, gears, Gear + 1, minimumMps)
            ? new CornerExit(Gear + 1, CornerFit.InBand)
            : null;

    private static bool IsInBand(CarModel car, GearLimits gears, int gear, double speedMps) =>
        car.EngineRpm(speedMps, gears.OverallRatio[gear]) >= car.Car.Engine.UsableFromRpm;
}
