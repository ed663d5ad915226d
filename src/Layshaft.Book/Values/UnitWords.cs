using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>
/// The units that a book may use, in the spellings of the trade. The factors are UnitsNet's; those that matter are
/// checked against NIST SP 811 in the tests.
/// </summary>
public static class UnitWords
{
    // 550 ft·lbf/s exactly: 550 × 0.3048 × 0.45359237 × 9.80665. UnitsNet rounds it to 745.69 W.
    private const double WattsPerHorsepower = 550 * 0.3048 * 0.45359237 * 9.80665;

    /// <summary>Lengths, from shims to circuits.</summary>
    public static QuantityText<Length> Length { get; } = new(
        "a length",
        "0.12 mm",
        new("mm", v => UnitsNet.Length.FromMillimeters(v)),
        new("in", v => UnitsNet.Length.FromInches(v)),
        new("thou", v => UnitsNet.Length.FromMils(v)),
        new("µm", v => UnitsNet.Length.FromMicrometers(v)),
        new("μm", v => UnitsNet.Length.FromMicrometers(v)),
        new("um", v => UnitsNet.Length.FromMicrometers(v)),
        new("cm", v => UnitsNet.Length.FromCentimeters(v)),
        new("m", v => UnitsNet.Length.FromMeters(v)),
        new("km", v => UnitsNet.Length.FromKilometers(v)),
        new("\"", v => UnitsNet.Length.FromInches(v)),
        new("ft", v => UnitsNet.Length.FromFeet(v)),
        new("mi", v => UnitsNet.Length.FromMiles(v)),
        new("miles", v => UnitsNet.Length.FromMiles(v)));

    /// <summary>Torques.</summary>
    public static QuantityText<Torque> Torque { get; } = new(
        "a torque",
        "170 N·m",
        new("N·m", v => UnitsNet.Torque.FromNewtonMeters(v)),
        new("lbf·ft", v => UnitsNet.Torque.FromPoundForceFeet(v)),
        new("Nm", v => UnitsNet.Torque.FromNewtonMeters(v)),
        new("N m", v => UnitsNet.Torque.FromNewtonMeters(v)),
        new("lbf ft", v => UnitsNet.Torque.FromPoundForceFeet(v)),
        new("lb·ft", v => UnitsNet.Torque.FromPoundForceFeet(v)),
        new("lb ft", v => UnitsNet.Torque.FromPoundForceFeet(v)),
        new("lbft", v => UnitsNet.Torque.FromPoundForceFeet(v)),
        new("ft lb", v => UnitsNet.Torque.FromPoundForceFeet(v)),
        new("lbf·in", v => UnitsNet.Torque.FromPoundForceInches(v)),
        new("lbf in", v => UnitsNet.Torque.FromPoundForceInches(v)),
        new("lb in", v => UnitsNet.Torque.FromPoundForceInches(v)),
        new("kgf·m", v => UnitsNet.Torque.FromKilogramForceMeters(v)));

    /// <summary>Forces.</summary>
    public static QuantityText<Force> Force { get; } = new(
        "a force",
        "120 N",
        new("N", v => UnitsNet.Force.FromNewtons(v)),
        new("lbf", v => UnitsNet.Force.FromPoundsForce(v)),
        new("kN", v => UnitsNet.Force.FromKilonewtons(v)),
        new("kgf", v => UnitsNet.Force.FromKilogramsForce(v)));

    /// <summary>Spring rates.</summary>
    public static QuantityText<ForcePerLength> SpringRate { get; } = new(
        "a spring rate",
        "2000 N/mm",
        new("N/mm", v => UnitsNet.ForcePerLength.FromNewtonsPerMillimeter(v)),
        new("kN/mm", v => UnitsNet.ForcePerLength.FromKilonewtonsPerMillimeter(v)),
        new("lbf/in", v => UnitsNet.ForcePerLength.FromPoundsForcePerInch(v)));

    /// <summary>Masses.</summary>
    public static QuantityText<Mass> Mass { get; } = new(
        "a mass",
        "560 kg",
        new("kg", v => UnitsNet.Mass.FromKilograms(v)),
        new("lb", v => UnitsNet.Mass.FromPounds(v)),
        new("g", v => UnitsNet.Mass.FromGrams(v)));

    /// <summary>Speeds.</summary>
    public static QuantityText<Speed> Speed { get; } = new(
        "a speed",
        "92 km/h",
        new("km/h", v => UnitsNet.Speed.FromKilometersPerHour(v)),
        new("mph", v => UnitsNet.Speed.FromMilesPerHour(v)),
        new("m/s", v => UnitsNet.Speed.FromMetersPerSecond(v)));

    /// <summary>Speeds of rotation.</summary>
    public static QuantityText<RotationalSpeed> Rotation { get; } = new(
        "a speed of rotation",
        "7800 rpm",
        new("rpm", v => UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(v)),
        new("1/min", v => UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(v)),
        new("U/min", v => UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(v)),
        new("min⁻¹", v => UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(v)));

