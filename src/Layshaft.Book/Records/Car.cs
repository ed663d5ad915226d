using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>Which wheels are driven.</summary>
public enum DrivenAxle
{
    /// <summary>The rear wheels.</summary>
    Rear,

    /// <summary>The front wheels.</summary>
    Front,

    /// <summary>All wheels.</summary>
    All,
}

/// <summary>A car: file <c>cars/ID.yaml</c>.</summary>
public sealed record Car(
    string Id,
    Origin Origin,
    string Name,
    string Customer,
    IReadOnlyList<string> EarlierCustomers,
    string? Description,
    Mass Mass,
    double WeightOnDrivenAxle,
    DrivenAxle DrivenAxle,
    Length Wheelbase,
    Length CentreOfGravityHeight,
    double DragCoefficient,
    Area FrontalArea,
    double? LiftCoefficient,
    double RollingResistance,
    Speed? RollingResistanceDoublesAt,
    double Grip,
    Acceleration Braking,
    Tyre Tyre,
    Engine Engine,
    double DrivelineEfficiency,
    double? AxleEfficiency,
    Duration ShiftTime,
    MassMomentOfInertia? WheelInertia,
    RotationalSpeed? PropshaftLimit,
    IReadOnlyList<CornerSpeeds> Corners,
    TraceColumns? TraceColumns,
    bool Public) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Car> Shape { get; } = new("a car", "A car, with the values its gearing needs.", f => new Car(
        string.Empty,
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("customer", Scalars.Id.Like("penhallow"), "Owner: a file in customers/, without .yaml."),
        f.List("earlier_customers", Scalars.Id.Like("vass"), "Previous owners. The gearing in their own reports is kept."),
        f.Optional("description", Scalars.Text, "Description of the car."),
        f.Required("mass", Quantities.Mass.Like("1150 kg"), "Mass with driver and half the fuel."),
        f.Required("weight_on_driven_axle", Scalars.Part.Like("53 %"), "Share of the weight on the driven axle at rest."),
        f.Or("driven_axle", AxleWords, DrivenAxle.Rear, "Driven axle."),
        f.Required("wheelbase", Quantities.Length.Like("2.55 m"), "Wheelbase."),
        f.Required("centre_of_gravity_height", Quantities.Length.Like("0.46 m"), "Height of the centre of gravity above the road."),
        f.Required("drag_coefficient", Scalars.PositiveNumber.Like("0.37"), "Drag coefficient, relative to the frontal area."),
        f.Required("frontal_area", Quantities.Area.Like("2.04 m²"), "Frontal area."),
        f.OptionalValue("lift_coefficient", Scalars.Number.Like("-0.15"), "Lift coefficient, relative to the frontal area. Negative is downforce."),
        f.Or("rolling_resistance", Scalars.PositiveNumber.Like("0.015"), 0.015, "Rolling resistance coefficient. Default: 0.015."),
        f.OptionalValue("rolling_resistance_doubles_at", Quantities.Speed.Like("160 km/h"), "Speed at which the rolling resistance is twice that at walking pace; it grows in proportion. Default: the same at every speed."),
        f.Required("grip", Scalars.PositiveNumber.Like("1.25"), "Friction coefficient of the driven tyres."),
        f.Required("braking", Quantities.Acceleration.Like("10.8 m/s²"), "Mean deceleration under braking."),
        f.Required("tyre", Tyre.Shape, "The driven tyres."),
        f.Required("engine", Engine.Shape, "The engine."),
        f.Required("driveline_efficiency", Scalars.Part.Like("89 %"), "Driveline efficiency: share of the engine torque that reaches the wheels. Pages state it as an assumption."),
        f.OptionalValue("axle_efficiency", Scalars.Part.Like("96 %"), "Efficiency of the final drive alone. With the gearbox's mesh_efficiency it replaces driveline_efficiency."),
        f.Required("shift_time", Quantities.Duration.Like("90 ms"), "Shift time: time without drive during an upshift."),
        f.OptionalValue("wheel_inertia", Quantities.Inertia.Like("4.6 kg·m²"), "Moment of inertia of all wheels with tyres and brakes."),
        f.OptionalValue("propshaft_limit", Quantities.Rotation.Like("8400 rpm"), "Maximum speed of the propshaft."),
        f.List("corners", CornerSpeeds.OfCar, "Measured corner speeds of this car, venue by venue. The venue's own speeds apply to the other corners."),
        f.Optional("trace_columns", Records.TraceColumns.Shape, "How the CSV files of its data logger are laid out."),
        f.Or("public", Scalars.YesNo, false, "Whether the owner agrees to a public page of its speeds. The page shows nothing else about the car. Default: no.")));

    private static ChoiceShape<DrivenAxle> AxleWords => new("a driven axle", ("rear", DrivenAxle.Rear), ("front", DrivenAxle.Front), ("all", DrivenAxle.All));
}

