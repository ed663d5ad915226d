using System.Globalization;
using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class VenueChecks
{
    public static void Run(Checker check, Venue venue)
    {
        var straights = venue.Straights;
        var sum = straights.Sum(s => s.Length.Meters);
        if (sum > venue.Length.Meters)
        {
            check.Problems.Add(
                "straights-too-long",
                venue.Origin.At("length"),
                string.Create(CultureInfo.InvariantCulture, $"The straights add up to {sum:0} m, which is longer than the venue."),
                "Check the lengths.");
        }

        for (var i = 0; i < straights.Count; i++)
        {
            var straight = straights[i];
            var previous = i > 0 ? straights[i - 1] : venue.Kind == VenueKind.Circuit ? straights[^1] : null;
            if (straight.ExitSpeed is null && (venue.Kind == VenueKind.Circuit || i > 0))
            {
                check.Problems.Add("no-exit-speed", straight.Origin.Place, $"'{straight.Name}' has no exit_speed.", "Add 'exit_speed: …'. Only the first straight of a hill climb has a standing start.");
            }

            if (straight.CornerSpeed is null && (venue.Kind == VenueKind.Circuit || i < straights.Count - 1))
            {
                check.Problems.Add("no-corner-speed", straight.Origin.Place, $"'{straight.Name}' has no corner_speed.", "Add 'corner_speed: …'. Only the last straight of a hill climb ends at a finish line.");
            }

            if (straight.ExitSpeed is { } exit && previous?.CornerSpeed is { } slowest && exit < slowest)
            {
                check.Problems.Add(
                    "exit-below-corner",
                    straight.Origin.At("exit_speed"),
                    $"The exit speed is below the slowest speed in '{previous.Corner}'.",
                    "Write at least the corner speed.");
            }
        }
    }
}
