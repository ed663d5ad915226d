namespace Layshaft.Engineering.Gearing;

/// <summary>The end of a straight: from the braking point to the corner.</summary>
internal static class Braking
{
    private const double ReachedTolerance = 1e-6;

    /// <summary>Where the braking point is given but the car is slower than the corner: on to the corner's speed or the end.</summary>
    internal static MotionBounds RestOf(in StraightTask task)
    {
        MotionBounds bounds = task.Bounds;
        bounds.FinishM = task.LengthM;

        // A brake so strong that the corner's speed is held as a ceiling: the stretch ends when it is reached.
        bounds.PerTwiceBraking = 1e9;
        return bounds;
    }

    /// <summary>Brakes to the corner's speed, or notes that the corner is faster than the car has become.</summary>
    internal static void Finish(in StraightTask task, ref Motion motion, ref StraightFigures figures, MotionTrace? trace)
    {
        figures.BrakingMps = motion.SpeedMps;
        figures.BrakingAtM = motion.PositionM;
        figures.ReachedMps = Math.Min(motion.SpeedMps, task.EndMps);
        double leftM = Math.Max(0, task.LengthM - motion.PositionM);
        double sum = motion.SpeedMps + task.EndMps;
        motion.TimeS += sum > 0 ? 2 * leftM / sum : 0; // steady deceleration, or steady speed where there is none
        motion.PositionM = task.LengthM;
        if (motion.SpeedMps < task.EndMps * (1 - ReachedTolerance))
        {
            figures.Fault ??= GearingFaultKind.CornerUnreachable;
            figures.FaultFigure = figures.Fault == GearingFaultKind.CornerUnreachable ? motion.SpeedMps : figures.FaultFigure;
        }

        motion.SpeedMps = figures.ReachedMps;
        figures.TimeS = motion.TimeS;
        if (trace is not null)
        {
            trace.Gear = 0;
            trace.Add(motion);
        }
    }

    internal static void GiveUp(MotionEnd end, in Motion motion, ref StraightFigures figures)
    {
        figures.TimeS = motion.TimeS;
        figures.ReachedMps = motion.SpeedMps;
        bool hasStopped = end == MotionEnd.Stopped;
        figures.Fault = hasStopped ? GearingFaultKind.CannotPull : GearingFaultKind.NotFinished;
        figures.FaultFigure = hasStopped ? motion.PositionM : motion.TimeS;
    }
}
