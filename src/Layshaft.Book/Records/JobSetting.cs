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
    public static RecordShape<JobSetting> Shape { get; } = new("a setting of the job", "A setting as found and as built.", f => new JobSetting(
        f.Origin,
        f.Required("setting", Scalars.Id, "Which setting of the gearbox."),
        f.List("found_pack", Quantities.Length, "Thicknesses of the shims that came off."),
        f.List("found", Quantities.Measured, "The value as it came in."),
        f.List("trial_pack", Quantities.Length, "Thicknesses of the trial pack."),
        f.List("trial", Quantities.Measured, "The value with the trial pack."),
        f.List("pack", Quantities.Length, "Thicknesses of the shims that went in."),
        f.List("built", Quantities.Measured, "The value as it left."),
        f.Optional("instrument", Scalars.Id, "What it was measured with."),
        f.Optional("by", Scalars.Id, "Who set it: a technician's id."),
        f.Optional("note", Scalars.Text, "For the customer.")));
}
