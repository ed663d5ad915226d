namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Carries a motion forward with steps sized by their error, and ends exactly on the first bound that it meets: the last step
/// is taken again with the length that ends on the bound, so the answer does not hang on the size of the steps.
/// </summary>
internal static class MotionIntegrator
{
    private const double FirstStepS = 0.05;
    private const double LeastStepS = 1e-9;
    private const double MostGrowth = 5;
    private const double LeastGrowthError = 1e-4; // below it 0.9·error^−0.2 is above the greatest growth
    private const double PastTolerance = 1e-11; // metres or metres per second

    internal static MotionEnd Advance<TLaw>(in TLaw law, ref Motion motion, in MotionBounds bounds, MotionTrace? trace = null)
        where TLaw : struct, IAccelerationLaw
    {
        if (bounds.Past(motion.PositionM, motion.SpeedMps) >= 0)
        {
            return EndAt(bounds, motion);
        }

        double step = FirstStepS;
        double acceleration = law.At(motion.SpeedMps);
        while (true)
        {
            if (motion.SpeedMps <= 0 && acceleration <= 0)
            {
                return MotionEnd.Stopped;
            }

            double remaining = bounds.UntilTimeS - motion.TimeS;
            bool isLast = step >= remaining;
            double h = isLast ? remaining : step;
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
                EndOnBound(law, ref motion, acceleration, h, bounds);
                trace?.Add(motion);
                return EndAt(bounds, motion);
            }

            motion.TimeS = isLast ? bounds.UntilTimeS : motion.TimeS + h;
            motion.PositionM = position;
            motion.SpeedMps = speed;
            acceleration = next;
            trace?.Add(motion);
            if (isLast)
            {
                return MotionEnd.TimeUp;
            }

            step = h * scale;
        }
    }

    private static MotionEnd EndAt(in MotionBounds bounds, in Motion motion)
    {
        double finish = bounds.PastFinishM(motion.PositionM, motion.SpeedMps);
        double rise = motion.SpeedMps - bounds.RiseToMps;
        double fall = bounds.FallToMps - motion.SpeedMps;
        if (finish >= rise && finish >= fall)
        {
            return MotionEnd.Finished;
        }

        return rise >= fall ? MotionEnd.SpeedRisen : MotionEnd.SpeedFallen;
    }

    /// <summary>Finds the step that ends on the bound: false position with the Illinois rule, bisection when it is slow.</summary>
    private static void EndOnBound<TLaw>(in TLaw law, ref Motion motion, double acceleration, double stepS, in MotionBounds bounds)
        where TLaw : struct, IAccelerationLaw
    {
        Motion start = motion;
        (double low, double high) = (0, stepS);
        double lowPast = bounds.Past(start.PositionM, start.SpeedMps);
        double past = Take(law, ref motion, start, acceleration, high, bounds);
        double highPast = past;
        int side = 0;
        for (int i = 0; i < 80 && high - low > 1e-14 && Math.Abs(past) > PastTolerance; i++)
        {
            double middle = i < 40 ? high - (highPast * (high - low) / (highPast - lowPast)) : (low + high) / 2;
            if (!(middle > low && middle < high))
            {
                middle = (low + high) / 2;
            }

            past = Take(law, ref motion, start, acceleration, middle, bounds);
            if (past >= 0)
            {
                (high, highPast) = (middle, past);
                lowPast = side > 0 ? lowPast / 2 : lowPast;
                side = 1;
            }
            else
            {
                (low, lowPast) = (middle, past);
                highPast = side < 0 ? highPast / 2 : highPast;
                side = -1;
            }
        }
    }

    private static double Take<TLaw>(
        in TLaw law, ref Motion motion, in Motion start, double acceleration, double stepS, in MotionBounds bounds)
        where TLaw : struct, IAccelerationLaw
    {
        DormandPrince.Step(
            law, start.PositionM, start.SpeedMps, acceleration, stepS, out double position, out double speed, out _);
        motion.TimeS = start.TimeS + stepS;
        motion.PositionM = position;
        motion.SpeedMps = speed;
        return bounds.Past(position, speed);
    }
}
