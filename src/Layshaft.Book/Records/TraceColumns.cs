using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>What the road speed of a trace is measured at.</summary>
public enum TraceSpeedSource
{
    /// <summary>Not said.</summary>
    NotSaid,

    /// <summary>The driven wheels.</summary>
    DrivenWheels,

    /// <summary>Wheels that are not driven.</summary>
    FreeWheels,

    /// <summary>Satellite positions.</summary>
    Satellite,
}

/// <summary>How the CSV files of a car's data logger are laid out.</summary>
/// <remarks>A column is its name in the header or its number, and may end with its unit: <c>Speed in mph</c>, <c>Speed (mph)</c>.</remarks>
/// <param name="Origin">Where it is written.</param>
/// <param name="HeaderLine">The line with the column names.</param>
/// <param name="Separator">Between columns; null to detect it.</param>
/// <param name="DecimalComma">Whether numbers have a decimal comma.</param>
/// <param name="SpeedFrom">What the speed is measured at.</param>
/// <param name="Time">Time.</param>
/// <param name="Speed">Road speed.</param>
/// <param name="EngineSpeed">Engine speed.</param>
/// <param name="Distance">Distance.</param>
/// <param name="Gear">Gear by the car's own sensor.</param>
/// <param name="Throttle">Throttle opening.</param>
/// <param name="Latitude">Latitude in degrees.</param>
/// <param name="Longitude">Longitude in degrees.</param>
/// <param name="Lap">Lap number or marker.</param>
public sealed record TraceColumns(
    Origin Origin,
    int HeaderLine,
    char? Separator,
    bool DecimalComma,
    TraceSpeedSource SpeedFrom,
    string Time,
    string Speed,
    string EngineSpeed,
    string? Distance,
    string? Gear,
    string? Throttle,
    string? Latitude,
    string? Longitude,
    string? Lap) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<TraceColumns> Shape { get; } = new("the columns of a trace", "How the CSV files of the car's data logger are laid out. A column is written as its name in the header, or its number from 1. Its unit may follow: 'Speed in mph'. Without it, the unit in the row below the header applies, else the first unit named here.", f => new TraceColumns(
        f.Origin,
        f.Or("header_line", Scalars.Count.Like("1"), 1, "Line with the column names. Lines above it are skipped. Default: 1."),
        f.OptionalValue("separator", SeparatorWords, "Column separator. Default: detected."),
        f.Or("decimal_comma", Scalars.YesNo, false, "Whether numbers are written with a decimal comma. Default: no."),
        f.Or("speed_from", SourceWords, TraceSpeedSource.NotSaid, "What the speed is measured at. Tyre slip is derived only from free wheels or satellite."),
        f.Required("time", Scalars.Text, "Time (s, ms or min). It must increase from row to row."),
        f.Required("speed", Scalars.Text, "Road speed (km/h, mph or m/s)."),
        f.Required("engine_speed", Scalars.Text, "Engine speed (rpm or 1/s)."),
        f.Optional("distance", Scalars.Text, "Distance (m, km, mi or ft). If it restarts with each lap, it counts the laps."),
        f.Optional("gear", Scalars.Text, "Gear by the car's own sensor. It is compared with the derived gear."),
        f.Optional("throttle", Scalars.Text, "Throttle opening (% or 1). Exit speeds and tyre slip need it."),
        f.Optional("latitude", Scalars.Text, "Latitude (°). With longitude, laps are counted by position."),
        f.Optional("longitude", Scalars.Text, "Longitude (°)."),
        f.Optional("lap", Scalars.Text, "Lap number or marker; each increase begins a lap.")));

    private static ChoiceShape<char> SeparatorWords => new("a separator", ("comma", ','), ("semicolon", ';'), ("tab", '\t'), ("bar", '|'));

    private static ChoiceShape<TraceSpeedSource> SourceWords => new(
        "a speed source", ("driven wheels", TraceSpeedSource.DrivenWheels), ("free wheels", TraceSpeedSource.FreeWheels), ("satellite", TraceSpeedSource.Satellite));
}
