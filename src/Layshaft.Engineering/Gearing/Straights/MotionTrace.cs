namespace Layshaft.Engineering.Gearing;

/// <summary>Keeps the points of a motion for drawing; the ranking runs without one.</summary>
internal sealed class MotionTrace
{
    internal List<TracePoint> Points { get; } = [];

    internal List<ShiftMade> Shifts { get; } = [];

    /// <summary>The gear that is in, from 1; 0 while none drives.</summary>
    internal int Gear { get; set; }

    internal void Add(in Motion motion) => Points.Add(new TracePoint(motion.TimeS, motion.PositionM, motion.SpeedMps, Gear));

    internal void CutBack(int points, int shifts)
    {
        Points.RemoveRange(points, Points.Count - points);
        Shifts.RemoveRange(shifts, Shifts.Count - shifts);
    }
}
