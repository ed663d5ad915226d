using System.Collections;
using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>
/// Measured values of one kind, side by side: as objects of their own they would take three times the room, and ten
/// seasons have a million of them.
/// </summary>
/// <typeparam name="T">The kind.</typeparam>
internal sealed class ValueList<T>(T[] values) : IReadOnlyList<IQuantity>
    where T : struct, IQuantity
{
    public int Count => values.Length;

    public IQuantity this[int index] => values[index];

    public IEnumerator<IQuantity> GetEnumerator()
    {
        foreach (var value in values)
        {
            yield return value;
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes lists of values.</summary>
internal static class ValueList
{
    /// <summary>The same values in as little room as they need.</summary>
    public static IReadOnlyList<IQuantity> Of(IQuantity[] values) => values switch
    {
        [] => values,
        [Length, ..] => Of<Length>(values),
        [Torque, ..] => Of<Torque>(values),
        [Force, ..] => Of<Force>(values),
        [Angle, ..] => Of<Angle>(values),
        _ => values,
    };

    private static IReadOnlyList<IQuantity> Of<T>(IQuantity[] values)
        where T : struct, IQuantity
    {
        var packed = new T[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            if (values[i] is not T value)
            {
                return values;
            }

            packed[i] = value;
        }

        return new ValueList<T>(packed);
    }
}
