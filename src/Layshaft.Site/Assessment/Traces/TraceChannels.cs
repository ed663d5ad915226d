using CsvHelper;
using Layshaft.Book.Records;
using Layshaft.Engineering.Traces;

namespace Layshaft.Site.Assessment.Traces;

/// <summary>The columns of a trace that are read.</summary>
internal sealed class TraceChannels(bool hasComma)
{
    public TraceColumn Time { get; } = new("time", TraceUnits.Time, hasComma);

    private TraceColumn Speed { get; } = new("speed", TraceUnits.Speed, hasComma);

    private TraceColumn EngineSpeed { get; } = new("engine_speed", TraceUnits.Rotation, hasComma);

    private TraceColumn Distance { get; } = new("distance", TraceUnits.Distance, hasComma);

    private TraceColumn Gear { get; } = new("gear", TraceUnits.Plain, hasComma);

    private TraceColumn Throttle { get; } = new("throttle", TraceUnits.Throttle, hasComma);

    private TraceColumn Latitude { get; } = new("latitude", TraceUnits.Degrees, hasComma);

    private TraceColumn Longitude { get; } = new("longitude", TraceUnits.Degrees, hasComma);

    private TraceColumn Lap { get; } = new("lap", TraceUnits.Plain, hasComma);

    /// <summary>Each with what the book names it.</summary>
    public IReadOnlyList<(TraceColumn Column, string? Text)> Named(TraceColumns columns) =>
    [
        (Time, columns.Time), (Speed, columns.Speed), (EngineSpeed, columns.EngineSpeed), (Distance, columns.Distance), (Gear, columns.Gear),
        (Throttle, columns.Throttle), (Latitude, columns.Latitude), (Longitude, columns.Longitude), (Lap, columns.Lap),
    ];

    /// <summary>Takes the units from a row of units.</summary>
    public void TakeUnits(CsvReader csv)
    {
        foreach (var column in new[] { Time, Speed, EngineSpeed, Distance, Throttle, Latitude, Longitude })
        {
            column.TakeUnit(csv);
        }
    }

    /// <summary>Reads a row.</summary>
    /// <returns>The column whose value is not a number; null when the row is good.</returns>
    public TraceColumn? TryRead(CsvReader csv, out TraceSample row)
    {
        row = default;
        if (Time.Read(csv) is not { } time)
        {
            return Time;
        }

        if (Speed.Read(csv) is not { } speed)
        {
            return Speed;
        }

        if (EngineSpeed.Read(csv) is not { } engine)
        {
            return EngineSpeed;
        }

        // What is not needed may be words in some rows, such as a neutral gear's N.
        row = new TraceSample(time, speed, engine)
        {
            DistanceM = Distance.Read(csv) ?? double.NaN,
            Gear = Gear.Read(csv) ?? double.NaN,
            Throttle = Throttle.Read(csv) ?? double.NaN,
            LatitudeDeg = Latitude.Read(csv) ?? double.NaN,
            LongitudeDeg = Longitude.Read(csv) ?? double.NaN,
            Lap = Lap.Read(csv) ?? double.NaN,
        };
        return null;
    }
}
