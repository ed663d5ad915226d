using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>Units of speed for the pages.</summary>
public enum SpeedUnit
{
    /// <summary>Kilometres an hour.</summary>
    KilometresPerHour,

    /// <summary>Miles an hour.</summary>
    MilesPerHour,
}

/// <summary>Units of small lengths for the pages.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Inches.</summary>
    Inches,

    /// <summary>Thousandths of an inch.</summary>
    Thousandths,
}

/// <summary>Units of torque for the pages.</summary>
public enum TorqueUnit
{
    /// <summary>Newton metres.</summary>
    NewtonMetres,

    /// <summary>Pound-force feet.</summary>
    PoundForceFeet,
}

/// <summary>Which units come first on the pages.</summary>
/// <param name="Speed">Of road speeds.</param>
/// <param name="Length">Of small lengths.</param>
/// <param name="Torque">Of torques.</param>
public sealed record ShownUnits(SpeedUnit Speed, LengthUnit Length, TorqueUnit Torque)
{
    /// <summary>SI.</summary>
    public static ShownUnits Usual { get; } = new(SpeedUnit.KilometresPerHour, LengthUnit.Millimetres, TorqueUnit.NewtonMetres);

    /// <summary>How it is written.</summary>
    public static RecordShape<ShownUnits> Shape { get; } = new("a choice of units", "Units shown first on the pages.", f => new ShownUnits(
        f.Or("speed", new ChoiceShape<SpeedUnit>("a unit of speed", ("km/h", SpeedUnit.KilometresPerHour), ("mph", SpeedUnit.MilesPerHour)), SpeedUnit.KilometresPerHour, "Unit of road speeds. Default: km/h."),
        f.Or("length", new ChoiceShape<LengthUnit>("a unit of length", ("mm", LengthUnit.Millimetres), ("in", LengthUnit.Inches), ("thou", LengthUnit.Thousandths)), LengthUnit.Millimetres, "Unit of small lengths; thou are thousandths of an inch. Default: mm."),
        f.Or("torque", new ChoiceShape<TorqueUnit>("a unit of torque", ("N·m", TorqueUnit.NewtonMetres), ("lbf·ft", TorqueUnit.PoundForceFeet)), TorqueUnit.NewtonMetres, "Unit of torques. Default: N·m.")));
}
