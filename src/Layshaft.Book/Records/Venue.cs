using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>What kind of venue it is.</summary>
public enum VenueKind
{
    /// <summary>A circuit: laps.</summary>
    Circuit,

    /// <summary>A hill climb or sprint: from a standing start, once.</summary>
    HillClimb,
}

/// <summary>A circuit or hill: file <c>venues/ID.yaml</c>.</summary>
/// <param name="Id">The file's name.</param>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Kind">Circuit or hill.</param>
/// <param name="Length">Of a lap or run.</param>
/// <param name="Altitude">Above sea level.</param>
/// <param name="Straights">In driving order.</param>
public sealed record Venue(string Id, Origin Origin, string Name, VenueKind Kind, Length Length, Length Altitude, IReadOnlyList<Straight> Straights) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Venue> Shape { get; } = new("a venue", "A circuit or hill.", f => new Venue(
        string.Empty,
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Or("kind", new ChoiceShape<VenueKind>("a kind of venue", ("circuit", VenueKind.Circuit), ("hill climb", VenueKind.HillClimb)), VenueKind.Circuit, "Circuit or hill climb. Default: circuit."),
        f.Required("length", Quantities.Length.Like("3.2 km"), "Length of a lap or run."),
        f.Or("altitude", Quantities.AnyLength.Like("120 m"), UnitsNet.Length.Zero, "Altitude above sea level. Default: 0 m."),
        f.Required("straights", new ListShape<Straight>(Straight.Shape, atLeast: 1, atMost: 60, whole: true), "Straights in driving order.")));
}

/// <summary>A straight: from the exit of one corner to the slowest point of the next.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="ExitSpeed">Speed at which full throttle begins; null for a standing start.</param>
/// <param name="Length">From there to the slowest point of the next corner.</param>
/// <param name="Corner">The corner at its end.</param>
/// <param name="CornerSpeed">Slowest speed in that corner; null when the run ends at a finish line.</param>
/// <param name="CornerRadius">Radius of the line through that corner; null if it is not known.</param>
/// <param name="Grade">Mean gradient as a fraction, uphill positive.</param>
/// <param name="Heading">Compass direction of travel; null if it is not known.</param>
public sealed record Straight(Origin Origin, string Name, Speed? ExitSpeed, Length Length, string Corner, Speed? CornerSpeed, Length? CornerRadius, double Grade, Angle? Heading) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Straight> Shape { get; } = new("a straight", "From the exit of one corner to the slowest point of the next.", f => new Straight(
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.OptionalValue("exit_speed", Quantities.Speed.Like("92 km/h"), "Speed at which full throttle begins. Omit it for a standing start."),
        f.Required("length", Quantities.Length.Like("640 m"), "Length from there to the slowest point of the next corner."),
        f.Required("corner", Scalars.Text, "Name of the corner at its end, or 'finish'."),
        f.OptionalValue("corner_speed", Quantities.Speed.Like("78 km/h"), "Slowest speed in that corner. Omit it at a finish line."),
        f.OptionalValue("corner_radius", Quantities.Length.Like("42 m"), "Radius of the line through that corner. The slowest speed then follows from each car's grip and downforce, its exit speed in proportion."),
        f.Or("grade", Scalars.Share.Like("-1.5 %"), 0.0, "Mean gradient, uphill positive. Default: 0 %."),
        f.OptionalValue("heading", Quantities.Compass.Like("85°"), "Compass direction of travel, for the wind.")));
}
