namespace Layshaft.Site.Charts;

/// <summary>An axis: its name, and how a number on it is written. The unit is the caller's choice.</summary>
/// <param name="Name">Name with unit, for example "road speed, km/h".</param>
/// <param name="Format">Writes one tick's number, without the unit.</param>
public sealed record Axis(string Name, Func<double, string> Format)
{
    private const int MostDecimals = 4;

    /// <summary>Writes a tick's number with so many decimals, for an axis on which they depend on the step; null for others.</summary>
    public Func<double, int, string>? WithDecimals { get; init; }

    /// <summary>The words of ticks that stand together: all with as many decimals as the one that needs most, 0.10 beside 0.12.</summary>
    /// <param name="ticks">The ticks.</param>
    public IReadOnlyList<string> Labels(IReadOnlyList<double> ticks)
    {
        ArgumentNullException.ThrowIfNull(ticks);
        if (WithDecimals is not { } write || ticks.Count == 0)
        {
            return [.. ticks.Select(Format)];
        }

        var decimals = ticks.Max(DecimalsOf);
        return [.. ticks.Select(t => write(t, decimals))];
    }

    private static int DecimalsOf(double value)
    {
        var decimals = 0;
        while (decimals < MostDecimals && Math.Abs(value - Math.Round(value, decimals)) >= 1e-9)
        {
            decimals++;
        }

        return decimals;
    }
}

/// <summary>A second scale along the same axis, in another unit.</summary>
/// <param name="Name">Name with unit.</param>
/// <param name="Format">Writes one tick's number, without the unit.</param>
/// <param name="Factor">How many of this unit make one of the first; above 0.</param>
public sealed record SecondAxis(string Name, Func<double, string> Format, double Factor);

/// <summary>A tick that the caller places, for axes where round numbers mean nothing (dates, seasons).</summary>
/// <param name="Value">Where on the axis.</param>
/// <param name="Label">What it says.</param>
public sealed record AxisTick(double Value, string Label);

/// <summary>A value marked across a chart, with its words.</summary>
/// <param name="Value">Where on the axis.</param>
/// <param name="Label">What it says, value and unit included.</param>
public sealed record LevelMark(double Value, string Label);

/// <summary>A value with its lower and upper bound, marked on a chart with its words.</summary>
/// <param name="Value">The value itself.</param>
/// <param name="Lower">Lower bound; null where there is none to give.</param>
/// <param name="Upper">Upper bound; null where there is none to give.</param>
/// <param name="Label">What it says, value and unit included.</param>
public sealed record BoundedMark(double Value, double? Lower, double? Upper, string Label);
