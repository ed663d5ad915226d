using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>Says a measurement in words: measured against new and limit, how much of the allowance is used, how sure that is.</summary>
internal static class Evidence
{
    public static IEnumerable<string> Lines(MeasureAssessment measure, Part part, ReportContext report)
    {
        var composition = report.Composition;
        var decimals = Measured.DecimalsOf(measure.Instrument?.Resolution, measure.Measure.New, measure.Measure.Limit);
        var written = Measured.DecimalsWritten(measure.Measure.New, measure.Measure.Limit);
        yield return composition.Say(
            "finding.evidence",
            ("measure", measure.Measure.Name),
            ("value", Measured.WithUncertainty(measure.Wear.Measured, decimals, composition.Figures)),
            ("new", Measured.Figure(measure.Measure.New, written, composition.Figures).Text),
            ("limit", Measured.Figure(measure.Measure.Limit, written, composition.Figures).Text),
            ("share", composition.Figures.Percent(measure.Wear.ShareUsed.Value).Text));
        if (ToothLoss.Of(measure, part, report.Gearbox, report.Fitted) is { Number.Value: > 0 } loss)
        {
            yield return composition.Say("wear.tooth_loss", ("loss", Measured.WithUncertainty(loss, decimals, composition.Figures)));
        }

        // A reading that stands apart changes nothing that the customer has to decide; it is told with the wear.
        foreach (var flag in Flags(measure, part, report).Where(f => f.Touches))
        {
            yield return flag.Words;
        }
    }

    /// <summary>What to bear in mind with a figure, and whether it touches the decision on the part.</summary>
    public static IEnumerable<(string Words, bool Touches)> Flags(MeasureAssessment measure, Part part, ReportContext report)
    {
        var composition = report.Composition;
        if (measure.Wear.Decision.Conformity == Conformity.TooCloseToCall)
        {
            yield return (composition.Say("finding.too_close", ("next", composition.Say(Next(part, report.Job)))), true);
        }

        if (measure.Wear.Measured.Number.Outlier.IsSuspect)
        {
            yield return (composition.Say("finding.suspect_reading"), false);
        }

        if (measure is { CalibrationOverdue: true, Instrument: { } instrument })
        {
            yield return (composition.Say("finding.calibration_overdue", ("instrument", instrument.Name), ("due", composition.Figures.Date(instrument.Due))), true);
        }
    }

    // A finished report says what was done about a reading that decides nothing; an open job what will be done.
    private static string Next(Part part, Job job) =>
        job.Finished is null ? "finding.too_close.open"
        : job.Renewed.Any(r => r.Part == part.Id) ? "finding.too_close.renewed" : "finding.too_close.refitted";
}
