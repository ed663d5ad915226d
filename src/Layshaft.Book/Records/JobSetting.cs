using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>A setting of a job: as found, and as built.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Setting">Which setting of the gearbox.</param>
/// <param name="FoundPack">Thicknesses of the shims that came off.</param>
/// <param name="Found">The value as it came in.</param>
/// <param name="TrialPack">Thicknesses of the trial pack.</param>
/// <param name="Trial">The value with the trial pack.</param>
/// <param name="Pack">Thicknesses of the shims that went in.</param>
/// <param name="Built">The value as it left: one reading or several.</param>
/// <param name="Instrument">What it was measured with.</param>
/// <param name="By">Who set it.</param>
/// <param name="Note">For the customer.</param>
public sealed record JobSetting(
    Origin Origin,
    string Setting,
    IReadOnlyList<Length> FoundPack,
    IReadOnlyList<IQuantity> Found,
    IReadOnlyList<Length> TrialPack,
    IReadOnlyList<IQuantity> Trial,
    IReadOnlyList<Length> Pack,
    IReadOnlyList<IQuantity> Built,
    string? Instrument,
    string? By,
    string? Note) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<JobSetting> Shape { get; } = new("a job setting", "A setting as found and as built.", f => new JobSetting(
        f.Origin,
        f.Required("setting", Scalars.Id.Like("lay-float"), "Setting: its id in the gearbox file."),
        f.List("found_pack", Quantities.Length.Like("0.50 mm"), "Thicknesses of the removed shims."),
        f.Optional("found", Values("0.16 mm"), "Value as received.") ?? [],
        f.List("trial_pack", Quantities.Length.Like("0.50 mm"), "Shim thicknesses of the trial pack."),
        f.Optional("trial", Values("0.16 mm"), "Value with the trial pack.") ?? [],
        f.List("pack", Quantities.Length.Like("0.50 mm"), "Thicknesses of the fitted shims."),
        f.Optional("built", Values("0.08 mm"), "Value as built.") ?? [],
        f.Optional("instrument", Scalars.Id.Like("mic-25"), "Instrument: its id in shop.yaml. Default for values without a unit: the setting's instrument."),
        f.Optional("by", Scalars.Id.Like("tomas"), "Technician who set it: an id in shop.yaml."),
        f.Optional("note", Scalars.Text, "Note to the customer.")));

    /// <summary>How the short form is written: each setting with its value as built.</summary>
    public static NamedShape<IReadOnlyList<IQuantity>> BuiltShape { get; } = new("lines of setting and value", new ReadingsOrNone());

    private static ReadingsOrNone Values(string example) => new(example);
}
