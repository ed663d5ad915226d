namespace Layshaft.Engineering.Gearing;

/// <summary>Time, place and speed on a straight.</summary>
internal struct Motion
{
    internal double TimeS;
    internal double PositionM;
    internal double SpeedMps;
}

/// <summary>An acceleration that depends on speed alone.</summary>
internal interface IAccelerationLaw
{
    /// <summary>Acceleration in m/s² at a speed in m/s.</summary>
    double At(double speedMps);

    /// <summary>The same, and whether the grip of the tyres decides it: where that changes the acceleration has a kink.</summary>
    double At(double speedMps, out bool isGripped);

    /// <summary>
    /// The next speed in m/s, rising or falling, at which the law bends: passes into another whose second derivative is another.
    /// Null where it does not.
    /// </summary>
    double? NextBend(double speedMps, bool isRising);
}

/// <summary>What ended a stretch of motion.</summary>
internal enum MotionEnd
{
    TimeUp,
    SpeedRisen,
    SpeedFallen,
    Finished,
    Stopped,
}
