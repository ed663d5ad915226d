namespace Layshaft.Engineering.Gearing;

/// <summary>The gears of one candidate as the runner needs them: overall ratio, shift speed and limiter speed of each.</summary>
internal sealed class GearLimits
{
    internal GearLimits(CarModel car, Drivetrain drivetrain, double[] shiftRpm)
    {
        Count = drivetrain.Gears.Count;
        OverallRatio = new double[Count];
        Efficiency = new double[Count];
        ShiftMps = new double[Count];
        LimiterMps = new double[Count];
        ClutchMps = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            OverallRatio[i] = drivetrain.OverallRatio(i + 1);
            Efficiency[i] = car.EfficiencyIn(drivetrain, i + 1);
            LimiterMps[i] = car.SpeedMps(car.Car.Engine.LimiterRpm, OverallRatio[i]);
            ShiftMps[i] = i < Count - 1 ? car.SpeedMps(shiftRpm[i], OverallRatio[i]) : LimiterMps[i];
            ClutchMps[i] = car.SpeedMps(car.Spline.FirstRpm, OverallRatio[i]);
        }

        LaunchMps = car.SpeedMps(car.Car.Engine.LaunchRpm, OverallRatio[0]);
        UsableMps = car.SpeedMps(car.Car.Engine.UsableFromRpm, OverallRatio[0]);
    }

    internal int Count { get; }

    internal double[] OverallRatio { get; }

    internal double[] Efficiency { get; }

    internal double[] ShiftMps { get; }

    internal double[] LimiterMps { get; }

    /// <summary>Below this speed the clutch slips: the engine would turn below its first table point.</summary>
    internal double[] ClutchMps { get; }

    /// <summary>Below this speed the clutch slips in first gear at a standing start.</summary>
    internal double LaunchMps { get; }

    /// <summary>Below this speed the clutch slips in first gear out of a corner: the engine would turn below its usable band.</summary>
    internal double UsableMps { get; }

    /// <summary>The lowest gear (from 0) not yet at its shift speed; the top one when all are.</summary>
    internal int Best(double speedMps)
    {
        int gear = 0;
        while (gear < Count - 1 && speedMps >= ShiftMps[gear])
        {
            gear++;
        }

        return gear;
    }

    internal static double[] ShiftRpm(Drivetrain drivetrain, EngineCurve engine) =>
        UpshiftPlan.For(drivetrain, engine).Select(shift => shift.At.RevolutionsPerMinute).ToArray();
}
