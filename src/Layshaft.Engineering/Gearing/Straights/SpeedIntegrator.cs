namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Carries a motion whose speed rises from speed to speed instead of from time to time: t = ∫ dv/a and x = ∫ v·dv/a, by the Lobatto rule
/// with five points (Abramowitz and Stegun, 25.4.32). A bound in speed is met without a search, and each stretch between two bends costs
/// four accelerations.
/// </summary>
internal static class SpeedIntegrator
{
    private const double LeastMps2 = 0.02;
    private const double MostRatio = 1.4; // of the accelerations in one stretch: the rule is then good to some 1e-9 of it
    private const double FirstStretchMps = 8;
    private const double LeastStretchMps = 1e-3;
    private const double KinkMps = 1e-5; // over so little the kink where grip gives way to the engine makes no difference
    private const double SoftBrakes = 10; // s²/m: above it the brakes stand for a ceiling of speed
    private const double NearMps = 1e-5;
    private const int MostSearches = 12;
    private const double Inner = 0.654653670707977144; // √(3/7)

    /// <summary>
    /// Drives on to the first bound; where the speed does not surely rise, only as far as it does.
    /// </summary>
    /// <param name="law">The law of the motion.</param>
    /// <param name="motion">The motion, before every bound.</param>
    /// <param name="acceleration">Its acceleration, m/s²; at the return that at the new speed.</param>
    /// <param name="isGripped">Whether the grip of the tyres decides it.</param>
    /// <param name="bounds">The bounds.</param>
    /// <returns>The bound; null where somebody else must drive on.</returns>
    internal static MotionEnd? Advance<TLaw>(in TLaw law, ref Motion motion, ref double acceleration, bool isGripped, in MotionBounds bounds)
        where TLaw : struct, IAccelerationLaw
    {
        if (bounds.PerTwiceBraking > SoftBrakes)
        {
            return null;
        }

        double endMps = Math.Sqrt(bounds.EndSpeedSquare);
        double most = FirstStretchMps;
        while (acceleration > LeastMps2)
        {
            double from = motion.SpeedMps;
            double to = Math.Min(bounds.RiseToMps, from + most);
            if (from < endMps && to > endMps)
            {
                to = endMps; // from here on the brakes are needed
            }

            if (law.NextBend(from, isRising: true) is { } bend && bend > from && bend < to)
            {
                to = bend;
            }

            bool isKinked = false;
            if (law.At(to, out bool endsGripped) is var last && endsGripped != isGripped && to - from > 2 * KinkMps)
            {
                to = BeforeKink(law, from, to, isGripped);
                isKinked = true;
                last = law.At(to, out endsGripped);
            }

            if (!Stretch.TryTake(law, from, acceleration, to, last, out Stretch stretch))
            {
                if (to - from < LeastStretchMps)
                {
                    return null;
                }

                most = (to - from) / 2;
                continue;
            }

            double past = bounds.PastFinishM(motion.PositionM + stretch.WayM, to);
            if (motion.TimeS + stretch.TimeS > bounds.UntilTimeS)
            {
                return null;
            }

            if (past >= 0)
            {
                return Finish(law, ref motion, bounds, acceleration, to, last, past);
            }

            motion.TimeS += stretch.TimeS;
            motion.PositionM += stretch.WayM;
            motion.SpeedMps = to;
            (acceleration, isGripped) = (last, endsGripped);
            if (to >= bounds.RiseToMps)
            {
                return MotionEnd.SpeedRisen;
            }

            most = isKinked ? KinkMps : most > KinkMps ? Math.Min(2 * most, FirstStretchMps) : FirstStretchMps;
        }

        return null;
    }

    // The last speed, as far as it matters, at which what decided at the first one still decides.
    private static double BeforeKink<TLaw>(in TLaw law, double low, double high, bool isGripped)
        where TLaw : struct, IAccelerationLaw
    {
        while (high - low > KinkMps)
        {
            double middle = (low + high) / 2;
            law.At(middle, out bool isGrippedThere);
            (low, high) = isGrippedThere == isGripped ? (middle, high) : (low, middle);
        }

        return low;
    }

    // The speed at which braking must begin: guessed from values and slopes at both ends, bettered by the rate at which it is passed.
    private static MotionEnd? Finish<TLaw>(
        in TLaw law, ref Motion motion, in MotionBounds bounds, double start, double to, double last, double past)
        where TLaw : struct, IAccelerationLaw
    {
        double from = motion.SpeedMps;
        double width = to - from;
        double perBraking = to * to > bounds.EndSpeedSquare ? 2 * bounds.PerTwiceBraking : 0;
        double first = bounds.PastFinishM(motion.PositionM, from);
        double share = MotionIntegrator.CubicRoot(
            first, width * from * ((1 / start) + perBraking), past, width * to * ((1 / last) + perBraking));
        double at = from + (width * (share is > 0 and <= 1 ? share : first / (first - past)));
        for (int i = 0; i < MostSearches; i++)
        {
            double there = law.At(at, out _);
            if (!Stretch.TryTake(law, from, start, at, there, out Stretch stretch))
            {
                return null;
            }

            double error = bounds.PastFinishM(motion.PositionM + stretch.WayM, at) / (at * ((1 / there) + perBraking));
            if (Math.Abs(error) < NearMps)
            {
                motion.TimeS += stretch.TimeS - (error / there);
                motion.PositionM += stretch.WayM - (at * error / there);
                motion.SpeedMps = at - error;
                return MotionEnd.Finished;
            }

            at = Math.Clamp(at - error, from, to);
        }

        return null;
    }

    /// <summary>Time and way of a stretch over which the law is smooth.</summary>
    private readonly record struct Stretch(double TimeS, double WayM)
    {
        /// <summary>Takes a stretch; false if the acceleration changes too much over it.</summary>
        internal static bool TryTake<TLaw>(in TLaw law, double from, double first, double to, double last, out Stretch stretch)
            where TLaw : struct, IAccelerationLaw
        {
            stretch = default;
            if (!IsSmooth(first, last))
            {
                return false;
            }

            double middle = (from + to) / 2;
            double half = (to - from) / 2;
            double low = middle - (Inner * half);
            double high = middle + (Inner * half);
            double second = law.At(low);
            double third = law.At(middle);
            double fourth = law.At(high);
            if (!IsSmooth(Math.Min(first, last), third) || !IsSmooth(second, fourth) || !IsSmooth(second, third))
            {
                return false;
            }

            double atEnds = half / 10;
            double atInner = half * (49.0 / 90);
            double atMiddle = half * (32.0 / 45);
            (first, second, third, fourth, last) = (atEnds / first, atInner / second, atMiddle / third, atInner / fourth, atEnds / last);
            stretch = new Stretch(
                first + second + third + fourth + last,
                (from * first) + (low * second) + (middle * third) + (high * fourth) + (to * last));
            return true;
        }

        private static bool IsSmooth(double one, double other) =>
            Math.Min(one, other) is var least && least > LeastMps2 && Math.Max(one, other) <= MostRatio * least;
    }
}
