namespace Layshaft.Engineering.Gearing;

/// <summary>What can be said of the next longer gear out of a corner before it is tried.</summary>
internal enum LongerGearVerdict
{
    /// <summary>It is slower.</summary>
    Slower,

    /// <summary>It is quicker.</summary>
    Quicker,

    /// <summary>Only a run can say.</summary>
    Close,
}

/// <summary>Weighs the next longer gear out of a corner against the upshift that it saves.</summary>
internal static class LongerGear
{
    private const double LeastAcceleration = 0.05;
    private const double SureShare = 0.4;

    /// <summary>
    /// Both ways end in the longer gear at the same speed, at other times and places. From there on they are the same motion, so the
    /// gap at the brakes is the difference in time less that in place over the speed at the brakes. It changes sign at one such
    /// speed, which is compared with what the car reaches at most. The momentum that the engine gives back at the shift was brought out
    /// of the corner, where it cost the work: it does not speak for the shorter gear.
    /// </summary>
    /// <param name="car">The car.</param>
    /// <param name="gears">Its gears.</param>
    /// <param name="task">The straight.</param>
    /// <param name="gear">The shorter gear, from 0.</param>
    /// <param name="exitMps">Speed at the corner exit.</param>
    /// <param name="broughtS">Time that this momentum is worth to a run in the shorter gear.</param>
    internal static LongerGearVerdict Weigh(CarModel car, GearLimits gears, in StraightTask task, int gear, double exitMps, out double broughtS)
    {
        broughtS = 0;
        double shiftMps = gears.ShiftMps[gear];
        var shorter = new DriveLaw(car, task.Road, gears.OverallRatio[gear], gears.Efficiency[gear]);
        var longer = new DriveLaw(car, task.Road, gears.OverallRatio[gear + 1], gears.Efficiency[gear + 1]);
        double first = shorter.At(exitMps);
        double second = Math.Min(longer.At(exitMps), longer.At(shiftMps));
        if (first < LeastAcceleration || second < LeastAcceleration)
        {
            return LongerGearVerdict.Close;
        }

        // Simpson's rule over the speeds at which the longer gear pulls less.
        double middleMps = (exitMps + shiftMps) / 2;
        double atExit = (1 / longer.At(exitMps)) - (1 / first);
        double atMiddle = (1 / longer.At(middleMps)) - (1 / shorter.At(middleMps));
        double atShift = (1 / longer.At(shiftMps)) - (1 / shorter.At(shiftMps));
        double sixth = (shiftMps - exitMps) / 6;
        double lostS = sixth * (atExit + (4 * atMiddle) + atShift);
        double lostM = sixth * ((exitMps * atExit) + (4 * middleMps * atMiddle) + (shiftMps * atShift));
        double slowedMps = -car.ShiftTimeS * new CoastLaw(car, task.Road).At(shiftMps);
        double shiftS = car.ShiftTimeS + (slowedMps / longer.At(shiftMps));
        EngineMomentum momentum = EngineMomentum.At(car, gears, task.Road, gear, shiftMps, shiftMps);
        broughtS = momentum.TimeS * Math.Max(0, (momentum.Mps2 / longer.At(shiftMps)) - 1);
        if (lostS >= shiftS)
        {
            return LongerGearVerdict.Slower;
        }

        double evenMps = ((shiftS * shiftMps) - lostM) / (shiftS - lostS);
        MotionBounds bounds = task.Bounds;
        double mostMps = Math.Min(gears.LimiterMps[^1], Math.Sqrt(
            (bounds.FinishM + (bounds.EndSpeedSquare * bounds.PerTwiceBraking) + (exitMps * exitMps / (2 * first)))
            / (bounds.PerTwiceBraking + (1 / (2 * first)))));
        return mostMps < evenMps ? LongerGearVerdict.Slower
            : evenMps < shiftMps + (SureShare * (mostMps - shiftMps)) ? LongerGearVerdict.Quicker
            : LongerGearVerdict.Close;
    }
}
