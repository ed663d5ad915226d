using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>Composes the chart of engine speed against road speed in each gear.</summary>
internal static class SpeedPerGear
{
    private const int Steps = 8;

    /// <summary>The chart of a drivetrain.</summary>
    /// <param name="frame">Id prefix, title, description.</param>
    /// <param name="table">Speeds in each gear up to the limit.</param>
    /// <param name="upshifts">Where each gear is left; null for shifts at the limit.</param>
    /// <param name="top">The top speed to expect and its gear; null leaves it out.</param>
    /// <param name="composition">What pages are composed from.</param>
    public static SpeedPerGearInput Input(
        ChartFrame frame, Eng.SpeedTable table, IReadOnlyList<Eng.Upshift>? upshifts, (Speed Speed, int Gear)? top, Composition composition)
    {
        var scale = SpeedScale.Of(composition);
        var limit = table.Limit;
        return new SpeedPerGearInput(
            frame,
            [.. table.Rows.Select(row => new GearLine(
                row.Name,
                [.. Enumerable.Range(0, Steps + 1).Select(i => At(table, row.Number, limit * ((double)i / Steps), scale))],
                row.StepToNext is null || row.Number == top?.Gear ? null : scale.At(table.SpeedAt(row.Number, upshifts is null ? limit : upshifts[row.Number - 1].At)),
                row.StepToNext is null ? null : (upshifts is null ? row.EngineSpeedAfterUpshift : upshifts[row.Number - 1].Lands)?.RevolutionsPerMinute))],
            scale.Axis,
            scale.Second,
            new Axis(composition.Say("gearing.axis.rpm"), v => composition.Figures.Number(v).Text),
            new LevelMark(limit.RevolutionsPerMinute, composition.Say("gearing.chart.limit", ("rpm", composition.Figures.Rpm(limit).Text))),
            top is { } reached
                ? new LevelMark(scale.At(reached.Speed), composition.Say("gearing.chart.top", ("speed", composition.Figures.Speed(reached.Speed).Both)))
                : null);
    }

    private static ChartPoint At(Eng.SpeedTable table, int gear, RotationalSpeed engine, SpeedScale scale) =>
        new(scale.At(table.SpeedAt(gear, engine)), engine.RevolutionsPerMinute);
}
