using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>Composes the chart of wheel force in each gear with what holds the car back.</summary>
internal static class WheelForces
{
    private const int Steps = 28;

    public static WheelForceInput Input(ChartFrame frame, Eng.Car car, Eng.SpeedTable table, Composition composition)
    {
        var scale = SpeedScale.Of(composition);
        var isMetric = composition.Figures.Force(Force.Zero).Unit == "N";
        double Newtons(Force force) => isMetric ? force.Newtons : force.PoundsForce;
        var from = car.Engine.Points[0].EngineSpeed;
        var fastest = table.Rows[^1].SpeedAtLimit;
        return new WheelForceInput(
            frame,
            [.. table.Rows.Select(row => new NamedLine(row.Name, [.. Between(table.SpeedAt(row.Number, from), row.SpeedAtLimit).Select(v => new ChartPoint(scale.At(v), Newtons(Eng.WheelForce.InGear(car, row.Number, v))))]))],
            scale.Axis,
            scale.Second,
            new Axis(composition.Say(isMetric ? "gearing.axis.force_n" : "gearing.axis.force_lbf"), v => composition.Figures.Number(v).Text),
            new NamedLine(composition.Say("gearing.chart.resistance"), [.. Between(Speed.Zero, fastest).Select(v => new ChartPoint(scale.At(v), Newtons(Eng.WheelForce.Resistance(car, v))))]),
            Traction: null,
            Crossing(car, scale, Newtons, composition));
    }

    private static NamedPoint? Crossing(Eng.Car car, SpeedScale scale, Func<Force, double> newtons, Composition composition) =>
        Eng.TopSpeed.For(car).Value?.Best is { Stop: Eng.TopSpeedStop.Drag } best
            ? new NamedPoint(
                composition.Say("gearing.chart.level_top", ("speed", composition.Figures.Speed(best.Speed).Both)),
                new ChartPoint(scale.At(best.Speed), newtons(Eng.WheelForce.Resistance(car, best.Speed))))
            : null;

    private static IEnumerable<Speed> Between(Speed from, Speed to) => Enumerable.Range(0, Steps + 1).Select(i => from + ((to - from) * ((double)i / Steps)));
}
