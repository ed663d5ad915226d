using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Book.Values;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Cli.Starting;

/// <summary>Writes values as a book holds them, so that the reader takes them back as they were.</summary>
internal static partial class YamlWord
{
    /// <summary>A text; in quotes where YAML or an editor could read something else into it.</summary>
    public static string Of(string text) => Harmless().IsMatch(text) && !Reserved().IsMatch(text)
        ? text
        : $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\r", "", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal).Replace("\t", "\\t", StringComparison.Ordinal)}\"";

    /// <summary>A day.</summary>
    public static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A quantity in the unit in which it was written; shims with the two decimals that are etched on them.</summary>
    public static string Of(IQuantity quantity)
    {
        var number = Math.Round((double)quantity.Value, 6);
        var word = quantity.Unit switch
        {
            LengthUnit.Millimeter => "mm",
            LengthUnit.Inch => "in",
            LengthUnit.Mil => "thou",
            LengthUnit.Micrometer => "µm",
            LengthUnit.Centimeter => "cm",
            LengthUnit.Meter => "m",
            TorqueUnit.NewtonMeter => "N·m",
            TorqueUnit.PoundForceFoot => "lbf·ft",
            TorqueUnit.PoundForceInch => "lbf·in",
            ForceUnit.Newton => "N",
            ForceUnit.PoundForce => "lbf",
            AngleUnit.Degree => "°",
            TemperatureUnit.DegreeCelsius => "°C",
            MassUnit.Gram => "g",
            MassUnit.Kilogram => "kg",
            _ => null,
        };
        return word switch
        {
            null => Of(InSi(quantity)),
            "°" => $"{number.ToString("0.######", CultureInfo.InvariantCulture)}°",
            "mm" => $"{number.ToString("0.00####", CultureInfo.InvariantCulture)} mm",
            _ => $"{number.ToString("0.######", CultureInfo.InvariantCulture)} {word}",
        };
    }

    /// <summary>Several quantities.</summary>
    public static string Of(IEnumerable<IQuantity> quantities) => string.Join(", ", quantities.Select(q => Of(q)));

    /// <summary>A target band.</summary>
    public static string Of(Band<IQuantity> band) => band switch
    {
        { Low: { } low, High: { } high } => $"{Of(low)} to {Of(high)}",
        { Low: { } low } => $"at least {Of(low)}",
        { High: { } high } => $"at most {Of(high)}",
        _ => "none",
    };

    // The units that are not kept as they were written, each in its usual one.
    private static IQuantity InSi(IQuantity quantity) => quantity switch
    {
        Length q => q.ToUnit(LengthUnit.Millimeter),
        Torque q => q.ToUnit(TorqueUnit.NewtonMeter),
        Force q => q.ToUnit(ForceUnit.Newton),
        Angle q => q.ToUnit(AngleUnit.Degree),
        Temperature q => q.ToUnit(TemperatureUnit.DegreeCelsius),
        Mass q => q.ToUnit(MassUnit.Kilogram),
        _ => throw new ArgumentException("A book has no quantity of this kind.", nameof(quantity)),
    };

    [GeneratedRegex("^[A-Za-z][A-Za-z0-9'()/. -]*(?<![ ])\\z", RegexOptions.None, 1000)]
    private static partial Regex Harmless();

    [GeneratedRegex("^(?i:y|n|yes|no|on|off|true|false|null)\\z", RegexOptions.None, 1000)]
    private static partial Regex Reserved();
}