    /// <summary>Powers.</summary>
    public static QuantityText<Power> Power { get; } = new(
        "a power",
        "142 kW",
        new("kW", v => UnitsNet.Power.FromKilowatts(v)),
        new("hp", v => UnitsNet.Power.FromWatts(v * WattsPerHorsepower)),
        new("bhp", v => UnitsNet.Power.FromWatts(v * WattsPerHorsepower)),
        new("PS", v => UnitsNet.Power.FromMetricHorsepower(v)));

    /// <summary>Areas.</summary>
    public static QuantityText<Area> Area { get; } = new(
        "an area",
        "1.42 m²",
        new("m²", v => UnitsNet.Area.FromSquareMeters(v)),
        new("m2", v => UnitsNet.Area.FromSquareMeters(v)),
        new("ft²", v => UnitsNet.Area.FromSquareFeet(v)),
        new("ft2", v => UnitsNet.Area.FromSquareFeet(v)));

    /// <summary>Densities.</summary>
    public static QuantityText<Density> Density { get; } = new(
        "a density",
        "1.08 kg/m³",
        new("kg/m³", v => UnitsNet.Density.FromKilogramsPerCubicMeter(v)),
        new("kg/m3", v => UnitsNet.Density.FromKilogramsPerCubicMeter(v)));

    /// <summary>Pressures.</summary>
    public static QuantityText<Pressure> Pressure { get; } = new(
        "a pressure",
        "1013 hPa",
        new("hPa", v => UnitsNet.Pressure.FromHectopascals(v)),
        new("mbar", v => UnitsNet.Pressure.FromMillibars(v)),
        new("kPa", v => UnitsNet.Pressure.FromKilopascals(v)),
        new("bar", v => UnitsNet.Pressure.FromBars(v)),
        new("psi", v => UnitsNet.Pressure.FromPoundsForcePerSquareInch(v)),
        new("inHg", v => UnitsNet.Pressure.FromInchesOfMercury(v)));

    /// <summary>Temperatures.</summary>
    public static QuantityText<Temperature> Temperature { get; } = new(
        "a temperature",
        "18 °C",
        new("°C", v => UnitsNet.Temperature.FromDegreesCelsius(v)),
        new("°F", v => UnitsNet.Temperature.FromDegreesFahrenheit(v)),
        new("C", v => UnitsNet.Temperature.FromDegreesCelsius(v)),
        new("F", v => UnitsNet.Temperature.FromDegreesFahrenheit(v)));

    /// <summary>Short times.</summary>
    public static QuantityText<Duration> Duration { get; } = new(
        "a time",
        "80 ms",
        new("ms", v => UnitsNet.Duration.FromMilliseconds(v)),
        new("s", v => UnitsNet.Duration.FromSeconds(v)),
        new("min", v => UnitsNet.Duration.FromMinutes(v)),
        new("h", v => UnitsNet.Duration.FromHours(v)));

    /// <summary>Decelerations.</summary>
    public static QuantityText<Acceleration> Acceleration { get; } = new(
        "a deceleration",
        "11 m/s²",
        new("m/s²", v => UnitsNet.Acceleration.FromMetersPerSecondSquared(v)),
        new("m/s2", v => UnitsNet.Acceleration.FromMetersPerSecondSquared(v)),
        new("g", v => UnitsNet.Acceleration.FromStandardGravity(v)));

    /// <summary>Mass moments of inertia.</summary>
    public static QuantityText<MassMomentOfInertia> Inertia { get; } = new(
        "a moment of inertia",
        "0.08 kg·m²",
        new("kg·m²", v => UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(v)),
        new("kg·cm²", v => UnitsNet.MassMomentOfInertia.FromKilogramSquareCentimeters(v)),
        new("kg·m2", v => UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(v)),
        new("kg m²", v => UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(v)));

    /// <summary>Angles.</summary>
    public static QuantityText<Angle> Angle { get; } = new(
        "an angle",
        "20°",
        new("°", v => UnitsNet.Angle.FromDegrees(v)),
        new("deg", v => UnitsNet.Angle.FromDegrees(v)),
        new("′", v => UnitsNet.Angle.FromArcminutes(v)));

    /// <summary>What can be measured on a part or set in a box: lengths, torques, forces, angles, temperatures, masses.</summary>
    public static QuantityText<IQuantity> Measured { get; } = new(
        "a measured value",
        "0.12 mm",
        [.. Any(Length), .. Any(Torque), .. Any(Force), .. Any(Angle), .. Any(Temperature), .. Any(Mass)]);

    private static IEnumerable<UnitWord<IQuantity>> Any<T>(QuantityText<T> text)
        where T : IQuantity
        => text.Units.Select(u => new UnitWord<IQuantity>(u.Word, v => u.Make(v)));
}
