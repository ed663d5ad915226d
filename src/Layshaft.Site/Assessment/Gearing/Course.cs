using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A venue as one car drives it: the book's straights with that car's braking, joined over the corners that it takes flat.</summary>
/// <param name="Book">The venue as written.</param>
/// <param name="Venue">The straights as they are calculated.</param>
/// <param name="Corners">Every corner as this car takes it, in the order of the book's straights that lead to them.</param>
/// <param name="Ends">The corner at the end of each calculated straight, as its index among <paramref name="Corners"/>.</param>
public sealed record Course(Venue Book, Eng.Venue Venue, IReadOnlyList<CornerTaken> Corners, IReadOnlyList<int> Ends)
{
    /// <summary>Takes a venue over; null when a figure cannot be used, which the problems then tell.</summary>
    /// <param name="venue">The venue.</param>
    /// <param name="setup">The car.</param>
    /// <param name="plan">The event; null for none.</param>
    /// <param name="shortest">The car with its shortest gears, which comes to its greatest speed first.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    internal static Course? Of(Venue venue, CarSetup setup, EventPlan? plan, Eng.Car shortest, ProblemList problems)
    {
        CornerTaken[] corners = [.. CornerTaken.All(venue, setup, plan)];
        var groups = new FlatCorners(venue, setup.Car.Braking, shortest).Join(corners);
        Eng.Straight[] straights = [.. groups.Select(g => FlatCorners.StraightOf(venue, g, setup.Car.Braking, corners))];
        return new FaultPlaces(problems).Take(Eng.Venue.Create(venue.Name, straights), s => PlaceOf(venue, setup.Car, s)) is { } course
            ? new Course(venue, course, corners, [.. groups.Select(g => g[^1])])
            : null;
    }

    /// <summary>The corner before a calculated straight; null before a standing start.</summary>
    public CornerTaken? Before(Eng.Straight straight)
    {
        for (var i = 0; i < Venue.Straights.Count; i++)
        {
            if (ReferenceEquals(Venue.Straights[i], straight))
            {
                return Before(i);
            }
        }

        return null;
    }

    /// <summary>The corner before the calculated straight with this index; null before a standing start.</summary>
    public CornerTaken? Before(int straight) => straight > 0 ? Corners[Ends[straight - 1]] : Book.Kind == VenueKind.Circuit ? Corners[Ends[^1]] : null;

    /// <summary>The place of a straight's figure.</summary>
    internal static Place PlaceOf(Venue venue, Car car, string subject)
    {
        foreach (var straight in venue.Straights.Where(s => subject.StartsWith(s.Name, StringComparison.Ordinal)).OrderByDescending(s => s.Name.Length))
        {
            return subject[straight.Name.Length..] switch
            {
                ".start_speed" => straight.Origin.At("exit_speed"),
                ".end_speed" or ".corner_minimum" => straight.Origin.At("corner_speed"),
                ".grade" => straight.Origin.At("grade"),
                ".braking" => car.Origin.At("braking"),
                _ => straight.Origin.At("length"),
            };
        }

        return venue.Origin.At("straights");
    }
}
