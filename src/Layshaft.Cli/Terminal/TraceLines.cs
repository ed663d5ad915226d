using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Engineering.Traces;
using Layshaft.Site.Assessment.Traces;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Cli.Terminal;

/// <summary>Writes what a trace shows, each figure with how sure it is.</summary>
/// <param name="speed">The unit of speed.</param>
internal sealed class TraceLines(SpeedUnit speed)
{
    private const int MostOthers = 4;

    public void Write(TraceReading reading, TextWriter output)
    {
        foreach (var line in Facts(reading))
        {
            output.WriteLine(line);
        }

        if (reading.Shifts.Count > 0)
        {
            output.WriteLine();
            output.WriteLine("Shifts; the difference at the dogs is gear over ring, at the mainshaft:");
            TextTable.Write([["shift", "count", "engine before", "engine after", "seen", "mean difference", "greatest", "where", "not matched"], .. reading.Shifts.Select(s => Row(s, reading.Places))], output);
        }

        if (reading.Corners.Count > 0)
        {
            output.WriteLine();
            output.WriteLine("Corners, mean of the whole laps:");
            TextTable.Write([["in lap", "laps", "least speed", "full throttle from", "greatest speed after"], .. reading.Corners.Select(Row)], output);
        }

        string[] missing = [.. Missing(reading)];
        if (missing.Length > 0)
        {
            output.WriteLine();
            output.WriteLine("Not in this trace:");
            foreach (var line in missing)
            {
                output.WriteLine($"  {line}");
            }
        }
    }

    private IEnumerable<string> Facts(TraceReading reading)
    {
        var seen = reading.Figures;
        yield return $"{reading.Setup.Car.Name}, {reading.Box.Gearbox.Name} ({reading.Unit.Serial}).";
        yield return $"Rows: {Number(seen.Rows, "0")}, {Number(seen.Rows / Math.Max(seen.Recorded.Seconds, 1e-3), "0")} a second, {Clock(seen.Recorded)} recorded.{LeftOut(seen)}";
        yield return $"Distance: {Number(seen.Distance.Kilometers, "0.0")} km by the recorded speed. Moving {Clock(seen.Moving)}, engine running {Clock(seen.EngineRunning)} ({Number(seen.EngineRunning.Hours, "0.00")} h).";
        yield return $"Top speed: {Of(seen.TopSpeed)}{(seen.TopSpeedAt is { } at ? $", {Where(at, reading.Places)}" : string.Empty)}.";
        yield return Laps(seen);
        foreach (var line in Gears(reading))
        {
            yield return line;
        }

        if (seen.GearFit.IsFound && seen.TimeInGear.Sum(t => t.Seconds) is > 0 and var total)
        {
            yield return $"Time in gear: {string.Join(", ", seen.TimeInGear.Select((t, i) => $"{i + 1}: {Number(t.Seconds / total, "0 %")}"))}.";
        }

        if (ShiftSummary.UpshiftTime(seen.Shifts) is { } time)
        {
            yield return $"Shift time: {Number(time.Mean.Milliseconds, "0")} ± {Number(time.Uncertainty.Milliseconds, "0")} ms, mean of the upshifts (book: {Number(reading.Setup.Car.ShiftTime.Milliseconds, "0")} ms).";
        }

        yield return $"At the limiter: {Number(seen.AtLimiter.Seconds, "0.0")} s.";
        yield return OverRevs(seen.OverRevs, reading.Places);
    }

    private static string LeftOut(TraceFigures seen)
    {
        string[] parts =
        [
            .. new (long Count, string What)[] { (seen.RowsMissing, "incomplete"), (seen.RowsRepeated, "with a repeated time"), (seen.RowsOutOfOrder, "out of order") }
                .Where(p => p.Count > 0).Select(p => $"{p.Count} {p.What}"),
        ];
        return $"{(parts.Length > 0 ? $" Left out: {string.Join(", ", parts)}." : string.Empty)}{(seen.Gaps > 0 ? $" Gaps of more than 1 s: {seen.Gaps}, {Number(seen.GapTime.Seconds, "0")} s in total." : string.Empty)}";
    }

