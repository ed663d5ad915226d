using System.Text.Encodings.Web;
using System.Text.Json;
using Layshaft.Engineering.Traces;
using Layshaft.Site.Assessment.Traces;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Cli.Terminal;

/// <summary>Writes what a trace shows for other programs: every figure with its unit.</summary>
internal static class TraceJson
{
    private static readonly JsonSerializerOptions s_options = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(TraceReading reading)
    {
        var seen = reading.Figures;
        return JsonSerializer.Serialize(
            new
            {
                unit = reading.Unit.Id,
                car = reading.Setup.Car.Id,
                gearbox = reading.Box.Gearbox.Id,
                rows = new { used = seen.Rows, incomplete = seen.RowsMissing, repeated = seen.RowsRepeated, out_of_order = seen.RowsOutOfOrder },
                gaps = new { count = seen.Gaps, time = Of(seen.GapTime) },
                recorded = Of(seen.Recorded),
                moving = Of(seen.Moving),
                engine_running = Of(seen.EngineRunning),
                distance = Of(seen.Distance),
                distance_in_gaps = Of(seen.Bridged),
                top_speed = Of(seen.TopSpeed),
                laps_by = seen.LapBasis.ToString(),
                laps = seen.Laps.Select(l => new { number = l.Number, time = Of(l.Time), expanded_uncertainty = l.TimeUncertainty is { } u ? Of(u) : null, top_speed = Of(l.TopSpeed), has_gaps = l.HasGaps }),
                best_lap = seen.BestLap?.Number,
                gears = Gears(reading),
                slip = seen.Slip is { } slip ? new { value = Math.Round(slip.Slip, 4), expanded_uncertainty = Math.Round(slip.Uncertainty, 4) } : null,
                time_in_gear = seen.TimeInGear.Select(Of),
                at_limiter = Of(seen.AtLimiter),
                over_revs = seen.OverRevs.Select(o => new { at_least = Of(o.Peak), gear = o.Gear, after_downshift = o.IsAfterDownshift, at = Of(o.At) }),
                upshift_time = ShiftSummary.UpshiftTime(seen.Shifts) is { } time ? new { mean = Of(time.Mean), expanded_uncertainty = Of(time.Uncertainty) } : null,
                shifts = reading.Shifts.Select(s => new
                {
                    from = s.From,
                    to = s.To,
                    count = s.Count,
                    engine_before = Of(s.EngineBefore),
                    engine_after = Of(s.EngineAfter),
                    engagements_seen = s.EngagementsSeen,
                    not_matched = s.EngagementsSeen > 0 ? s.Unmatched : (int?)null,
                    mean_difference = s.MeanDifference is { } mean ? Of(mean) : null,
                    energy = s.Energy is { } energy ? Figure(energy.Joules, "J", 1) : null,
                }),
                engagements = seen.Shifts.Where(s => s.Engagement is not null).Select(s => new
                {
                    from = s.From,
                    to = s.To,
                    at = Of(s.At),
                    difference = Of(s.Engagement!.Difference),
                    uncertainty = Of(s.Engagement.Uncertainty),
                    not_matched = s.IsUnmatched,
                }),
                corners = reading.Corners.Select(c => new
                {
                    in_lap = Of(c.InLap),
                    laps = c.Times,
                    least_speed = Of(c.LeastSpeed),
                    scatter = c.LeastScatter is { } scatter ? Of(scatter) : null,
                    exit_speed = c.ExitSpeed is { } exit ? Of(exit) : null,
                    top_speed_after = Of(c.TopSpeed),
                }),
            },
            s_options);
    }

    private static object Gears(TraceReading reading)
    {
        var fit = reading.Figures.GearFit;
        return new
        {
            found = fit.IsFound,
            share_of_driving_time = Math.Round(fit.Share, 3),
            book = Of(reading.Fitted),
            as_in_book = fit.IsFound ? reading.Check.IsAsExpected : (bool?)null,
            possible = fit.IsFound ? reading.Check.Others.Select(Of) : [],
            circumference_with_slip = fit.IsFound && reading.Check.IsAsExpected ? Figure(fit.Circumference.Meters, "m", 4) : null,
            expanded_uncertainty = fit.IsFound && reading.Check.IsAsExpected && fit.CircumferenceUncertainty is { } u ? Figure(u.Meters, "m", 4) : null,
            ratios = fit.Gears.Select(g => new { gear = g.Gear, book = Math.Round(g.Known, 4), seen = Math.Round(g.Seen, 4) }),
            other_ratios = fit.StrayFactors.Select(r => Math.Round(r, 3)),
            own_gear_column_agrees = reading.Figures.GearColumnAgrees is { } agrees ? Math.Round(agrees, 4) : (double?)null,
        };
    }

    private static object Of(Eng.GearSet set) => new { drop_pair = set.DropPair?.ToString(), final_drive = set.FinalDrive.ToString() };

    private static object Of(TracePlace at) => new { time = Of(at.Time), lap = at.Lap > 0 ? at.Lap : (int?)null, in_lap = at.InLap is { } metres ? Figure(metres.Meters, "m", 1) : null };

    private static object Of(Duration time) => Figure(time.Seconds, "s", 3);

    private static object Of(Length length) => Figure(length.Meters, "m", 1);

    private static object Of(Speed speed) => Figure(speed.KilometersPerHour, "km/h", 2);

    private static object Of(RotationalSpeed speed) => Figure(speed.RevolutionsPerMinute, "rpm", 0);

    private static object Figure(double value, string unit, int decimals) => new { value = Math.Round(value, decimals), unit };
}
