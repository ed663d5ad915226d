using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>A kind of quantity that a book can contain.</summary>
/// <param name="Name">Its name with the article, for messages: "a length".</param>
/// <param name="ToSi">The number of a quantity of this kind in its SI unit.</param>
/// <param name="FromSi">A quantity of this kind from the number in its SI unit.</param>
public sealed record QuantityKind(string Name, Func<IQuantity, double> ToSi, Func<double, IQuantity> FromSi)
{
    // A new kind also needs the unit in which it is shown (Site: ShownUnit, Measured; Cli: YamlWord). Each of those throws where it is missing.
    private static readonly Dictionary<Type, QuantityKind> s_all = new()
    {
        [typeof(Length)] = new("a length", q => ((Length)q).Meters, v => Length.FromMeters(v)),
        [typeof(Torque)] = new("a torque", q => ((Torque)q).NewtonMeters, v => Torque.FromNewtonMeters(v)),
        [typeof(Force)] = new("a force", q => ((Force)q).Newtons, v => Force.FromNewtons(v)),
        [typeof(Angle)] = new("an angle", q => ((Angle)q).Radians, v => Angle.FromRadians(v)),
        [typeof(Temperature)] = new("a temperature", q => ((Temperature)q).Kelvins, v => Temperature.FromKelvins(v)),
        [typeof(Mass)] = new("a mass", q => ((Mass)q).Kilograms, v => Mass.FromKilograms(v)),
    };

    /// <summary>The kind of a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <exception cref="ArgumentException">A book cannot contain it.</exception>
    public static QuantityKind Of(IQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return s_all.TryGetValue(quantity.GetType(), out var kind) ? kind : throw new ArgumentException("A book has no quantity of this kind.", nameof(quantity));
    }
}
