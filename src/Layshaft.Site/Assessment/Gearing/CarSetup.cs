using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A car of the book as the gearing calculation takes it: checked figures.</summary>
/// <param name="Car">The car as written.</param>
/// <param name="Vehicle">Body, axles, shift time.</param>
/// <param name="Engine">The torque curve.</param>
/// <param name="Tyre">The driven tyre, new.</param>
public sealed record CarSetup(Car Car, Eng.Vehicle Vehicle, Eng.EngineCurve Engine, Eng.RollingTyre Tyre)
{
    private static readonly Speed GrowthGivenAt = Speed.FromKilometersPerHour(200);

    /// <summary>Takes a car over.</summary>
    /// <param name="car">The car as written.</param>
    /// <param name="files">The book's files, for a curve in a file of its own.</param>
    /// <param name="problems">Receives every figure that cannot be used, at its place.</param>
    /// <returns>The setup; null when a figure cannot be used.</returns>
    public static CarSetup? Of(Car car, IBookFiles files, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(problems);
        var faults = new FaultPlaces(problems);
        var vehicle = faults.Take(VehicleOf(car), subject => PlaceOfVehicle(car, subject));
        var engine = EngineOf(car, files, faults, problems);
        var tyre = TyreOf(car.Tyre, faults);
        if (car.LiftCoefficient > 0)
        {
            problems.Note("lift", car.Origin.At("lift_coefficient"), "Positive lift is not included in the gearing.", "Write downforce with a minus sign.");
        }

        return vehicle is null || engine is null || tyre is null ? null : new CarSetup(car, vehicle, engine, tyre);
    }

    private static Eng.Outcome<Eng.Vehicle> VehicleOf(Car car) => Eng.Vehicle.Create(new Eng.VehicleSpec
    {
        Mass = car.Mass,
        DragArea = car.FrontalArea * car.DragCoefficient,
        DownforceArea = car.FrontalArea * Math.Max(0, -(car.LiftCoefficient ?? 0)),
        DownforceDrivenShare = car.WeightOnDrivenAxle,
        RollingCoefficient = car.RollingResistance,
        RollingDoublesAt = car.RollingResistanceDoublesAt,
        DrivelineEfficiency = car.DrivelineEfficiency,
        WheelInertia = car.WheelInertia ?? default,
        EngineInertia = car.Engine.Inertia ?? default,
        DrivenAxle = car.DrivenAxle switch
        {
            DrivenAxle.Front => Eng.DrivenAxle.Front,
            DrivenAxle.All => Eng.DrivenAxle.Both,
            _ => Eng.DrivenAxle.Rear,
        },
        DrivenShare = car.WeightOnDrivenAxle,
        CentreOfGravityHeight = car.CentreOfGravityHeight,
        Wheelbase = car.Wheelbase,
        Grip = car.Grip,
        ShiftTime = car.ShiftTime,
    });

    private static Place PlaceOfVehicle(Car car, string subject) => subject switch
    {
        "drag_area" => car.Origin.At("drag_coefficient"),
        "downforce_area" => car.Origin.At("lift_coefficient"),
        "downforce_driven_share" or "driven_share" => car.Origin.At("weight_on_driven_axle"),
        "rolling_doubles_at" => car.Origin.At("rolling_resistance_doubles_at"),
        "rolling_coefficient" => car.Origin.At("rolling_resistance"),
        "engine_inertia" => car.Engine.Origin.At("inertia"),
        _ => car.Origin.At(subject),
    };

    private static Eng.EngineCurve? EngineOf(Car car, IBookFiles files, FaultPlaces faults, ProblemList problems)
    {
        var engine = car.Engine;
        var points = engine.CurveFile is { } file
            ? CurveFile.Read(files, $"cars/{file}", problems)
            : [.. engine.Curve.Select(p => new PlacedPoint(p.Origin.Place, p.At, p.Torque))];
        return points is null ? null : faults.Take(
            Eng.EngineCurve.Create([.. points.Select(p => new Eng.TorquePoint(p.At, p.Torque))], engine.Limit, engine.LowestUseful, engine.Launch),
            subject => subject switch
            {
                "limiter" => engine.Origin.At("limit"),
                "launch" => engine.Origin.At("launch"),
                "usable_from" => engine.Origin.At("lowest_useful"),
                _ => FaultPlaces.Index(subject) is { } i && i <= points.Count ? points[i - 1].Place : engine.Origin.At(engine.CurveFile is null ? "curve" : "curve_file"),
            });
    }

    private static Eng.RollingTyre? TyreOf(Tyre tyre, FaultPlaces faults)
    {
        Place At(string subject) => tyre.Origin.At(subject == "growth_at" ? "growth" : subject);
        var state = new Eng.RollingState { Slip = tyre.Slip, Growth = tyre.Growth, GrowthAt = GrowthGivenAt };
        if (faults.Take(Eng.TyreSize.Parse(tyre.Size), _ => tyre.Origin.At("size")) is not { } size)
        {
            return null;
        }

        return faults.Take(
            tyre.Circumference is { } measured ? Eng.RollingTyre.FromMeasured(measured, state, size) : Eng.RollingTyre.FromSize(size, state), At);
    }
}
