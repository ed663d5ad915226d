namespace Layshaft.Engineering.Gearing;

/// <summary>What kept a gearing figure from being worked out.</summary>
public enum GearingFaultKind
{
    /// <summary>A figure is outside the range in which the calculation means anything.</summary>
    OutOfRange,

    /// <summary>A tyre size code that is none of the forms understood.</summary>
    TyreSizeNotRead,

    /// <summary>A drivetrain without a gear.</summary>
    NoGears,

    /// <summary>The gears are not in falling order of ratio, first gear first.</summary>
    GearsNotFalling,

    /// <summary>A torque curve with fewer than two points.</summary>
    CurveTooShort,

    /// <summary>A torque curve whose engine speeds do not rise from point to point.</summary>
    CurveTurnsBack,

    /// <summary>A torque curve that ends below the engine's limiter.</summary>
    CurveEndsBelowLimiter,

    /// <summary>A tyre said to grow so fast that one engine speed would mean two road speeds.</summary>
    GrowthTooSteep,

    /// <summary>More water vapour than the air can hold at this pressure.</summary>
    VapourAbovePressure,

    /// <summary>No drop pair is in stock.</summary>
    NoDropPair,

    /// <summary>No final drive is in stock.</summary>
    NoFinalDrive,

    /// <summary>A venue without a straight.</summary>
    NoStraights,

    /// <summary>A straight too short to brake from its first speed to its last.</summary>
    StraightTooShortToBrake,

    /// <summary>The corner at the end is faster than the straight lets the car reach.</summary>
    CornerUnreachable,

    /// <summary>The straight begins faster than the top gear's limiter lets the car go.</summary>
    StartAboveTopGear,

    /// <summary>The car cannot pull itself along: it stops before the end of the straight.</summary>
    CannotPull,

    /// <summary>The straight was not finished within the time that the calculation allows.</summary>
    NotFinished,

    /// <summary>A dog ring list that leaves a gear without a ring, or names a gear that is not there.</summary>
    RingsDoNotFit,
}
