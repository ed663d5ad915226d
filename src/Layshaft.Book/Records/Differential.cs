using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Engineering.Settings.Differentials;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>A plate differential: what it can be built with, and what its breakaway and locking are calculated from.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Ramps">Ramps that the pressure rings offer.</param>
/// <param name="OuterDiameter">Outer diameter of the friction faces; null if not known.</param>
/// <param name="InnerDiameter">Inner diameter of the friction faces; null if not known.</param>
/// <param name="Friction">Coefficient of friction; null if not known.</param>
/// <param name="RampRadius">Radius at which the cross-pins bear on the ramps; null if not known.</param>
/// <param name="SpringRate">Rate of the preload spring; null if not known.</param>
public sealed record PlateDifferential(
    Origin Origin,
    IReadOnlyList<RampAngles> Ramps,
    Length? OuterDiameter,
    Length? InnerDiameter,
    double? Friction,
    Length? RampRadius,
    ForcePerLength? SpringRate) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<PlateDifferential> Shape { get; } = new("a plate differential", "A plate differential, alone or inside the gearbox.", f => new PlateDifferential(
        f.Origin,
        f.Required("ramps", new ListShape<RampAngles>(Scalars.RampAngles, atLeast: 1), "Ramp angles the pressure rings offer, drive/coast, each to the plane of rotation: 90° does not push, a smaller angle locks more."),
        f.OptionalValue("outer_diameter", Quantities.Length.Like("110 mm"), "Outer diameter of the friction faces."),
        f.OptionalValue("inner_diameter", Quantities.Length.Like("78 mm"), "Inner diameter of the friction faces."),
        f.OptionalValue("friction", Scalars.PositiveNumber.Like("0.10"), "Coefficient of friction of the plates in their oil."),
        f.OptionalValue("ramp_radius", Quantities.Length.Like("34 mm"), "Radius at which the cross-pins bear on the ramps."),
        f.OptionalValue("spring_rate", Quantities.SpringRate, "Rate of the preload spring at its fitted height.")));

    /// <summary>The pack that an order of plates makes; null if a size is missing or the plates do not rub anywhere.</summary>
    public PlatePack? PackOf(PlateSequence plates) =>
        OuterDiameter is { } outer && InnerDiameter is { } inner && Friction is { } friction && inner < outer && friction <= 1 && plates.Faces > 0
            ? new PlatePack(outer, inner, friction, plates.Faces)
            : null;
}

/// <summary>A plate differential in one job: as found and as built.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Found">As it came in.</param>
/// <param name="Built">As it left.</param>
/// <param name="Why">Why it was built that way, for the customer.</param>
public sealed record JobDifferential(Origin Origin, DifferentialBuild? Found, DifferentialBuild? Built, string? Why) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<JobDifferential> Shape { get; } = new("a job's differential", "A plate differential as found and as built.", f => new JobDifferential(
        f.Origin,
        f.Optional("found", DifferentialBuild.Shape, "As received."),
        f.Optional("built", DifferentialBuild.Shape, "As built."),
        f.Optional("why", Scalars.Text, "Why it was built this way, for the customer.")));
}

/// <summary>How a plate differential is built.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Ramps">Ramps in use.</param>
/// <param name="Plates">Order of the plates, the same on both sides.</param>
public sealed record DifferentialBuild(Origin Origin, RampAngles Ramps, PlateSequence Plates) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<DifferentialBuild> Shape { get; } = new("a differential build", "Ramps in use and order of the plates.", f => new DifferentialBuild(
        f.Origin,
        f.Required("ramps", Scalars.RampAngles, "Ramp angles in use, drive/coast."),
        f.Required("plates", Scalars.PlateSequence, "Plates of one side from the pressure ring to the cover: O turns with the case, I with the side gear. Both sides are alike.")));
}
