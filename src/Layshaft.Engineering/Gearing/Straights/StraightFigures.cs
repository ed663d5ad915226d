namespace Layshaft.Engineering.Gearing;

/// <summary>What one run down one straight came to, in SI, without allocation.</summary>
internal struct StraightFigures
{
    internal double TimeS;
    internal double TopMps;
    internal double TopAtM;
    internal int TopGear; // from 0; −1 when no gear drove (ideal)
    internal double LimiterS;
    internal int Upshifts;
    internal int Downshifts;
    internal int FirstGear;
    internal CornerFit Fit; // of the corner before the straight
    internal int LastGear;
    internal double BrakingMps;
    internal double BrakingAtM;
    internal double ReachedMps;
    internal GearingFaultKind? Fault;
    internal double FaultFigure;

    /// <summary>Whether the time is that of a car that came to the end of the straight.</summary>
    internal readonly bool IsFinished => Fault is null or GearingFaultKind.CornerUnreachable or GearingFaultKind.StartAboveTopGear;

    internal void See(in Motion motion, int gear)
    {
        if (motion.SpeedMps > TopMps)
        {
            (TopMps, TopAtM, TopGear) = (motion.SpeedMps, motion.PositionM, gear);
        }
    }
}