    private static string Laps(TraceFigures seen)
    {
        var basis = seen.LapBasis switch
        {
            LapBasis.Marker => "by the lap column",
            LapBasis.Position => "by position, not at the timing line",
            LapBasis.DistanceRestart => "by the distance that restarts",
            LapBasis.LapLength => "by the venue's length, not at the timing line",
            _ => string.Empty,
        };
        return seen.LapBasis == LapBasis.None ? "Laps: not known. The trace has no lap, position or restarting distance; --venue gives the lap's length."
            : seen.BestLap is { } best ? $"Laps: {seen.Laps.Count} whole, {basis}. Best: lap {best.Number}, {LapTime(best.Time)} ± {Number(best.TimeUncertainty?.Seconds ?? 0, "0.00")} s."
            : $"Laps: no whole lap, {basis}.";
    }

    private static IEnumerable<string> Gears(TraceReading reading)
    {
        var fit = reading.Figures.GearFit;
        if (!fit.IsFound)
        {
            yield return $"Gears: the ratios of engine to road speed do not fit the {reading.Box.Set.Name} of the book (only {Number(fit.Share, "0 %")} of the driving time do). Are other gears fitted, or is a column wrong?";
            yield break;
        }

        var fitted = Set(reading.Fitted);
        if (reading.Check.IsAsExpected)
        {
            yield return $"Gears: as in the book, {fitted} (driven/driver). {Number(fit.Share, "0 %")} of the driving time is in gear.";
            yield return $"Rolling circumference with slip: {Number(fit.Circumference.Meters, "0.000")}{(fit.CircumferenceUncertainty is { } u ? $" ± {Number(u.Meters, "0.000")}" : string.Empty)} m by the recorded speed (book: {Number(reading.Setup.Tyre.Circumference.Meters, "0.000")} m without slip).";
        }
        else
        {
            yield return $"Gears: not as in the book. With {fitted} (driven/driver) the engine would turn {Number(Math.Abs(1 - (1 / fit.FactorOverExpected)), "0.0 %")} {(fit.FactorOverExpected > 1 ? "slower" : "faster")} than recorded.";
            yield return reading.Check.Others.Count > 0
                ? $"In stock and possible: {string.Join("; ", reading.Check.Others.Take(MostOthers).Select(Set))}{(reading.Check.Others.Count > MostOthers ? $"; {reading.Check.Others.Count - MostOthers} more" : string.Empty)}. By ratio alone they look the same, and so does a wrong speed or tyre."
                : "No set in stock explains it. A wrong speed, tyre or column could.";
        }

        foreach (var stray in fit.StrayFactors)
        {
            yield return $"A ratio of {Number(stray, "0.00")} is used that is none of the gears in the book.";
        }

        if (reading.Figures.GearColumnAgrees is { } agrees)
        {
            yield return $"The car's own gear column agrees in {Number(agrees, "0.0 %")} of the rows.";
        }

        if (reading.Figures.Slip is { } slip)
        {
            yield return $"Slip at full throttle against coasting: {Number(100 * slip.Slip, "0.0")} ± {Number(100 * slip.Uncertainty, "0.0")} %.";
        }
    }

    private static string OverRevs(IReadOnlyList<OverRev> overRevs, VenuePlaces? places)
    {
        if (overRevs.Count == 0)
        {
            return "Above the limiter: never by more than 1 %.";
        }

        var worst = overRevs.MaxBy(o => o.Peak)!;
        return $"Above the limiter: {Times(overRevs.Count)}, {overRevs.Count(o => o.IsAfterDownshift)} of them after a downshift. Highest: at least {Number(worst.Peak.RevolutionsPerMinute, "0")} rpm{(worst.IsAfterDownshift ? $" after a downshift to gear {worst.Gear}" : string.Empty)}, {Where(worst.At, places)}.";
    }

