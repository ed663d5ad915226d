using Layshaft.Book.Records;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>Corner speeds of a car or an event against the venue.</summary>
internal static class CornerChecks
{
    public static void Run(Checker check, IReadOnlyList<CornerSpeeds> corners, Venue? venueOfAll)
    {
        var seen = new HashSet<(string?, string)>();
        foreach (var corner in corners)
        {
            var venue = venueOfAll ?? (check.Draft.Venues.Get(corner.Venue));
            if (venue is not null)
            {
                check.Names(corner.Corner, [.. venue.Straights.Select(s => s.Corner).Where(c => c != "finish")], corner.Origin.At("corner"), "corner", venue.Name);
            }

            if (!seen.Add((corner.Venue, corner.Corner)))
            {
                check.Problems.Add("corner-twice", corner.Origin.At("corner"), $"The speeds of '{corner.Corner}' are given twice.", "Remove one of them.");
            }

            if (corner is { CornerSpeed: null, ExitSpeed: null })
            {
                check.Problems.Add("no-corner-speed", corner.Origin.Place, $"'{corner.Corner}' has no speed.", "Add 'corner_speed: …' or 'exit_speed: …', or remove the entry.");
            }

            if (corner is { CornerSpeed: { } slowest, ExitSpeed: { } exit } && exit < slowest)
            {
                check.Problems.Add("exit-below-corner", corner.Origin.At("exit_speed"), $"The exit speed is below the slowest speed in '{corner.Corner}'.", "Write at least the corner speed.");
            }
        }
    }

    public static void Wind(Checker check, EventPlan plan, Venue venue)
    {
        if (plan is { WindFrom: not null, Wind: null })
        {
            check.Problems.Add("no-wind", plan.Origin.At("wind_from"), "The wind has a direction but no speed.", "Add 'wind: …', or remove 'wind_from'.");
        }

        if (plan is { WindFrom: not null, Wind: { } speed } && speed > Speed.Zero && venue.Straights.Where(s => s.Heading is null).Select(s => s.Name).ToArray() is { Length: > 0 } without)
        {
            check.Problems.Note("no-heading", plan.Origin.At("wind_from"), $"The wind is taken as a headwind on {string.Join(", ", without)}: {(without.Length == 1 ? "it has" : "they have")} no heading.", $"Add 'heading: …' to the straights of {venue.Name}.");
        }
    }
}
