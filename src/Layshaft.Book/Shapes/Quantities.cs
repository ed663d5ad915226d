using System.Text.Json.Nodes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Shapes;

/// <summary>The shapes of quantities. All are above zero unless the name says otherwise.</summary>
public static class Quantities
{
    /// <summary>A length, any sign.</summary>
    public static Shape<Length> AnyLength { get; } = Of(UnitWords.Length);

    /// <summary>A length.</summary>
    public static Shape<Length> Length { get; } = Positive(UnitWords.Length, v => v.Meters);

    /// <summary>A length, or nothing.</summary>
    public static Shape<Length> LengthOrNone { get; } = Of(UnitWords.Length, Sign.NotNegative).Demand("negative", v => v.Meters >= 0, _ => "This cannot be negative.");

    /// <summary>A torque.</summary>
    public static Shape<Torque> Torque { get; } = Positive(UnitWords.Torque, v => v.NewtonMeters);

    /// <summary>A spring rate.</summary>
    public static Shape<ForcePerLength> SpringRate { get; } = Positive(UnitWords.SpringRate, v => v.NewtonsPerMeter);

    /// <summary>A mass.</summary>
    public static Shape<Mass> Mass { get; } = Positive(UnitWords.Mass, v => v.Kilograms);

    /// <summary>A road speed.</summary>
    public static Shape<Speed> Speed { get; } = Positive(UnitWords.Speed, v => v.MetersPerSecond);

    /// <summary>A road or wind speed, or none.</summary>
    public static Shape<Speed> AnySpeed { get; } = Of(UnitWords.Speed);

    /// <summary>A speed of rotation.</summary>
    public static Shape<RotationalSpeed> Rotation { get; } = Positive(UnitWords.Rotation, v => v.RadiansPerSecond);

    /// <summary>An area.</summary>
    public static Shape<Area> Area { get; } = Positive(UnitWords.Area, v => v.SquareMeters);

    /// <summary>A density.</summary>
    public static Shape<Density> Density { get; } = Positive(UnitWords.Density, v => v.KilogramsPerCubicMeter);

    /// <summary>A pressure.</summary>
    public static Shape<Pressure> Pressure { get; } = Positive(UnitWords.Pressure, v => v.Pascals);

    /// <summary>A temperature of the air or of an oil: −60 to 250 °C.</summary>
    public static Shape<Temperature> Temperature { get; } = Of(UnitWords.Temperature)
        .Demand("impossible-temperature", v => v.DegreesCelsius is >= -60 and <= 250, _ => "A temperature must be from −60 °C to 250 °C.");

    /// <summary>A short time.</summary>
    public static Shape<Duration> Duration { get; } = Positive(UnitWords.Duration, v => v.Seconds);

    /// <summary>A deceleration.</summary>
    public static Shape<Acceleration> Acceleration { get; } = Positive(UnitWords.Acceleration, v => v.MetersPerSecondSquared);

    /// <summary>A moment of inertia.</summary>
    public static Shape<MassMomentOfInertia> Inertia { get; } = Positive(UnitWords.Inertia, v => v.KilogramSquareMeters);

    /// <summary>An angle.</summary>
    public static Shape<Angle> Angle { get; } = Positive(UnitWords.Angle, v => v.Radians);

    /// <summary>A compass direction, clockwise from north; north is 360°.</summary>
    public static Shape<Angle> Compass { get; } = Angle.Demand("bad-direction", v => v.Degrees <= 360, _ => "A compass direction is from 1° to 360°.");

    /// <summary>A measured value of any kind, any sign.</summary>
    public static Shape<IQuantity> Measured { get; } = Of(UnitWords.Measured);

    /// <summary>A reading: a measured value, or a bare number (a <see cref="Scalar"/>) in the unit that the gearbox file gives.</summary>
    public static Shape<IQuantity> Reading { get; } = new ScalarShape<IQuantity>(
        "a reading with its unit, or a number in the unit of the gearbox file",
        UnitWords.Measured.Example,
        "bad-quantity",
        t => QuantityParts.Split(t) is { Unit: "", Number: var number } && Figure.Parse(number) is { Wrong: null, Value: var value } ? Parsed.Good<IQuantity>(Scalar.FromAmount(value)) : UnitWords.Measured.Parse(t),
        () =>
        {
            var schema = SchemaParts.Number(Sign.Any);
            schema["pattern"] = $"{Patterns.Whole(Patterns.Number(Sign.Any))}|{Patterns.Whole(Patterns.Quantity(UnitWords.Measured, Sign.Any))}";
            return schema;
        });

    private static Shape<T> Positive<T>(QuantityText<T> text, Func<T, double> size) =>
        Of(text, Sign.Positive).Demand("not-positive", v => size(v) > 0, _ => "This must be more than 0.");

    private static ScalarShape<T> Of<T>(QuantityText<T> text, Sign sign = Sign.Any) => new(text.What, text.Example, "bad-quantity", text.Parse, () => Schema(text, sign));

    private static JsonObject Schema<T>(QuantityText<T> text, Sign sign)
    {
        var schema = SchemaParts.Matching(Patterns.Whole(Patterns.Quantity(text, sign)));
        schema["description"] = $"Units: {string.Join(", ", text.UnitWords.Distinct(StringComparer.Ordinal))}.";
        return schema;
    }
}
