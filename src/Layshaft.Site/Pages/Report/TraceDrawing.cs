using Layshaft.Site.Assessment.Traces;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using UnitsNet;

namespace Layshaft.Site.Pages.Report;

/// <summary>Draws the best lap of a trace, with unmatched engagements (D) and over-revs (R) marked.</summary>
internal static class TraceDrawing
{
    public static RawHtml? Of(TraceReading reading, Composition composition)
    {
        if (reading.Figures is not { BestLap: { } best, BestLapLine: { Count: > 1 } line })
        {
            return null;
        }

        var scale = SpeedScale.Of(composition);
        var isMetric = composition.Figures.Distance(Length.Zero).Unit == "m";
        double Along(double metres) => isMetric ? metres : Length.FromMeters(metres).Feet;
        LapCorner[] marks =
        [
            .. reading.Figures.Shifts.Where(s => s.IsUnmatched == true && s.At.Lap == best.Number).Select(s => new LapCorner(Along(s.At.InLap!.Value.Meters), composition.Say("trace.mark_dogs"))),
            .. reading.Figures.OverRevs.Where(o => o.At.Lap == best.Number).Select(o => new LapCorner(Along(o.At.InLap!.Value.Meters), composition.Say("trace.mark_revs"))),
        ];
        var limit = reading.Setup.Engine.Limiter;
        var input = new LapChartInput(
            new ChartFrame("trace-lap", composition.Say("trace.chart"), WordsOf(reading, composition)!),
            Along(line[^1].InLapM),
            [.. line.Select(p => new ChartPoint(Along(p.InLapM), scale.At(Speed.FromMetersPerSecond(p.SpeedMps))))],
            [.. GearStretches.Cut(line, p => p.Gear).Select(s => new LapGear(composition.Figures.Number(s[0].Gear).Text, [.. s.Select(p => new ChartPoint(Along(p.InLapM), p.EngineRpm))]))],
            marks,
            new Axis(composition.Say(isMetric ? "lap.axis.metres" : "lap.axis.feet"), v => composition.Figures.Number(v).Text),
            scale.Axis,
            new Axis(composition.Say("gearing.axis.rpm"), v => composition.Figures.Number(v).Text),
            new LevelMark(limit.RevolutionsPerMinute, composition.Figures.Rpm(limit).Text));
        return ChartPair.Of(input, LapChart.Draw);
    }

    /// <summary>What the drawing shows, in words.</summary>
    public static string? WordsOf(TraceReading reading, Composition composition) => reading.Figures.BestLap is not { } best ? null : composition.Say(
        "trace.chart_words",
        ("lap", best.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)),
        ("time", composition.Figures.Seconds(best.Time, 1).Text),
        ("dogs", composition.Say("trace.mark_dogs")),
        ("revs", composition.Say("trace.mark_revs")));
}
