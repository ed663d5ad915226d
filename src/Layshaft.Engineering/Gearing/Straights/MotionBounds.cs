namespace Layshaft.Engineering.Gearing;

/// <summary>Where a stretch of motion ends: at a time, at a speed, or where braking must begin.</summary>
internal struct MotionBounds
{
    internal double UntilTimeS;
    internal double RiseToMps;
    internal double FallToMps;
    internal double FinishM;        // end of the straight, or the braking point where that is given
    internal double EndSpeedSquare; // (m/s)², the speed to brake down to
    internal double PerTwiceBraking; // 1/(2·deceleration); 0 when the braking point is given

    /// <summary>Metres past the point at which braking must begin; negative before it.</summary>
    internal readonly double PastFinishM(double positionM, double speedMps) =>
        positionM - FinishM + (Math.Max(0, (speedMps * speedMps) - EndSpeedSquare) * PerTwiceBraking);

    /// <summary>Positive once any bound but the time is passed.</summary>
    internal readonly double Past(double positionM, double speedMps) => Math.Max(
        PastFinishM(positionM, speedMps), Math.Max(speedMps - RiseToMps, FallToMps - speedMps));

    /// <summary>The bound that is passed by most, or nearest, and by how much.</summary>
    internal readonly MotionEnd EndAt(double positionM, double speedMps, out double past)
    {
        double finish = PastFinishM(positionM, speedMps);
        double rise = speedMps - RiseToMps;
        double fall = FallToMps - speedMps;
        if (finish >= rise && finish >= fall)
        {
            past = finish;
            return MotionEnd.Finished;
        }

        past = Math.Max(rise, fall);
        return rise >= fall ? MotionEnd.SpeedRisen : MotionEnd.SpeedFallen;
    }

    /// <summary>How far that bound is passed, and how fast that grows, in its unit per second, at an acceleration in m/s².</summary>
    internal readonly double Past(double positionM, double speedMps, double acceleration, out double rate)
    {
        rate = EndAt(positionM, speedMps, out double past) switch
        {
            MotionEnd.Finished => speedMps * (1 + (speedMps * speedMps > EndSpeedSquare ? 2 * acceleration * PerTwiceBraking : 0)),
            MotionEnd.SpeedRisen => acceleration,
            _ => -acceleration,
        };
        return past;
    }
}
