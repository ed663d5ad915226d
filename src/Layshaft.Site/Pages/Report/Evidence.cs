using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Wear;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>A measurement as a finding shows it: the reading, and a gauge from new to the wear limit.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="Value">The reading with its uncertainty.</param>
/// <param name="Share">Share of the wear allowance used.</param>
/// <param name="Gauge">The gauge.</param>
/// <param name="Remarks">What to bear in mind with the reading.</param>
internal sealed record Evidence(string Name, string Value, string Share, RawHtml Gauge, IReadOnlyList<string> Remarks)
{
    public static Evidence Of(MeasureAssessment measure, FindingAssessment finding, ReportContext report) =>
        Of(measure, finding.Part, report.Composition) with { Remarks = [.. RemarksOn(measure, finding, report)] };

    /// <summary>The measurement without remarks.</summary>
    public static Evidence Of(MeasureAssessment measure, Part part, Composition composition)
    {
        var (asked, share) = (measure.Measure, measure.Wear.ShareUsed);
        var decimals = Measured.DecimalsOf(measure.Instrument?.Resolution, asked.New, asked.Limit);
        var written = Measured.DecimalsWritten(asked.New, asked.Limit);
        return new Evidence(
            asked.Name,
            Measured.WithUncertainty(measure.Wear.Measured, decimals, composition.Figures),
            composition.Figures.Percent(share.Value).Text,
            WearGauge.Draw(new WearGaugeInput(
                share.Value,
                share.UncertaintyIsKnown ? share.Lower : null,
                share.UncertaintyIsKnown ? share.Upper : null,
                new LevelMark(0, composition.Say("gauge.new", ("size", Measured.Figure(asked.New, written, composition.Figures).Text))),
                new LevelMark(part.Grading.WatchFrom, composition.Say("gauge.watch")),
                part.Grading.RenewFrom,
                new LevelMark(1, composition.Say("gauge.limit", ("size", Measured.Figure(asked.Limit, written, composition.Figures).Text))))),
            []);
    }

    private static IEnumerable<string> RemarksOn(MeasureAssessment measure, FindingAssessment finding, ReportContext report)
    {
        var composition = report.Composition;
        if (!measure.Wear.Measured.Number.UncertaintyIsKnown)
        {
            yield return composition.Say("wear.no_uncertainty");
        }

        if (ToothLoss.Of(measure, finding.Part, report.Gearbox, report.Fitted) is { Number.Value: > 0 } loss)
        {
            var decimals = Measured.DecimalsOf(measure.Instrument?.Resolution, measure.Measure.New, measure.Measure.Limit);
            yield return composition.Say("wear.tooth_loss", ("loss", Measured.WithUncertainty(loss, decimals, composition.Figures)));
        }

        if (measure.Wear.Decision.Conformity == Conformity.TooCloseToCall)
        {
            yield return composition.Say("finding.too_close");
            if (finding.Finding.Action is null)
            {
                yield return composition.Say(Next(finding.Part, report.Job));
            }
        }

        if (measure.Wear.Measured.Number.Outlier.Status == OutlierStatus.Outlier)
        {
            yield return composition.Say("finding.suspect_reading");
        }

        if (measure is { CalibrationOverdue: true, Instrument: { } instrument })
        {
            yield return composition.Say("finding.calibration_overdue", ("instrument", instrument.Name), ("due", composition.Figures.Date(instrument.Due)));
        }
    }

    // A finished report says what was done about a reading that decides nothing; an open job what will be done.
    private static string Next(Part part, Job job) =>
        job.Finished is null ? "finding.too_close.open"
        : job.Renewed.Any(r => r.Part == part.Id) ? "finding.too_close.renewed" : "finding.too_close.refitted";
}
