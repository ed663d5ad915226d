using System.Globalization;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>What a value was meant to be, if a point in another place or another unit makes a likely one of it.</summary>
internal static class Slips
{
    private static readonly decimal[] s_places = [0.1m, 10, 0.01m, 100];
    private static readonly string[] s_units = ["mm", "thou", "in", "µm", "N·m", "lbf·ft"];

    /// <summary>A question with the likely values, at most two.</summary>
    /// <param name="value">The value as it was written.</param>
    /// <param name="fits">Whether a value is a likely one.</param>
    public static string? Meant(IQuantity value, Func<IQuantity, bool> fits)
    {
        var number = (decimal)(double)value.Value;
        var written = UnitOf(value);
        string[] meant =
        [
            .. s_places.Select(p => (Number: number * p, Unit: written))
                .Concat(s_units.Select(u => (Number: number, Unit: (string?)u)))
                .Where(m => m.Unit is not null && Made(m.Number, m.Unit) is var made && made.IsLike(value) && fits(made) && m != (number, written))
                .Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Number:0.######} {m.Unit}"))
                .Distinct()
                .Take(2),
        ];
        return meant.Length == 0 ? null : $"Did you mean {string.Join(" or ", meant)}?";
    }

    /// <summary>A value in the unit that it was written with.</summary>
    public static string Text(IQuantity value) => string.Create(CultureInfo.InvariantCulture, $"{(double)value.Value:0.#####} {UnitOf(value)}");

    private static IQuantity Made(decimal number, string unit) => UnitWords.Measured.Units.First(u => u.Word == unit).Make((double)number);

    private static string? UnitOf(IQuantity value) =>
        UnitWords.Measured.Units.FirstOrDefault(u => u.Make(1) is var one && one.IsLike(value) && one.Unit.Equals(value.Unit) && Math.Abs((double)one.Value - 1) < 1e-9)?.Word;
}
