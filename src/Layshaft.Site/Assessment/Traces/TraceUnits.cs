namespace Layshaft.Site.Assessment.Traces;

/// <summary>The units that a trace's column may have, with their factors to SI.</summary>
internal sealed class TraceUnits(params (string Word, double Factor)[] units)
{
    /// <summary>Time, in s.</summary>
    public static TraceUnits Time { get; } = new(("s", 1), ("ms", 1e-3), ("min", 60), ("sec", 1));

    /// <summary>Road speed, in m/s.</summary>
    public static TraceUnits Speed { get; } = new(("km/h", 1 / 3.6), ("mph", 1609.344 / 3600), ("m/s", 1), ("kph", 1 / 3.6), ("kmh", 1 / 3.6));

    /// <summary>Engine speed, in 1/min.</summary>
    public static TraceUnits Rotation { get; } = new(("rpm", 1), ("1/s", 60), ("1/min", 1), ("U/min", 1), ("min⁻¹", 1), ("min-1", 1));

    /// <summary>Distance, in m.</summary>
    public static TraceUnits Distance { get; } = new(("m", 1), ("km", 1000), ("mi", 1609.344), ("ft", 0.3048));

    /// <summary>Throttle opening, 0 to 1.</summary>
    public static TraceUnits Throttle { get; } = new(("%", 0.01), ("1", 1));

    /// <summary>Latitude and longitude, in degrees.</summary>
    public static TraceUnits Degrees { get; } = new(("°", 1), ("deg", 1));

    /// <summary>A number without a unit.</summary>
    public static TraceUnits Plain { get; } = new(("1", 1));

    /// <summary>Their spellings, the usual unit first.</summary>
    public IReadOnlyList<string> Words => [.. units.Select(u => u.Word)];

    /// <summary>The factor of the usual unit.</summary>
    public double Usual => units[0].Factor;

    /// <summary>The factor of a unit; null when it is none of these.</summary>
    public double? FactorOf(string word) =>
        Array.FindIndex(units, u => string.Equals(u.Word, word, StringComparison.OrdinalIgnoreCase)) is >= 0 and var at ? units[at].Factor : null;
}
