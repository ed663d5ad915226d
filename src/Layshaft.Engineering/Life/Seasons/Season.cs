using System.Globalization;

namespace Layshaft.Engineering.Life;

/// <summary>One season, named by the years it touches.</summary>
/// <param name="FirstYear">Year in which it begins.</param>
/// <param name="LastYear">Year in which it ends: the same, or the next for a winter season.</param>
public readonly record struct Season(int FirstYear, int LastYear)
{
    /// <summary>Name as written.</summary>
    /// <returns><c>2025</c> or <c>2025/26</c>.</returns>
    public override string ToString() => FirstYear == LastYear
        ? FirstYear.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{FirstYear}/{LastYear % 100:00}");
}
