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
    double Grip,
    Acceleration Braking,
    Tyre Tyre,
    Engine Engine,
    double DrivelineEfficiency,
    Duration ShiftTime,
    MassMomentOfInertia? WheelInertia,
    RotationalSpeed? PropshaftLimit,
    bool Public) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Car> Shape { get; } = new("a car", "A car, as far as its gearing needs it.", f => new Car(
        string.Empty,
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("customer", Scalars.Id, "Whose it is."),
        f.List("earlier_customers", Scalars.Id, "Who had it before and so knows its figures: the gearing in their own earlier reports stays."),
        f.Optional("description", Scalars.Text, "What kind of car it is."),
        f.Required("mass", Quantities.Mass, "Mass ready to run, with driver and half the fuel."),
        f.Required("weight_on_driven_axle", Scalars.Part, "Share of the weight on the driven axle at rest."),
        f.Or("driven_axle", AxleWords, DrivenAxle.Rear, "Which wheels are driven."),
        f.Required("wheelbase", Quantities.Length, "Wheelbase."),
        f.Required("centre_of_gravity_height", Quantities.Length, "Height of the centre of gravity above the road."),
        f.Required("drag_coefficient", Scalars.PositiveNumber, "Drag coefficient on the frontal area."),
        f.Required("frontal_area", Quantities.Area, "Frontal area."),
        f.OptionalValue("lift_coefficient", Scalars.Number, "Lift coefficient on the frontal area; negative is downforce."),
        f.Or("rolling_resistance", Scalars.PositiveNumber, 0.015, "Rolling resistance coefficient."),
        f.Required("grip", Scalars.PositiveNumber, "Friction coefficient of the driven tyres."),
        f.Required("braking", Quantities.Acceleration, "Mean deceleration under braking."),
        f.Required("tyre", Tyre.Shape, "The driven tyres."),
        f.Required("engine", Engine.Shape, "The engine."),
        f.Required("driveline_efficiency", Scalars.Part, "Share of the engine's torque that reaches the wheels; an assumption that pages print."),
        f.Required("shift_time", Quantities.Duration, "Time without drive in an upshift."),
        f.OptionalValue("wheel_inertia", Quantities.Inertia, "All wheels with tyres and brakes together."),
        f.OptionalValue("propshaft_limit", Quantities.Rotation, "Fastest that the propshaft may turn."),
        f.Or("public", Scalars.YesNo, false, "Whether its owner agrees to a public reference page of its speeds; nothing else of it is shown there.")));

    private static ChoiceShape<DrivenAxle> AxleWords => new("the driven axle", ("rear", DrivenAxle.Rear), ("front", DrivenAxle.Front), ("all", DrivenAxle.All));
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
        f.Required("size", Scalars.Text, "The size code on the sidewall, such as 205/55R16 91V or 8.0/22.0-13."),
        f.OptionalValue("circumference", Quantities.Length, "Measured rolling circumference; it overrules the size code."),
        f.Or("growth", Scalars.Part, 0.0, "Growth of the circumference at 200 km/h."),
        f.Or("slip", Scalars.Part, 0.0, "Slip while driving hard."),
        f.OptionalValue("wear", Quantities.Length, "Loss of radius from new to worn out.")));
}

/// <summary>The engine.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Curve">Full-load torque; empty when a file holds it.</param>
/// <param name="CurveFile">A CSV file with columns rpm and torque in N·m.</param>
/// <param name="Limit">The rev limiter.</param>
/// <param name="LowestUseful">Below this the engine does not pull cleanly.</param>
/// <param name="Inertia">Crankshaft, flywheel and clutch.</param>
/// <param name="Corrected">Whether the curve was corrected to standard air (ISO 1585).</param>
public sealed record Engine(
    Origin Origin,
    string Name,
    IReadOnlyList<CurvePoint> Curve,
    string? CurveFile,
    RotationalSpeed Limit,
    RotationalSpeed? LowestUseful,
    MassMomentOfInertia? Inertia,
    bool Corrected) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Engine> Shape { get; } = new("the engine", "The engine.", f => new Engine(
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.List("curve", CurvePoint.Shape, "Full-load torque, slowest first."),
        f.Optional("curve_file", Scalars.FileName, "Instead of curve: a CSV file of a dyno run with the columns rpm and torque."),
        f.Required("limit", Quantities.Rotation, "The rev limiter."),
        f.OptionalValue("lowest_useful", Quantities.Rotation, "Below this the engine does not pull cleanly."),
        f.OptionalValue("inertia", Quantities.Inertia, "Crankshaft, flywheel and clutch."),
        f.Or("corrected", Scalars.YesNo, true, "Whether the curve was corrected to standard air (ISO 1585).")));
}

/// <summary>A point of a torque curve.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="At">Engine speed.</param>
/// <param name="Torque">Torque at full load.</param>
public sealed record CurvePoint(Origin Origin, RotationalSpeed At, Torque Torque) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<CurvePoint> Shape { get; } = new("a point of the curve", "A point of a torque curve.", f => new CurvePoint(
        f.Origin,
        f.Required("at", Quantities.Rotation, "Engine speed."),
        f.Required("torque", Quantities.Torque, "Torque at full load.")));
}
