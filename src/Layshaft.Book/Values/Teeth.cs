using System.Globalization;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>
/// The teeth of two gears in mesh, as the book writes them: <c>26/27</c> is driven/driver, so that the fraction is the
/// ratio, or in words <c>27 driving 26</c>.
/// </summary>
/// <param name="Driver">Teeth of the driving gear.</param>
/// <param name="Driven">Teeth of the driven gear.</param>
public readonly record struct Teeth(int Driver, int Driven)
{
    /// <summary>Fewer teeth than this are no gear of this trade.</summary>
    public const int Fewest = 7;

    /// <summary>More teeth than this are no gear of this trade.</summary>
    public const int Most = 150;

    /// <summary>What to write.</summary>
    public const string Words = "two tooth counts as driven/driver, such as 26/27, or '27 driving 26'";

    /// <summary>Reads <c>26/27</c> or <c>27 driving 26</c>.</summary>
    public static Parsed<Teeth> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var spoken = text.Split(" driving ");
        var parts = spoken.Length == 2 ? [spoken[1], spoken[0]] : text.Split('/');
        if (parts.Length != 2)
        {
            return Parsed.Bad<Teeth>($"'{text}' is not a pair of gears.");
        }

        var driven = Figure.ParseWhole(parts[0].Trim());
        var driver = Figure.ParseWhole(parts[1].Trim());
        if ((driven.Wrong ?? driver.Wrong) is { } wrong)
        {
            return Parsed.Bad<Teeth>(wrong, driven.Wrong is null ? driver.Remedy : driven.Remedy);
        }

        foreach (var count in (ReadOnlySpan<int>)[driven.Value, driver.Value])
        {
            if (count is < Fewest or > Most)
            {
                return Parsed.Bad<Teeth>(
                    $"A gear with {count.ToString(CultureInfo.InvariantCulture)} teeth can't be.",
                    $"Tooth counts run from {Fewest} to {Most}.");
            }
        }

        return Parsed.Good(new Teeth(driver.Value, driven.Value));
    }

    /// <summary>As the trade says it: "27 driving 26".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Driver} driving {Driven}");
}
