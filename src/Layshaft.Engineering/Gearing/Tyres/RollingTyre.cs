using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The driven tyre as it rolls: what one turn of the wheel is worth on the road. Immutable.</summary>
/// <remarks>
/// Circumference at a speed v: C(v) = C₀ · (1 + growth · (v/v_growth)²); road speed = wheel turns × C(v) × (1 − slip).
/// C₀ is the measured circumference, or 3.05 × diameter, less 2 × 3.05 × wear. Speeds are meant up to 150 m/s.
/// </remarks>
public sealed class RollingTyre
{
    /// <summary>
    /// Rolling circumference over unloaded diameter: 3.05 (dynamic rolling circumference, ETRTO rule for radial car tyres,
    /// from memory; published size sheets of light-truck radials lie within 0.4 % of it). π × diameter would be 3 % too much.
    /// </summary>
    public const double RollingFactor = 3.05;

    /// <summary>The highest speed that the calculation is made for: 150 m/s.</summary>
    internal const double HighestSpeedMps = 150;

    private readonly double _newCircumferenceM;

    private RollingTyre(double newCircumferenceM, CircumferenceBasis basis, TyreSize? size, SpeedSymbol? symbol, RollingState state)
    {
        _newCircumferenceM = newCircumferenceM;
        Basis = basis;
        Size = size;
        SpeedSymbol = symbol;
        State = state;
        StaticCircumferenceM = newCircumferenceM - (2 * RollingFactor * state.Wear.Meters);
        GrowthPerMps2 = state.Growth / Square(state.GrowthAt.MetersPerSecond);
    }

    /// <summary>What the circumference rests on.</summary>
    public CircumferenceBasis Basis { get; }

    /// <summary>The size that it was made from or that was given beside a measurement; null when not known.</summary>
    public TyreSize? Size { get; }

    /// <summary>The speed symbol; null when not known.</summary>
    public SpeedSymbol? SpeedSymbol { get; }

    /// <summary>Slip, growth and wear.</summary>
    public RollingState State { get; }

    /// <summary>Rolling circumference at walking pace, wear taken off.</summary>
    public Length Circumference => Length.FromMeters(StaticCircumferenceM);

    /// <summary>Rolling circumference at walking pace with new tread.</summary>
    public Length NewCircumference => Length.FromMeters(_newCircumferenceM);

    /// <summary>Effective rolling radius at walking pace: circumference / 2π.</summary>
    public Length Radius => Length.FromMeters(StaticCircumferenceM / (2 * Math.PI));

    internal double StaticCircumferenceM { get; }

    internal double GrowthPerMps2 { get; }

    /// <summary>A tyre by its size code: 3.05 × design diameter, or × nominal diameter for racing sizes.</summary>
    /// <param name="size">The size.</param>
    /// <param name="state">Slip, growth and wear; null for none.</param>
    public static Outcome<RollingTyre> FromSize(TyreSize size, RollingState? state = null)
    {
        ArgumentNullException.ThrowIfNull(size);
        double diameterM = (size.DesignDiameter ?? size.NominalDiameter).Meters;
        return Create(
            RollingFactor * diameterM,
            size.DesignDiameter is null ? CircumferenceBasis.NominalDiameter : CircumferenceBasis.DesignDiameter,
            size,
            size.SpeedSymbol,
            state ?? RollingState.New);
    }

    /// <summary>A tyre by its circumference rolled out on the floor, under load and at pressure.</summary>
    /// <param name="circumference">One turn of the wheel on the floor, tread new, 0.5 to 6 m.</param>
    /// <param name="state">Slip, growth, and the wear since it was measured; null for none.</param>
    /// <param name="size">The size, when known, for its speed symbol.</param>
    public static Outcome<RollingTyre> FromMeasured(Length circumference, RollingState? state = null, TyreSize? size = null) =>
        Create(circumference.Meters, CircumferenceBasis.Measured, size, size?.SpeedSymbol, state ?? RollingState.New);

    /// <summary>The same tyre in another state.</summary>
    /// <param name="state">Slip, growth and wear.</param>
    public Outcome<RollingTyre> With(RollingState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Create(_newCircumferenceM, Basis, Size, SpeedSymbol, state);
    }

    /// <summary>Rolling circumference at a speed, growth included.</summary>
    /// <param name="speed">Road speed.</param>
    public Length CircumferenceAt(Speed speed) =>
        Length.FromMeters(StaticCircumferenceM * (1 + (GrowthPerMps2 * Square(speed.MetersPerSecond))));

    /// <summary>Road speed at a wheel speed, growth and slip included.</summary>
    /// <param name="wheel">Wheel speed.</param>
    public Speed SpeedAt(RotationalSpeed wheel) => Speed.FromMetersPerSecond(SpeedMps(wheel.RevolutionsPerSecond));

    /// <summary>Wheel speed at a road speed, growth and slip included.</summary>
    /// <param name="speed">Road speed.</param>
    public RotationalSpeed WheelSpeedAt(Speed speed) =>
        RotationalSpeed.FromRevolutionsPerSecond(WheelTurnsPerSecond(speed.MetersPerSecond));

    internal double WheelTurnsPerSecond(double speedMps) => WheelTurnsPerSecond(speedMps, State.Slip);

    internal double WheelTurnsPerSecond(double speedMps, double slip) =>
        speedMps / (StaticCircumferenceM * (1 - slip) * (1 + (GrowthPerMps2 * Square(speedMps))));

    internal double SpeedMps(double wheelTurnsPerSecond) => SpeedMps(wheelTurnsPerSecond, State.Slip);

    internal double SpeedMps(double wheelTurnsPerSecond, double slip)
    {
        // v = c·(1 + g·v²): the lower root, written so that g = 0 needs no case of its own.
        double c = wheelTurnsPerSecond * StaticCircumferenceM * (1 - slip);
        double root = Math.Sqrt(Math.Max(0, 1 - (4 * GrowthPerMps2 * Square(c))));
        return 2 * c / (1 + root);
    }

    private static Outcome<RollingTyre> Create(
        double circumferenceM, CircumferenceBasis basis, TyreSize? size, SpeedSymbol? symbol, RollingState state)
    {
        var faults = new FaultList();
        faults.Range("circumference", circumferenceM, 0.5, 6, "m");
        faults.Range("slip", state.Slip, 0, 0.3);
        faults.Range("growth", state.Growth, 0, 0.15);
        faults.Range("wear", state.Wear.Millimeters, 0, 20, "mm");
        faults.Range("growth_at", state.GrowthAt.MetersPerSecond, 1, HighestSpeedMps, "m/s");
        double leastMps = HighestSpeedMps * Math.Sqrt(Math.Max(0, state.Growth));
        if (faults.IsEmpty && state.GrowthAt.MetersPerSecond < leastMps)
        {
            faults.Add(new GearingFault(
                GearingFaultKind.GrowthTooSteep, "growth_at", state.GrowthAt.MetersPerSecond, leastMps, Unit: "m/s"));
        }

        return faults.Finish(() => new RollingTyre(circumferenceM, basis, size, symbol, state));
    }

    private static double Square(double value) => value * value;
}
