using System.Globalization;

namespace Layshaft.Engineering.Life;

/// <summary>An amount of use in one measure.</summary>
/// <param name="Amount">How much: hours, kilometres or a number of events.</param>
/// <param name="Measure">What it is counted in.</param>
public readonly record struct Use(double Amount, UseMeasure Measure)
{
    /// <summary>Running hours.</summary>
    /// <param name="amount">Number of hours.</param>
    /// <returns>The use.</returns>
    public static Use Hours(double amount) => new(amount, UseMeasure.Hours);

    /// <summary>Kilometres.</summary>
    /// <param name="amount">Number of kilometres.</param>
    /// <returns>The use.</returns>
    public static Use Kilometres(double amount) => new(amount, UseMeasure.Kilometres);

    /// <summary>Events.</summary>
    /// <param name="amount">Number of events.</param>
    /// <returns>The use.</returns>
    public static Use Events(double amount) => new(amount, UseMeasure.Events);

    /// <summary>Amount and unit, invariant, for messages.</summary>
    /// <returns>For example <c>31.5 h</c>.</returns>
    public override string ToString() => Amount.ToString("0.###", CultureInfo.InvariantCulture) + Measure switch
    {
        UseMeasure.Hours => " h",
        UseMeasure.Kilometres => " km",
        _ => " events",
    };
}
