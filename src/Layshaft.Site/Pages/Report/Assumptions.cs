using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>What the gearing rests on, printed so that nobody takes it for measured.</summary>
internal static class Assumptions
{
    public static IReadOnlyList<NamedValue> Of(GearingCase made, Composition composition)
    {
        var (car, figures) = (made.Setup.Car, composition.Figures);
        NamedValue Row(string key, string value) => new(composition.Say("gearing.assumed." + key), value);
        return
        [
            Row("efficiency", Efficiency(made, composition)),
            Row("grip", figures.Number(car.Grip, 2).Text),
            Row("drag", composition.Say("gearing.assumed.drag_value", ("coefficient", figures.Number(car.DragCoefficient, 2).Text), ("area", figures.Number(car.FrontalArea.SquareMeters, 2).Text))),
            Row("air", composition.Say("gearing.assumed.air_value", ("density", figures.Density(made.Air.Air.Density).Text), ("source", GearingWords.AirSourceOf(made.Air, composition)))),
            Row("torque", composition.Say(car.Engine.Corrected ? "gearing.assumed.torque_corrected" : "gearing.assumed.torque_as_is", ("share", figures.Percent(made.Car.Conditions.TorqueFactor, 1).Text))),
            Row("tyre", composition.Say("gearing.assumed.tyre_value", ("size", car.Tyre.Size), ("circumference", figures.Length(made.Setup.Tyre.Circumference, 0).Both), ("basis", GearingWords.TyreBasis(made.Setup.Tyre, composition)))),
            Row("slip", composition.Say("gearing.assumed.slip_value", ("slip", figures.Percent(car.Tyre.Slip, 1).Text), ("growth", figures.Percent(car.Tyre.Growth, 1).Text))),
            Row("mass", figures.Mass(car.Mass).Both),
            Row("rolling", Rolling(car, composition)),
            Row("downforce", car.LiftCoefficient is { } lift ? composition.Say("gearing.assumed.downforce_value", ("coefficient", figures.Number(lift, 2).Text)) : composition.Say("gearing.assumed.not_given")),
            Row("inertia", composition.Say("gearing.assumed.inertia_value", ("wheels", Inertia(car.WheelInertia, composition)), ("engine", Inertia(car.Engine.Inertia, composition)))),
            Row("corners", Corners(made, composition)),
            Row("wind", Wind(made, composition)),
            Row("shift", figures.Seconds(car.ShiftTime).Text),
            Row("braking", composition.Say("gearing.assumed.braking_value", ("braking", figures.Number(car.Braking.MetersPerSecondSquared, 1).Text))),
            .. made.Course.Straights[0].StartSpeed <= Speed.Zero ? [Row("launch", Launch(made.Setup, composition))] : Array.Empty<NamedValue>(),
            Row("conditions", composition.Say("gearing.change_words")),
            Row("limits", Limits(made, composition)),
            Row("ranges", string.Join(", ", Eng.InputRange.Usual(made.Setup.Tyre.Basis).Select(r => Range(r, composition)))),
        ];
    }

    /// <summary>The engine speed of a standing start and what it rests on.</summary>
    public static string Launch(CarSetup setup, Composition composition) => composition.Say(
        setup.Car.Engine.Launch is not null ? "gearing.assumed.launch_given" : setup.Car.Engine.LowestUseful is not null ? "gearing.assumed.launch_lowest" : "gearing.assumed.launch_torque",
        ("rpm", composition.Figures.Rpm(setup.Engine.LaunchAt).Text));

    /// <summary>What the corner speeds rest on, with the number of corners of each kind.</summary>
    public static string Corners(GearingCase made, Composition composition) => string.Join(
        ", ",
        made.Track.Corners.Where(c => c.Slowest is not null || c.Source == CornerSource.Flat).GroupBy(c => c.Source).OrderByDescending(g => g.Key)
            .Select(g => composition.Say("gearing.assumed.corners_" + g.Key.ToString().ToLowerInvariant(), ("count", g.Count()))));

    /// <summary>The wind of the event.</summary>
    public static string Wind(GearingCase made, Composition composition)
    {
        if (made.Plan?.Wind is not { } wind)
        {
            return composition.Say("gearing.assumed.wind_none");
        }

        var speed = composition.Figures.Speed(wind).Both;
        return made.Plan.WindFrom is { } from
            ? composition.Say(made.Venue.Straights.All(s => s.Heading is not null) ? "gearing.assumed.wind_from" : "gearing.assumed.wind_partly", ("speed", speed), ("direction", composition.Figures.Number(from.Degrees).Text))
            : composition.Say("gearing.assumed.wind_head", ("speed", speed));
    }

    private static string Efficiency(GearingCase made, Composition composition) => made.Car.Vehicle.Spec is { MeshEfficiency: { } mesh, AxleEfficiency: { } axle }
        ? composition.Say("gearing.assumed.efficiency_mesh", ("mesh", composition.Figures.Percent(mesh, 1).Text), ("axle", composition.Figures.Percent(axle, 1).Text))
        : composition.Say("gearing.assumed.efficiency_value", ("efficiency", composition.Figures.Percent(made.Setup.Car.DrivelineEfficiency).Text));

    private static string Rolling(Car car, Composition composition)
    {
        var coefficient = composition.Figures.Number(car.RollingResistance, 3).Text;
        return car.RollingResistanceDoublesAt is { } doubles
            ? composition.Say("gearing.assumed.rolling_value", ("coefficient", coefficient), ("speed", composition.Figures.Speed(doubles).Both))
            : composition.Say("gearing.assumed.rolling_constant", ("coefficient", coefficient));
    }

    private static string Inertia(MassMomentOfInertia? inertia, Composition composition) => inertia is { } known
        ? composition.Say("gearing.assumed.inertia_figure", ("inertia", composition.Figures.Number(known.KilogramSquareMeters, 3).Text))
        : composition.Say("gearing.assumed.not_given");

    private static string Limits(GearingCase made, Composition composition)
    {
        string Shaft(RotationalSpeed? limit) => limit is { } known ? composition.Figures.Rpm(known).Text : composition.Say("gearing.assumed.unchecked");
        return composition.Say(
            "gearing.assumed.limits_value",
            ("propshaft", Shaft(made.Guards.Propshaft)),
            ("output", Shaft(made.Guards.GearboxOutput)),
            ("tyre", made.Setup.Tyre.SpeedSymbol is { } symbol ? composition.Figures.Speed(symbol.Limit).Both : composition.Say("gearing.assumed.unchecked")));
    }

    private static string Range(Eng.InputRange range, Composition composition) => composition.Say(
        "gearing.range." + range.Key,
        ("range", range.HalfWidth < 1 ? composition.Figures.Percent(range.HalfWidth, range.HalfWidth < 0.01 ? 1 : 0).Text : composition.Figures.Number(range.HalfWidth).Text));
}
