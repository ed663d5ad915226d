using Layshaft.Engineering.Gearing;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Tables;
using UnitsNet;

namespace Layshaft.Site.Pages.LapSheets;

/// <summary>The tables of a lap sheet; without rows if there is no lap.</summary>
internal static class LapTables
{
    public static TableView Corners(Lap? lap, Composition composition) => TableView.Of(
        "corners",
        composition.Say("lap.corners_words"),
        [
            composition.Say("lap.head.corner"), composition.Say("gearing.head.gear"), composition.Say("lap.head.least_speed"),
            composition.Say("lap.head.least_rpm"), composition.Say("lap.head.exit_speed"), composition.Say("lap.head.exit_rpm"), composition.Say("lap.head.basis"),
        ],
        lap is null ? [] : CornersOf(lap).Select(c => (IReadOnlyList<Cell>)
        [
            Cell.Of(composition.Say("lap.corner", ("number", c.Number), ("corner", c.Taken.Corner))),
            Cell.Of(Gear(c.Gear, composition)),
            Cell.Speed(c.Gear.MinimumSpeed, 0, composition),
            Cell.Rpm(c.Gear.EngineSpeed, composition),
            Cell.Speed(c.Exit, 0, composition),
            Cell.Rpm(c.Gear.EngineSpeedAtExit, composition),
            Cell.Of(composition.Say("lap.basis." + c.Taken.Source.ToString().ToLowerInvariant())),
        ]));

    public static TableView Straights(Lap? lap, Composition composition) => TableView.Of(
        "straights",
        composition.Say("lap.straights_caption"),
        [
            composition.Say("life.data.straight"), composition.Say("lap.head.first_gear"), composition.Say("lap.head.shifts"), composition.Say("gearing.head.top"),
            composition.Say("gearing.head.rpm"), composition.Say("lap.head.tow"),
        ],
        lap is null ? [] : lap.Run.Straights.Select((run, i) => (IReadOnlyList<Cell>)
        [
            Cell.Of(run.Straight.Name),
            Cell.Count(lap.Run.Corners[i].ExitGear),
            Cell.Of(Shifts(run, composition)),
            Cell.Speed(run.TopSpeed, 0, composition),
            run.EngineSpeedAtTop is { } rpm ? Cell.Rpm(rpm, composition) : Cell.Empty,
            lap.Tow?.Straights[i] is { } tow ? Left(tow, lap.Car, composition) : Cell.Empty,
        ]));

    public static TableView Gears(Lap? lap, Composition composition) => TableView.Of(
        "gears",
        composition.Say("lap.gears_caption"),
        [
            composition.Say("gearing.head.gear"), composition.Say("lap.head.share"), composition.Say("lap.head.up"), composition.Say("lap.head.down"),
            composition.Say("gearing.head.upshift"), composition.Say("gearing.head.maximum_speed"),
        ],
        lap is null ? [] : GearsOf(lap, composition));

    /// <summary>The corners of the lap with the gear that each is driven in; the first is the one at the end of the first straight.</summary>
    internal static IEnumerable<(int Number, CornerTaken Taken, CornerGear Gear, Speed Exit)> CornersOf(Lap lap)
    {
        var track = lap.Gearing.Case.Track;
        var straights = lap.Run.Straights.Count;
        for (var i = 0; i < straights; i++)
        {
            if (track.Before((i + 1) % straights) is { Slowest: not null, Exit: { } exit } taken)
            {
                yield return (track.Ends[i] + 1, taken, lap.Run.Corners[(i + 1) % straights], exit);
            }
        }
    }

    private static IEnumerable<IReadOnlyList<Cell>> GearsOf(Lap lap, Composition composition)
    {
        var time = lap.Run.TimeInGear(lap.Car.Drivetrain.Gears.Count);
        var all = Duration.FromSeconds(time.Sum(t => t.Seconds));
        var shifts = UpshiftPlan.For(lap.Car.Drivetrain, lap.Car.Engine);
        return lap.Speeds.Rows.Select((row, i) => (IReadOnlyList<Cell>)
        [
            Cell.Of(row.Name),
            Cell.Percent(all > Duration.Zero ? time[i] / all : 0, composition),
            lap.Dogs is { } up ? Cell.Count(up.ByGear[i].UpshiftsPerLap) : Cell.Empty,
            lap.Dogs is { } down ? Cell.Count(down.ByGear[i].DownshiftsPerLap) : Cell.Empty,
            i < shifts.Count ? Cell.Rpm(shifts[i].At, composition) : Cell.Empty,
            Cell.Speed(row.OverRevAbove, 0, composition),
        ]);
    }

    private static string Gear(CornerGear corner, Composition composition) => corner.Fit switch
    {
        CornerFit.BetweenGears => composition.Say("lap.gear_shift", ("gear", corner.Gear), ("exit", corner.ExitGear)),
        CornerFit.BelowBand => composition.Say("lap.gear_below", ("gear", corner.Gear)),
        _ => composition.Figures.Number(corner.Gear).Text,
    };

    private static string Shifts(StraightRun run, Composition composition) => run.Shifts.Count == 0
        ? composition.Say("lap.no_shift")
        : string.Join("; ", run.Shifts.Select(s => composition.Say(
            "lap.shift",
            ("from", s.From),
            ("to", s.To),
            ("distance", composition.Figures.Distance(s.Position).Text),
            ("speed", composition.Figures.Speed(s.SpeedBefore).Text))));

    private static Cell Left(StraightRun tow, Car car, Composition composition)
    {
        var left = car.Engine.Limiter - (tow.EngineSpeedAtTop ?? RotationalSpeed.Zero);
        var cell = Cell.Rpm(RotationalSpeed.FromRevolutionsPerMinute(Math.Max(0, left.RevolutionsPerMinute)), composition);
        return tow.OnLimiter > Duration.Zero
            ? cell with { Text = composition.Say("lap.tow_limiter", ("time", composition.Figures.Seconds(tow.OnLimiter, 1).Text)), Strong = true }
            : cell;
    }
}
