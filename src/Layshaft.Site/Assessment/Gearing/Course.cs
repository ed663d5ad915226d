using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A venue as one car drives it: the book's straights with that car's braking.</summary>
public static class Course
{
    /// <summary>Takes a venue over; null when a figure cannot be used, which the problems then tell.</summary>
    internal static Eng.Venue? Of(Venue venue, Car car, ProblemList problems) =>
        new FaultPlaces(problems).Take(Eng.Venue.Create(venue.Name, [.. venue.Straights.Select((s, i) => StraightOf(venue, i, car.Braking))]), s => PlaceOf(venue, car, s));

    /// <summary>The corner before a straight; null before a standing start.</summary>
    public static string? CornerBefore(Venue venue, string straight)
    {
        for (var i = 0; i < venue.Straights.Count; i++)
        {
            if (venue.Straights[i].Name == straight)
            {
                return i > 0 ? venue.Straights[i - 1].Corner : venue.Kind == VenueKind.Circuit ? venue.Straights[^1].Corner : null;
            }
        }

        return null;
    }

    /// <summary>Where a straight's figure stands.</summary>
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

    private static Eng.Straight StraightOf(Venue venue, int index, Acceleration braking)
    {
        var straight = venue.Straights[index];
        var before = index > 0 ? venue.Straights[index - 1] : venue.Kind == VenueKind.Circuit ? venue.Straights[^1] : null;
        var start = straight.ExitSpeed ?? Speed.Zero;
        return new Eng.Straight
        {
            Name = straight.Name,
            Length = straight.Length,
            StartSpeed = start,
            EndSpeed = straight.CornerSpeed ?? Speed.Zero,
            Braking = braking,

            // Over a finish line the throttle stays open.
            BrakingDistance = straight.CornerSpeed is null ? Length.Zero : null,
            Grade = straight.Grade,
            CornerMinimum = before?.CornerSpeed is { } slowest ? UnitMath.Min(slowest, start) : null,
        };
    }
}
