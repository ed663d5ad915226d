using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>What a gearing runs against.</summary>
public enum GearingCautionKind
{
    /// <summary>The car goes faster than the tyre's speed symbol stands for.</summary>
    TyreSpeed,

    /// <summary>
    /// The tyre's symbol is open at the top and the car goes faster than the speed that it starts from: the tyre's maker has
    /// to say how fast.
    /// </summary>
    TyreSpeedOpenEnded,

    /// <summary>The tyre's speed symbol is not known.</summary>
    TyreSpeedNotKnown,

    /// <summary>The propeller shaft turns faster than its limit.</summary>
    PropshaftSpeed,

    /// <summary>The gearbox output shaft turns faster than its limit.</summary>
    GearboxOutputSpeed,

    /// <summary>The car leaves a corner faster than top gear goes at the limiter: shifting down for it over-revs the engine.</summary>
    CornerOverRev,

    /// <summary>The car comes to the engine's limiter.</summary>
    EngineAtLimiter,

    /// <summary>The limiter is set above the engine's own limit.</summary>
    LimiterAboveEngineLimit,

    /// <summary>The correction for the air lies outside the range for which the standard is meant.</summary>
    CorrectionOutsideStandard,
}

/// <summary>A caution with its figures; the sentence is made where it is printed.</summary>
/// <param name="Kind">What the gearing runs against.</param>
/// <param name="Figure">The figure that is reached; a number for a correction factor; null when it is not known.</param>
/// <param name="Limit">The limit; null when it is not known.</param>
public sealed record GearingCaution(GearingCautionKind Kind, IQuantity? Figure, IQuantity? Limit)
{
    /// <summary>Whether gears that run against it must not be used, so that they are never recommended.</summary>
    public bool IsLimit => Kind is GearingCautionKind.TyreSpeed or GearingCautionKind.PropshaftSpeed or GearingCautionKind.GearboxOutputSpeed or GearingCautionKind.CornerOverRev;
}

/// <summary>A limit that a set of gears passes.</summary>
/// <param name="Caution">The limit with the figure that is reached.</param>
/// <param name="Change">The changed day on which it is passed; null if it is passed on the planned day.</param>
public sealed record PassedLimit(GearingCaution Caution, ConditionChange? Change);
