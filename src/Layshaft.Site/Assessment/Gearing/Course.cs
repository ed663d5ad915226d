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
    internal static Eng.Venue? Of(Venue venue, CarSetup setup, EventPlan? plan, ProblemList problems)
    {
        var corners = CornerTaken.All(venue, setup, plan);
        return new FaultPlaces(problems).Take(
            Eng.Venue.Create(venue.Name, [.. venue.Straights.Select((s, i) => StraightOf(venue, i, setup.Car.Braking, corners))]), s => PlaceOf(venue, setup.Car, s));
    }

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

    private static Eng.Straight StraightOf(Venue venue, int index, Acceleration braking, IReadOnlyList<CornerTaken> corners)
    {
        var straight = venue.Straights[index];
        var before = index > 0 ? corners[index - 1] : venue.Kind == VenueKind.Circuit ? corners[^1] : null;
        var start = before?.Exit ?? straight.ExitSpeed ?? Speed.Zero;
        return new Eng.Straight
        {
            Name = straight.Name,
            Length = straight.Length,
            StartSpeed = start,
            EndSpeed = corners[index].Slowest ?? Speed.Zero,
            Braking = braking,

            // Over a finish line the throttle stays open.
            BrakingDistance = straight.CornerSpeed is null ? Length.Zero : null,
            Grade = straight.Grade,
            Heading = straight.Heading,
            CornerMinimum = before?.Slowest is { } slowest ? UnitMath.Min(slowest, start) : null,
        };
    }
}
