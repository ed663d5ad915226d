using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The limits that a gearing is held against; those not known are left null.</summary>
/// <param name="Propshaft">Greatest speed of the propeller shaft by its maker (critical speed with its margin).</param>
/// <param name="GearboxOutput">
/// Greatest speed of the gearbox output shaft by its maker: the shaft that leaves the box, behind a drop pair at its back.
/// </param>
/// <param name="Engine">Greatest speed of the engine by its builder.</param>
public sealed record GearingGuards(
    RotationalSpeed? Propshaft = null, RotationalSpeed? GearboxOutput = null, RotationalSpeed? Engine = null)
{
    /// <summary>Holds a car that comes to a speed against the limits. The makers' manuals and the event's regulations govern.</summary>
    /// <param name="car">The car.</param>
    /// <param name="topSpeed">The greatest speed that it comes to.</param>
    /// <param name="gear">The gear that it comes to it in, from 1.</param>
    /// <param name="onLimiter">Whether it is held by the limiter there.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public IReadOnlyList<GearingCaution> Check(Car car, Speed topSpeed, int gear, bool onLimiter)
    {
        ArgumentNullException.ThrowIfNull(car);
        RotationalSpeed engine = car.EngineSpeedAt(gear, topSpeed);
        List<GearingCaution> cautions = [.. AtSpeed(car.Drivetrain, car.Tyre, gear, topSpeed, engine)];
        if (onLimiter)
        {
            cautions.Add(new GearingCaution(GearingCautionKind.EngineAtLimiter, engine, car.Engine.Limiter));
        }

        Above(GearingCautionKind.LimiterAboveEngineLimit, car.Engine.Limiter, Engine, cautions);
        double factor = PowerCorrection.Factor(car.Conditions.CurveStandard, car.Conditions.Air);
        if (!PowerCorrection.IsWithinStandard(car.Conditions.CurveStandard, factor))
        {
            cautions.Add(new GearingCaution(
                GearingCautionKind.CorrectionOutsideStandard,
                Scalar.FromAmount(factor),
                Scalar.FromAmount(factor < 1 ? PowerCorrection.Least : PowerCorrection.Greatest)));
        }

        return cautions;
    }

    /// <summary>Holds tyre and shafts against the limits at a road speed.</summary>
    /// <param name="gears">Gears, drop pair, final drive.</param>
    /// <param name="tyre">The driven tyre.</param>
    /// <param name="gear">The gear, from 1.</param>
    /// <param name="speed">The road speed.</param>
    /// <param name="engine">Engine speed there.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public IReadOnlyList<GearingCaution> AtSpeed(Drivetrain gears, RollingTyre tyre, int gear, Speed speed, RotationalSpeed engine)
    {
        ArgumentNullException.ThrowIfNull(gears);
        ArgumentNullException.ThrowIfNull(tyre);
        var cautions = new List<GearingCaution>();
        CheckTyre(tyre, speed, cautions);
        RotationalSpeed shaft = engine / gears.RatioToPropshaft(gear);
        Above(GearingCautionKind.PropshaftSpeed, shaft, Propshaft, cautions);
        Above(GearingCautionKind.GearboxOutputSpeed, shaft, GearboxOutput, cautions);
        return cautions;
    }

    private static void CheckTyre(RollingTyre tyre, Speed topSpeed, List<GearingCaution> cautions)
    {
        if (tyre.SpeedSymbol is not { } symbol)
        {
            cautions.Add(new GearingCaution(GearingCautionKind.TyreSpeedNotKnown, topSpeed, null));
        }
        else if (topSpeed > symbol.Limit)
        {
            cautions.Add(new GearingCaution(
                symbol.IsOpenEnded ? GearingCautionKind.TyreSpeedOpenEnded : GearingCautionKind.TyreSpeed, topSpeed, symbol.Limit));
        }
    }

    private static void Above(GearingCautionKind kind, RotationalSpeed figure, RotationalSpeed? limit, List<GearingCaution> cautions)
    {
        if (limit is { } most && figure > most)
        {
            cautions.Add(new GearingCaution(kind, figure, most));
        }
    }
}
