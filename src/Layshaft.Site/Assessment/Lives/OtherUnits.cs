using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>How one measure of a unit's part wears on other customers' gearboxes of the type.</summary>
/// <param name="Unit">The id of the unit.</param>
/// <param name="Part">The part.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Wear">The rounded rates of the others.</param>
public sealed record OtherWear(string Unit, string Part, string Measure, TypeWear Wear);

/// <summary>
/// How parts wear on the gearboxes of other customers, as far as a customer's page may say it: rounded rates over at least <see cref="TypeWear.LeastUnits"/>
/// gearboxes of the type that belong to at least <see cref="LeastCustomers"/> other customers, read before a day.
/// </summary>
/// <param name="Before">The day: the first of a quarter, so that one job does not change every page.</param>
/// <param name="Wear">The rates.</param>
public sealed record OtherUnits(DateOnly Before, IReadOnlyList<OtherWear> Wear)
{
    /// <summary>Other customers below which nothing is said: with one, the figure would be theirs.</summary>
    public const int LeastCustomers = 2;

    /// <summary>Nothing of any other.</summary>
    public static OtherUnits None { get; } = new(DateOnly.MinValue, []);

    /// <summary>What stands for everything in it.</summary>
    public string Text => string.Join('\n', Wear.Select(w => string.Create(
        CultureInfo.InvariantCulture,
        $"{Before:yyyy-MM-dd} {w.Unit} {w.Part} {w.Measure} {w.Wear.Units} {w.Wear.LogMedian:0.##} {w.Wear.Height:0.##} {w.Wear.Scatter:0.##} {string.Join(' ', w.Wear.Rates.Select(RateText))}")));

    /// <summary>How a measure of a part wears on the others; null if nothing may be said.</summary>
    /// <param name="unit">The id of the unit.</param>
    /// <param name="part">The part.</param>
    /// <param name="measure">The measure.</param>
    public TypeWear? Of(string unit, string part, string measure) => Wear.FirstOrDefault(w => w.Unit == unit && w.Part == part && w.Measure == measure)?.Wear;

    private static string RateText(TypeRate rate) => string.Create(CultureInfo.InvariantCulture, $"{rate.Power} {rate.LogMean:0.##} {rate.LogDeviation:0.##}");
}
