using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Measurement;

/// <summary>Takes quantities of one kind to plain numbers of one unit and back; refuses to mix kinds.</summary>
internal static class QuantityUnit
{
    /// <summary>The number of a quantity in a unit.</summary>
    /// <exception cref="ArgumentException">The quantity is of another kind than the unit, or a temperature.</exception>
    public static double In(this IQuantity quantity, Enum unit)
    {
        if (quantity is Temperature)
        {
            // A scale with an offset zero: a difference of two readings is no temperature of its own.
            throw new ArgumentException("use a temperature difference; a temperature has no uncertainty in its own scale");
        }

        return quantity.Unit.GetType() == unit.GetType()
            ? quantity.As(unit)
            : throw new ArgumentException(
                $"{quantity.QuantityInfo.Name} in {quantity.Unit} cannot be compared with a value in {unit}: give both in the same kind of unit");
    }

    /// <summary>The number of a quantity in a unit, 0 when it is not stated.</summary>
    public static double InOrZero(this IQuantity? quantity, Enum unit) => quantity?.In(unit) ?? 0;

    /// <summary>A quantity from its number and unit.</summary>
    public static IQuantity Of(double number, Enum unit) => unit switch
    {
        LengthUnit length => new Length(number, length),
        TorqueUnit torque => new Torque(number, torque),
        ForceUnit force => new Force(number, force),
        AngleUnit angle => new Angle(number, angle),
        MassUnit mass => new Mass(number, mass),

        // Knows every kind there is, and loads all of them on its first use.
        _ => Quantity.From(number, unit),
    };
}
