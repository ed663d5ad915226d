using Layshaft.Engineering.Traces;
using Layshaft.Site.Assessment.Traces;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What the car itself recorded at its last event.</summary>
/// <param name="Lead">Where it was recorded, and how much.</param>
/// <param name="Lines">What wore the dogs, and what else stands out.</param>
/// <param name="Note">The workshop's words to go with it; null for none.</param>
/// <param name="Chart">The best lap; null without a whole lap.</param>
/// <param name="ChartWords">What the chart shows.</param>
public sealed record TraceSection(string Lead, IReadOnlyList<string> Lines, string? Note, RawHtml? Chart, string? ChartWords)
{
    private const int MostShifts = 2;

    /// <summary>Composes the section; null for another owner's job, or without a trace that can be read.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (!report.IsOwn || report.Job.Trace is not { } trace || report.Composition.Assessment.Gearing.TraceOf(report.Job) is not { } reading)
        {
            return null;
        }

        var composition = report.Composition;
        var seen = reading.Figures;
        var name = report.Job.LastEvent is { } last ? last.Name ?? composition.Book.Venues[last.Venue].Name : reading.Setup.Car.Name;
        (string, object)[] values =
        [
            ("event", name),
            ("distance", composition.Figures.LongDistance(seen.Distance).Text),
            ("rate", composition.Figures.Number(seen.Rows / Math.Max(seen.Recorded.Seconds, 1e-3)).Text),
        ];
        var lead = seen.Laps.Count > 0
            ? composition.Say("trace.lead", [.. values, ("laps", composition.Figures.Number(seen.Laps.Count).Text)])
            : composition.Say("trace.lead_no_laps", values);
        return new SectionView(
            "trace",
            composition.Say("trace.heading"),
            "sections/trace.html",
            new TraceSection(lead, [.. LinesOf(reading, composition)], trace.Note, TraceDrawing.Of(reading, composition), TraceDrawing.WordsOf(reading, composition)));
    }

    private static IEnumerable<string> LinesOf(TraceReading reading, Composition composition)
    {
        var seen = reading.Figures;
        if (!seen.GearFit.IsFound)
        {
            yield return composition.Say("trace.gears_not_found");
            yield break;
        }

        if (!reading.Check.IsAsExpected)
        {
            yield return composition.Say("trace.gears_differ", ("gears", GearingWords.Short(reading.Fitted, composition)));
        }

        foreach (var shift in reading.Shifts.Where(s => s.Unmatched > 0).OrderByDescending(s => s.Energy?.Joules ?? s.Unmatched).Take(MostShifts))
        {
            var (worst, engagement) = (shift.Greatest!, shift.Greatest!.Engagement!);
            yield return composition.Say(
                "trace.unmatched",
                ("from", GearWords.Of(shift.From, composition)),
                ("to", GearWords.Of(shift.To, composition)),
                ("count", composition.Figures.Number(shift.Unmatched).Text),
                ("seen", composition.Figures.Number(shift.EngagementsSeen).Text),
                ("difference", composition.Figures.Number(Math.Round(Math.Abs(engagement.Difference.RevolutionsPerMinute), MidpointRounding.AwayFromZero)).Text),
                ("uncertainty", composition.Figures.Rpm(engagement.Uncertainty).Text),
                ("place", Where(worst.At, reading, composition)));
        }

        if (seen.Shifts.Count > 0 && seen.Shifts.All(s => s.Engagement is null))
        {
            yield return composition.Say("trace.no_dogs");
        }
        else if (reading.Shifts.All(s => s.Unmatched == 0))
        {
            yield return composition.Say("trace.all_matched");
        }

        OverRev[] down = [.. seen.OverRevs.Where(o => o.IsAfterDownshift)];
        if (down.MaxBy(o => o.Peak) is { } over)
        {
            yield return composition.Say(
                "trace.over_rev",
                ("count", down.Length),
                ("rpm", composition.Figures.Rpm(over.Peak).Text),
                ("gear", GearWords.Of(over.Gear, composition)),
                ("place", Where(over.At, reading, composition)));
        }

        if (ShiftSummary.UpshiftTime(seen.Shifts) is { } time)
        {
            yield return composition.Say(
                "trace.shift_time",
                ("time", composition.Figures.Number(time.Mean.Milliseconds).Text),
                ("uncertainty", composition.Figures.Number(time.Uncertainty.Milliseconds).Text),
                ("assumed", composition.Figures.Number(reading.Setup.Car.ShiftTime.Milliseconds).Text));
        }
    }

    private static string Where(TracePlace at, TraceReading reading, Composition composition) => at.InLap is not { } inLap
        ? composition.Say("trace.at_time", ("time", composition.Figures.Seconds(at.Time, 0).Text))
        : reading.Places is { } places
            ? composition.Say("trace.at_straight", ("lap", at.Lap.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("straight", places.StraightAt(inLap)))
            : composition.Say("trace.at_distance", ("lap", at.Lap.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("distance", composition.Figures.Distance(inLap).Text));
}
