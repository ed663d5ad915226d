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
public sealed record GearingCaution(GearingCautionKind Kind, IQuantity? Figure, IQuantity? Limit);