/// <summary>The driven tyres.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Size">The size code on the sidewall.</param>
/// <param name="Circumference">Measured rolling circumference, which overrules the size code.</param>
/// <param name="Growth">Growth of the circumference at 200 km/h, as a fraction.</param>
/// <param name="Slip">Slip while driving hard, as a fraction.</param>
/// <param name="Wear">Loss of radius from new to worn out, for the ranking's worn-tyre case.</param>
public sealed record Tyre(Origin Origin, string Size, Length? Circumference, double Growth, double Slip, Length? Wear) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Tyre> Shape { get; } = new("the tyres", "The driven tyres.", f => new Tyre(
        f.Origin,
        f.Required("size", Scalars.Text, "Size code on the sidewall, such as 205/55R16 91V or 8.0/22.0-13."),
        f.OptionalValue("circumference", Quantities.Length.Like("1.936 m"), "Measured rolling circumference; takes precedence over the size code."),
        f.Or("growth", Scalars.Part.Like("0.4 %"), 0.0, "Growth of the circumference at 200 km/h. Default: 0 %."),
        f.Or("slip", Scalars.Part.Like("3.5 %"), 0.0, "Slip at the limit of grip. Less force means less slip. Default: 0 %."),
        f.OptionalValue("wear", Quantities.Length.Like("4 mm"), "Loss of radius from new to worn out.")));
}

/// <summary>The engine.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Curve">Full-load torque; empty when a file holds it.</param>
/// <param name="CurveFile">A CSV file with columns rpm and torque in N·m.</param>
/// <param name="Limit">The rev limiter.</param>
/// <param name="LowestUseful">Below this the engine does not pull cleanly.</param>
/// <param name="Launch">Engine speed at a standing start, while the clutch slips.</param>
/// <param name="Inertia">Crankshaft, flywheel and clutch.</param>
/// <param name="Corrected">Whether the curve was corrected to standard air (ISO 1585).</param>
public sealed record Engine(
    Origin Origin,
    string Name,
    IReadOnlyList<CurvePoint> Curve,
    string? CurveFile,
    RotationalSpeed Limit,
    RotationalSpeed? LowestUseful,
    RotationalSpeed? Launch,
    MassMomentOfInertia? Inertia,
    bool Corrected) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Engine> Shape { get; } = new("the engine", "The engine.", f => new Engine(
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.List("curve", CurvePoint.Shape, "Full-load torque curve, lowest engine speed first."),
        f.Optional("curve_file", Scalars.FileName.Like("dyno-run.csv"), "Instead of curve: a CSV file of a dyno run with the columns rpm and torque."),
        f.Required("limit", Quantities.Rotation.Like("8200 rpm"), "Rev limiter."),
        f.OptionalValue("lowest_useful", Quantities.Rotation.Like("4500 rpm"), "Lowest engine speed at which the engine pulls cleanly."),
        f.OptionalValue("launch", Quantities.Rotation.Like("6200 rpm"), "Engine speed at a standing start, while the clutch slips. Default: lowest_useful, else the speed of maximum torque."),
        f.OptionalValue("inertia", Quantities.Inertia.Like("0.095 kg·m²"), "Moment of inertia of crankshaft, flywheel and clutch."),
        f.Or("corrected", Scalars.YesNo, true, "Whether the curve was corrected to standard air (ISO 1585). Default: yes.")));
}

/// <summary>A point of a torque curve.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="At">Engine speed.</param>
/// <param name="Torque">Torque at full load.</param>
public sealed record CurvePoint(Origin Origin, RotationalSpeed At, Torque Torque) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<CurvePoint> Shape { get; } = new("a curve point", "A point of a torque curve.", f => new CurvePoint(
        f.Origin,
        f.Required("at", Quantities.Rotation.Like("5500 rpm"), "Engine speed."),
        f.Required("torque", Quantities.Torque.Like("234 N·m"), "Torque at full load.")));
}
