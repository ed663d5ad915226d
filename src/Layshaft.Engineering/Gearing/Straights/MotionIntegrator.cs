namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Carries a motion forward with steps sized by their error, and ends exactly on the first bound that it meets: the last step
/// is taken again with the length that ends on the bound, so the answer does not hang on the size of the steps.
/// </summary>
internal static class MotionIntegrator
{
    private const double FirstStepS = 0.05;
    private const double LongFirstStepS = 0.3; // a shift is one step
    private const double LeastStepS = 1e-9;
    private const double MostGrowth = 5;
    private const double LeastGrowthError = 1e-4; // below it 0.9·error^−0.2 is above the greatest growth
    private const double PastTolerance = 1e-11; // metres or metres per second

    internal static MotionEnd Advance<TLaw>(in TLaw law, ref Motion motion, in MotionBounds bounds, MotionTrace? trace = null)
        where TLaw : struct, IAccelerationLaw
    {
        if (bounds.Past(motion.PositionM, motion.SpeedMps) >= 0)
        {
            return bounds.EndAt(motion.PositionM, motion.SpeedMps, out _);
        }

        double acceleration = law.At(motion.SpeedMps, out bool isGripped);
        double step = FirstStepS;
        if (trace is null && bounds.UntilTimeS < StraightRunner.LongestS)
        {
            step = LongFirstStepS;
        }
        else if (trace is null && SpeedIntegrator.Advance(law, ref motion, ref acceleration, isGripped, bounds) is { } met)
        {
            return met;
        }

        double jerk = 0;
        while (true)
        {
            if (motion.SpeedMps <= 0 && acceleration <= 0)
            {
                return MotionEnd.Stopped;
            }

            double remaining = bounds.UntilTimeS - motion.TimeS;
            double h = Math.Min(step, ToTheNextBend(law, motion.SpeedMps, acceleration, jerk));
            bool isLast = h >= remaining;
            h = isLast ? remaining : h;
            double error = DormandPrince.Step(
                law, motion.PositionM, motion.SpeedMps, acceleration, h, out double position, out double speed, out double next);
            double scale = error < LeastGrowthError ? MostGrowth : Math.Clamp(0.9 * Math.Pow(error, -0.2), 0.2, MostGrowth);
            if (error > 1 && h > LeastStepS)
            {
                step = h * Math.Min(scale, 0.9);
                continue;
            }

            if (bounds.Past(position, speed) >= 0)
            {
                var beyond = new Motion { TimeS = motion.TimeS + h, PositionM = position, SpeedMps = speed };
                EndOnBound(law, ref motion, acceleration, h, beyond, next, bounds);
                trace?.Add(motion);
                return bounds.EndAt(motion.PositionM, motion.SpeedMps, out _);
            }

            motion.TimeS = isLast ? bounds.UntilTimeS : motion.TimeS + h;
            motion.PositionM = position;
            motion.SpeedMps = speed;
            jerk = (next - acceleration) / h;
            acceleration = next;
            trace?.Add(motion);
            if (isLast)
            {
                return MotionEnd.TimeUp;
            }

            step = h < step ? Math.Max(step, h * scale) : h * scale;
        }
    }

    // A step over a bend is refused until it is tiny, so one is made to end there. Where it ends need not be exact: the error
    // is looked at as ever.
    private static double ToTheNextBend<TLaw>(in TLaw law, double speed, double acceleration, double jerk)
        where TLaw : struct, IAccelerationLaw
    {
        if (law.NextBend(speed, acceleration > 0) is not { } bend)
        {
            return double.PositiveInfinity;
        }

        double way = bend - speed;
        double root = Math.Sqrt((acceleration * acceleration) + (2 * jerk * way));
        double time = 2 * way / (acceleration > 0 ? acceleration + root : acceleration - root);
        return time > LeastStepS ? time : double.PositiveInfinity;
    }

    /// <summary>Finds the step that ends on the bound: by the rate at which it is passed, bisection when that leads astray.</summary>
    private static void EndOnBound<TLaw>(
        in TLaw law, ref Motion motion, double acceleration, double stepS, in Motion beyond, double accelerationBeyond, in MotionBounds bounds)
        where TLaw : struct, IAccelerationLaw
    {
        Motion start = motion;
        double past = bounds.Past(beyond.PositionM, beyond.SpeedMps, accelerationBeyond, out double rate);
        double startPast = bounds.Past(start.PositionM, start.SpeedMps, acceleration, out double startRate);
        (double low, double high) = (0, stepS);
        double next = stepS * CubicRoot(startPast, startRate * stepS, past, rate * stepS);
        motion = beyond;
        for (int i = 0; i < 80 && high - low > 1e-14 && Math.Abs(past) > PastTolerance; i++)
        {
            double taken = i < 40 && next > low && next < high ? next : (low + high) / 2;
            DormandPrince.Step(
                law, start.PositionM, start.SpeedMps, acceleration, taken, out motion.PositionM, out motion.SpeedMps, out double there);
            motion.TimeS = start.TimeS + taken;
            past = bounds.Past(motion.PositionM, motion.SpeedMps, there, out rate);
            (low, high) = past >= 0 ? (low, taken) : (taken, high);
            next = taken - (past / rate);
        }
    }

    // About where, from 0 to 1, the cubic with these values and slopes at both ends is nothing.
    internal static double CubicRoot(double first, double firstSlope, double last, double lastSlope)
    {
        double cubed = firstSlope + lastSlope + (2 * (first - last));
        double squared = (3 * (last - first)) - (2 * firstSlope) - lastSlope;
        double at = first / (first - last);
        for (int i = 0; i < 4; i++)
        {
            double value = first + (at * (firstSlope + (at * (squared + (at * cubed)))));
            at -= value / (firstSlope + (at * ((2 * squared) + (3 * at * cubed))));
        }

        return at;
    }
}
