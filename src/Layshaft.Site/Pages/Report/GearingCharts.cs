using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>The charts of the gearing that is going to be driven.</summary>
internal static class GearingCharts
{
    public static RawHtml Speeds(EventGearing gearing, Composition composition)
    {
        var gears = GearingWords.Gears(gearing.Driven, composition);
        var frame = new ChartFrame(
            "gear-speeds",
            composition.Say("gearing.chart.speeds"),
            composition.Say("gearing.chart.speeds_words", ("gears", gears), ("speed", composition.Figures.Speed(gearing.Driven.TopSpeed).Both), ("rpm", composition.Figures.Rpm(gearing.Driven.EngineSpeedAtTop).Text)));
        var car = gearing.DrivenCar;
        return ChartPair.Of(
            SpeedPerGear.Input(frame, TableOf(car), Eng.UpshiftPlan.For(car.Drivetrain, car.Engine), (gearing.Driven.TopSpeed, gearing.Driven.TopSpeedGear), composition),
            SpeedPerGearChart.Draw);
    }

    public static RawHtml Forces(EventGearing gearing, Composition composition)
    {
        var frame = new ChartFrame("gear-forces", composition.Say("gearing.chart.forces"), composition.Say("gearing.chart.forces_words"));
        var car = gearing.DrivenCar;
        return ChartPair.Of(WheelForces.Input(frame, car, TableOf(car), composition), WheelForceChart.Draw);
    }

    public static Eng.SpeedTable TableOf(Eng.Car car) => Eng.SpeedTable.For(car);
}

/// <summary>One gear: when to leave it, and the speed above which it must never be engaged.</summary>
/// <param name="Gear">The gear.</param>
/// <param name="Never">The speed above which a downshift into it over-revs the engine.</param>
/// <param name="Upshift">Engine speed at which to leave it.</param>
/// <param name="Lands">Engine speed in the next gear then.</param>
public sealed record ShiftRow(string Gear, string Never, string Upshift, string Lands)
{
    internal static IReadOnlyList<ShiftRow> Of(EventGearing gearing, Composition composition)
    {
        var car = gearing.DrivenCar;
        var shifts = Eng.UpshiftPlan.For(car.Drivetrain, car.Engine);
        return
        [
            .. GearingCharts.TableOf(car).Rows.Select(row => new ShiftRow(
                row.Name,
                composition.Figures.Speed(row.OverRevAbove).Both,
                row.Number <= shifts.Count ? composition.Figures.Rpm(shifts[row.Number - 1].At).Text : composition.Say("gearing.top_gear"),
                row.Number <= shifts.Count ? composition.Figures.Rpm(shifts[row.Number - 1].Lands).Text : string.Empty)),
        ];
    }
}
