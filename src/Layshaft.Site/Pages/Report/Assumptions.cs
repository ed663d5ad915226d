using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>The figures that the gearing rests on, printed so that nobody takes them for measured.</summary>
internal static class Assumptions
{
    public static IReadOnlyList<NamedValue> Of(GearingCase made, Composition composition)
    {
        var (car, figures) = (made.Setup.Car, composition.Figures);
        NamedValue Row(string key, string value) => new(composition.Say("gearing.assumed." + key), value);
        return
        [
            Row("efficiency", figures.Percent(car.DrivelineEfficiency).Text),
            Row("grip", figures.Number(car.Grip, 2).Text),
            Row("drag", composition.Say("gearing.assumed.drag_value", ("coefficient", figures.Number(car.DragCoefficient, 2).Text), ("area", figures.Number(car.FrontalArea.SquareMeters, 2).Text))),
            Row("air", composition.Say("gearing.assumed.air_value", ("density", figures.Density(made.Air.Air.Density).Text), ("source", GearingWords.AirSourceOf(made.Air, composition)))),
            Row("torque", composition.Say(car.Engine.Corrected ? "gearing.assumed.torque_corrected" : "gearing.assumed.torque_as_is", ("share", figures.Percent(made.Car.Conditions.TorqueFactor, 1).Text))),
            Row("tyre", composition.Say("gearing.assumed.tyre_value", ("size", car.Tyre.Size), ("circumference", figures.Length(made.Setup.Tyre.Circumference, 0).Both), ("basis", GearingWords.TyreBasis(made.Setup.Tyre, composition)))),
            Row("slip", composition.Say("gearing.assumed.slip_value", ("slip", figures.Percent(car.Tyre.Slip, 1).Text), ("growth", figures.Percent(car.Tyre.Growth, 1).Text))),
            Row("mass", figures.Mass(car.Mass).Both),
            Row("rolling", figures.Number(car.RollingResistance, 3).Text),
            Row("shift", figures.Seconds(car.ShiftTime).Text),
            Row("braking", composition.Say("gearing.assumed.braking_value", ("braking", figures.Number(car.Braking.MetersPerSecondSquared, 1).Text))),
        ];
    }
}
