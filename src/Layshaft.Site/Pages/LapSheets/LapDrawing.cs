using Layshaft.Engineering.Gearing;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using UnitsNet;

namespace Layshaft.Site.Pages.LapSheets;

/// <summary>The chart of a lap.</summary>
internal static class LapDrawing
{
    public static RawHtml Of(Lap lap, Composition composition)
    {
        var driven = lap.Driven;
        var frame = new ChartFrame(
            "lap",
            composition.Say("lap.chart"),
            composition.Say("lap.chart_spoken", ("speed", composition.Figures.Speed(driven.TopSpeed).Both), ("straight", driven.TopSpeedStraight), ("rpm", composition.Figures.Rpm(driven.EngineSpeedAtTop).Text)));
        return ChartPair.Of(Input(frame, lap, composition), LapChart.Draw);
    }

    private static LapChartInput Input(ChartFrame frame, Lap lap, Composition composition)
    {
        var scale = SpeedScale.Of(composition);
        var isMetric = composition.Figures.Distance(Length.Zero).Unit == "m";
        double Distance(Length length) => isMetric ? length.Meters : length.Feet;
        var (venue, ends) = (lap.Gearing.Case.Venue, lap.Gearing.Case.Track.Ends);
        var corners = LapTables.CornersOf(lap).Select(c => c.Number - 1).ToHashSet();
        var rest = venue.Length - Length.FromMeters(lap.Run.Straights.Sum(run => run.Straight.Length.Meters));
        var gap = corners.Count == 0 || rest < Length.Zero ? Length.Zero : rest / corners.Count;
        var (speeds, gears, marks, from) = (new List<ChartPoint>(), new List<LapGear>(), new List<LapCorner>(), Length.Zero);
        for (var i = 0; i < lap.Run.Straights.Count; i++)
        {
            var run = lap.Run.Straights[i];
            speeds.AddRange(run.Trace.Select(point => new ChartPoint(Distance(from + point.Position), scale.At(point.Speed))));
            gears.AddRange(GearStretches.Cut(run.Trace, p => p.Gear).Select(points => new LapGear(
                composition.Figures.Number(points[0].Gear).Text,
                [.. points.Select(point => new ChartPoint(Distance(from + point.Position), EngineRpm(lap, run, point)))])));
            from += run.Straight.Length;
            if (corners.Contains(ends[i]))
            {
                marks.Add(new LapCorner(Distance(from), composition.Figures.Number(ends[i] + 1).Text));
                from += gap;
            }
        }

        if (corners.Contains(ends[^1]))
        {
            speeds.Add(speeds[0] with { X = Distance(from) }); // out of the last corner, back to the start of the lap
        }

        var limit = lap.Car.Engine.Limiter;
        return new LapChartInput(
            frame,
            Distance(from),
            speeds,
            gears,
            marks,
            new Axis(composition.Say(isMetric ? "lap.axis.metres" : "lap.axis.feet"), v => composition.Figures.Number(v).Text),
            scale.Axis,
            new Axis(composition.Say("gearing.axis.rpm"), v => composition.Figures.Number(v).Text),
            new LevelMark(limit.RevolutionsPerMinute, composition.Figures.Rpm(limit).Text));
    }

    // While the clutch slips at a standing start the engine keeps its speed.
    private static double EngineRpm(Lap lap, StraightRun run, TracePoint point)
    {
        var locked = lap.Speeds.EngineSpeedAt(point.Gear, point.Speed).RevolutionsPerMinute;
        return run.Straight.StartSpeed <= Speed.Zero && point.Gear == 1 ? Math.Max(locked, lap.Car.Engine.LaunchAt.RevolutionsPerMinute) : locked;
    }
}
