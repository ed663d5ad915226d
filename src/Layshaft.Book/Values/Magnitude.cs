using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>The size of a measured quantity in its SI unit, for comparing and for the statistics.</summary>
public static class Magnitude
{
    /// <summary>Metres, newton metres, newtons, radians, kelvins or kilograms.</summary>
    /// <exception cref="ArgumentException">The quantity is none that a book can hold.</exception>
    public static double InSi(this IQuantity quantity) => QuantityKind.Of(quantity).ToSi(quantity);

    /// <summary>The same kind of quantity from a size in its SI unit.</summary>
    /// <exception cref="ArgumentException">The quantity is none that a book can hold.</exception>
    public static IQuantity Like(this IQuantity quantity, double inSi) => QuantityKind.Of(quantity).FromSi(inSi);

    /// <summary>A quantity of the same kind and unit.</summary>
    /// <exception cref="ArgumentException">The quantity is none that a book can hold.</exception>
    public static IQuantity Of(this IQuantity quantity, double number) => quantity switch
    {
        Length q => new Length(number, q.Unit),
        Torque q => new Torque(number, q.Unit),
        Force q => new Force(number, q.Unit),
        Angle q => new Angle(number, q.Unit),
        Temperature q => new Temperature(number, q.Unit),
        Mass q => new Mass(number, q.Unit),
        _ => throw new ArgumentException("A book has no quantity of this kind.", nameof(quantity)),
    };

    /// <summary>Whether two quantities are of one kind, so that they can be compared.</summary>
    public static bool IsLike(this IQuantity one, IQuantity other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.GetType() == other.GetType();
    }
}
