using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>Which side of a tooth or dog.</summary>
public enum Flank
{
    /// <summary>The side that pulls.</summary>
    Drive,

    /// <summary>The side that holds the car back on the overrun.</summary>
    Coast,
}

/// <summary>What was seen or measured on one part in one job.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Part">Which part of the gearbox.</param>
/// <param name="Flank">Which side of tooth or dog.</param>
/// <param name="Position">Where on the part.</param>
/// <param name="Measurements">What was measured.</param>
/// <param name="Conditions">The damage seen, in the standards' words.</param>
/// <param name="Grade">The technician's grade; null for what the policy says.</param>
/// <param name="Reason">Why the technician's grade differs from the policy's.</param>
/// <param name="Action">What was decided.</param>
/// <param name="LeftIn">Why a part graded renew, or past its service life, went back in, for the customer.</param>
/// <param name="Sentence">One sentence for the customer.</param>
/// <param name="IfLeft">What happens if it is left.</param>
/// <param name="Photos">Files of pictures that show it.</param>
/// <param name="InternalNote">For the shop only.</param>
public sealed record Finding(
    Origin Origin,
    string Part,
    Flank? Flank,
    string? Position,
    IReadOnlyList<Measurement> Measurements,
    IReadOnlyList<string> Conditions,
    Grade? Grade,
    string? Reason,
    string? Action,
    string? LeftIn,
    string? Sentence,
    string? IfLeft,
    IReadOnlyList<string> Photos,
    string? InternalNote) : IPlaced
{
    /// <summary>A side of the tooth or dog.</summary>
    public static ChoiceShape<Flank> SideShape { get; } = new("a side", ("drive", Records.Flank.Drive), ("coast", Records.Flank.Coast));

    /// <summary>The technician's grade.</summary>
    public static ChoiceShape<Grade> GradeShape { get; } = new("a grade", ("reuse", Engineering.Measurement.Grade.Reuse), ("watch", Engineering.Measurement.Grade.Watch), ("renew", Engineering.Measurement.Grade.Renew));

    /// <summary>Whether the action says that the part was renewed.</summary>
    public bool IsRenewed => Action is { } action && action.StartsWith("renewed", StringComparison.OrdinalIgnoreCase);

    /// <summary>How it is written.</summary>
    public static RecordShape<Finding> Shape { get; } = new("a finding", "What was seen or measured on one part.", f => new Finding(
        f.Origin,
        f.Required("part", Scalars.Id, "Inspected part: its id in the gearbox file."),
        f.OptionalValue("side", SideShape, "Side of the tooth or dog: drive or coast."),
        f.Optional("position", Scalars.Text, "Position on the part."),
        f.List("measurements", Measurement.Shape, "Measurements of the part."),
        f.List("conditions", DamageTerms.Shape, "Damage seen, as terms of the glossary."),
        f.OptionalValue("grade", GradeShape, "The technician's grade. Default: the grade by the part's grading policy."),
        f.Optional("reason", Scalars.Text, "Why the technician's grade differs from the policy."),
        f.Optional("action", Scalars.Text, "Decision, such as 'renewed' or 'corners dressed, refitted'."),
        f.Optional("left_in", Scalars.Text, "Why a part graded renew, or past its service life, was refitted. Printed on the report."),
        f.Optional("sentence", Scalars.Text, "One plain sentence for the customer."),
        f.Optional("if_left", Scalars.Text, "What happens if nothing is done."),
        f.List("photos", Scalars.FileName.Like("ring-2.jpg"), "Photos of the finding: files in photos/."),
        f.Optional("internal_note", Scalars.Text, "Internal note; never on a customer's page.")));
}

/// <summary>Readings of one measure.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Measure">Which measure of the part.</param>
/// <param name="Instrument">What it was measured with.</param>
/// <param name="Readings">One or more.</param>
public sealed record Measurement(Origin Origin, string Measure, string? Instrument, IReadOnlyList<IQuantity> Readings) : IPlaced
{
    /// <summary>Most readings of one measure.</summary>
    public const int MostReadings = 60;

    /// <summary>How it is written.</summary>
    public static RecordShape<Measurement> Shape { get; } = new("a measurement", "Readings of one measure of the part.", f => new Measurement(
        f.Origin,
        f.Required("measure", Scalars.Id.Like("radius-1"), "Measure of the part: its id in the gearbox file."),
        f.Optional("instrument", Scalars.Id.Like("mic-25"), "Instrument: its id in shop.yaml. Default for readings without a unit: the measure's instrument."),
        f.Required("readings", new OneOrMoreShape<IQuantity>(Quantities.Reading.Like("3.92 mm"), MostReadings), "One reading, or several repeated readings.")));
}