    private static string[] Row(ShiftSummary shift, VenuePlaces? places) =>
    [
        $"{shift.From} to {shift.To}",
        $"{shift.Count}",
        $"{Number(shift.EngineBefore.RevolutionsPerMinute, "0")} rpm",
        $"{Number(shift.EngineAfter.RevolutionsPerMinute, "0")} rpm",
        $"{shift.EngagementsSeen}",
        shift.MeanDifference is { } mean ? $"{Number(mean.RevolutionsPerMinute, "0")} rpm" : "-",
        shift.Greatest?.Engagement is { } greatest ? $"{Number(greatest.Difference.RevolutionsPerMinute, "0")} ± {Number(greatest.Uncertainty.RevolutionsPerMinute, "0")} rpm" : "-",
        shift.Greatest is { } place ? Where(place.At, places) : "-",
        shift.EngagementsSeen > 0 ? $"{shift.Unmatched}" : "-",
    ];

    private string[] Row(CornerSummary corner) =>
    [
        $"{Number(corner.InLap.Meters, "0")} m",
        $"{corner.Times}",
        corner.LeastScatter is { } scatter ? $"{Of(corner.LeastSpeed)} (scatter {Of(scatter)})" : Of(corner.LeastSpeed),
        corner.ExitSpeed is { } exit ? Of(exit) : "not known",
        Of(corner.TopSpeed),
    ];

    private static IEnumerable<string> Missing(TraceReading reading)
    {
        var (seen, columns) = (reading.Figures, reading.Setup.Car.TraceColumns!);
        if (seen.Shifts.Count > 0 && seen.Shifts.All(s => s.Engagement is null))
        {
            yield return "Speed difference at the dogs: it needs at least 40 rows a second.";
        }

        if (columns.Throttle is null)
        {
            yield return "Exit speeds and slip: they need the throttle.";
        }
        else if (seen.Slip is null)
        {
            yield return columns.SpeedFrom is TraceSpeedSource.FreeWheels or TraceSpeedSource.Satellite
                ? "Slip: no gear is driven at full throttle and coasting for long enough."
                : "Slip: it needs 'speed_from: free wheels' or 'satellite' in the car's trace_columns.";
        }

        if (ShiftSummary.UpshiftTime(seen.Shifts) is null)
        {
            yield return "Shift time: it needs five upshifts without missing rows.";
        }
    }

    private string Of(Speed value) => speed == SpeedUnit.MilesPerHour ? $"{Number(value.MilesPerHour, "0.0")} mph" : $"{Number(value.KilometersPerHour, "0.0")} km/h";

    private static string Where(TracePlace at, VenuePlaces? places) => at switch
    {
        { Lap: > 0, InLap: { } metres } => $"lap {at.Lap} at {Number(metres.Meters, "0")} m{(places is null ? string.Empty : $" ({places.StraightAt(metres)})")}",
        _ => $"at {Number(at.Time.Seconds, "0.0")} s",
    };

    private static string Times(int count) => count == 1 ? "once" : $"{count} times";

    private static string Set(Eng.GearSet set) => set.DropPair is { } pair ? $"{Pair(pair)} with {Final(set.FinalDrive)}" : Final(set.FinalDrive);

    private static string Pair(Eng.ToothPair pair) => $"{pair} ({Number(pair.Ratio, "0.000")})";

    private static string Final(Eng.FinalDrive final) => $"{final} ({Number(final.Ratio, "0.000")})";

    private static string Clock(Duration time) => time.Minutes >= 1 ? $"{Number(Math.Floor(time.Minutes), "0")} min {Number(Math.Floor(time.Seconds % 60), "0")} s" : $"{Number(time.Seconds, "0.0")} s";

    private static string LapTime(Duration time) => $"{Number(Math.Floor(time.Minutes), "0")}:{Number(time.Seconds % 60, "00.00")}";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
