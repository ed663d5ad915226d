using System.Globalization;
using Layshaft.Book.Places;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

/// <summary>Days that are far from all others, as a slip in the year makes them. All are notes: a gearbox may wait for years.</summary>
internal static class DateChecks
{
    // A visit with its estimate, answer and next event is over within a year; the day to come back may be years off (common practice, no source).
    private const int LongestVisitDays = 365;
    private const int LongestToComeBackDays = 4 * 365;

    /// <summary>The days of the shop's instruments and of units against the year of the latest job.</summary>
    public static void Standing(Checker check)
    {
        if (BookLayout.LatestYear(check.Draft.Files) is not { } latest)
        {
            return;
        }

        foreach (var instrument in check.Draft.Shop?.Instruments ?? [])
        {
            FarAhead(check, instrument.Calibrated, latest, instrument.Origin.At("calibrated"));
        }

        foreach (var unit in check.Draft.Units.Records.Values)
        {
            FarAhead(check, unit.InService, latest, unit.Origin.At("in_service"));
            foreach (var owner in unit.Owners)
            {
                FarAhead(check, owner.From, latest, owner.Origin.At("from"));
            }
        }
    }

    /// <summary>The days of a job against its folder's year, the day the gearbox came in and each other.</summary>
    public static void Run(Checker check, Job job, Unit? unit)
    {
        if (BookLayout.YearOf(job.Folder) is { } year && Math.Abs(job.Received.Year - year) > 1)
        {
            Note(check, job.Origin.At("received"), string.Create(CultureInfo.InvariantCulture, $"The job is in jobs/{year}/, but the unit was received on {Checker.Day(job.Received)}."));
            return;
        }

        Late(check, job, job.Stripped, job.Origin.At("stripped"));
        Late(check, job, job.Finished, job.Origin.At("finished"));
        Late(check, job, job.Collected, job.Origin.At("collected"));
        foreach (var offer in job.Offers)
        {
            Late(check, job, offer.Sent, offer.Origin.At("sent"));
            Late(check, job, offer.ValidUntil, offer.Origin.At("valid_until"));
            if (offer.GoAhead is { } answer)
            {
                Late(check, job, answer.On, answer.Origin.At("on"));
            }
        }

        if (job.ComeBack is { } back)
        {
            Late(check, job, back.By, back.Origin.At("by"), LongestToComeBackDays);
        }

        List(check, job, job.StripList);
        List(check, job, job.BuildList);
        Events(check, job, unit);
    }

    private static void List(Checker check, Job job, ListTicks? ticks)
    {
        if (ticks?.On is not { } day)
        {
            return;
        }

        var place = ticks.Origin.At("on");
        Late(check, job, day, place);
        if (day < job.Received)
        {
            Note(check, place, $"The list was signed on {Checker.Day(day)}, before the unit was received ({Checker.Day(job.Received)}).");
        }
        else if (day > job.Finished)
        {
            Note(check, place, $"The list was signed on {Checker.Day(day)}, after the job was finished ({Checker.Day(job.Finished.Value)}).");
        }
    }

    private static void Events(Checker check, Job job, Unit? unit)
    {
        if (job.LastEvent is { On: { } last } before)
        {
            var place = before.Origin.At("on");
            if (last > job.Received)
            {
                Note(check, place, $"The last event ({Checker.Day(last)}) is after the unit was received ({Checker.Day(job.Received)}).");
            }
            else if (last < unit?.InService && unit.UseAtStart.Amount == 0)
            {
                Note(check, place, $"The last event ({Checker.Day(last)}) is before the unit entered service ({Checker.Day(unit.InService)}).");
            }
        }

        if (job.NextEvent is { On: { } next } after)
        {
            var place = after.Origin.At("on");
            Late(check, job, next, place);
            if (next < job.Received)
            {
                Note(check, place, $"The next event ({Checker.Day(next)}) is before the unit was received ({Checker.Day(job.Received)}).");
            }
        }
    }

    private static void Late(Checker check, Job job, DateOnly? day, Place place, int most = LongestVisitDays)
    {
        if (day is { } at && at.DayNumber - job.Received.DayNumber > most)
        {
            Note(check, place, $"{Checker.Day(at)} is {Span(at.DayNumber - job.Received.DayNumber)} after the unit was received ({Checker.Day(job.Received)}).");
        }
    }

    private static void FarAhead(Checker check, DateOnly day, int latest, Place place)
    {
        if (day.Year > latest + 1)
        {
            Note(check, place, string.Create(CultureInfo.InvariantCulture, $"{Checker.Day(day)} is more than a year after the latest job (jobs/{latest}/)."));
        }
    }

    private static string Span(int days) => days < 2 * 365
        ? string.Create(CultureInfo.InvariantCulture, $"{days} days")
        : string.Create(CultureInfo.InvariantCulture, $"{days / 365} years");

    private static void Note(Checker check, Place place, string message) => check.Problems.Note("unlikely-date", place, message, "Check the year.");
}
