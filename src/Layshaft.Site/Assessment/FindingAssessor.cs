using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Site.Assessment;

/// <summary>Judges findings: from readings, instrument, limit and policy to a grade.</summary>
public static class FindingAssessor
{
    /// <summary>Judges one finding.</summary>
    /// <param name="finding">The finding; its part and measures are those of the gearbox.</param>
    /// <param name="part">The finding's part.</param>
    /// <param name="job">The job that it belongs to, for the day of the measurement.</param>
    /// <param name="shop">The shop, for its instruments.</param>
    /// <param name="problems">Receives what the technician must fix: no grade at all, or one overruled without a reason.</param>
    public static FindingAssessment Assess(Finding finding, Part part, Job job, Shop shop, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(problems);
        MeasureAssessment[] measures = [.. finding.Measurements.Select(m => Assess(m, part, job, shop))];
        Grade? byPolicy = measures.Length > 0 ? PartGrade.Worst(measures.Select(m => m.Grade)).Standing : null;
        var overruled = finding.Grade is { } given && byPolicy is { } worked && given != worked;
        if (finding.Grade is null && byPolicy is null)
        {
            problems.Add("no-grade", finding.Origin.Place, $"'{part.Name}' has neither a measurement nor a grade.", "Add a measurement, or 'grade: reuse', 'watch' or 'renew'.");
        }

        if (overruled && finding.Reason is null)
        {
            problems.Add(
                "overruled-without-reason",
                finding.Origin.At("grade"),
                $"The measurements give '{WordOf(byPolicy!.Value)}', but the grade is '{WordOf(finding.Grade!.Value)}'.",
                "Add 'reason: …' or remove the grade.");
        }

        return new FindingAssessment(finding, part, measures, byPolicy, finding.Grade ?? byPolicy ?? Grade.Watch, overruled);
    }

    private static MeasureAssessment Assess(Measurement measurement, Part part, Job job, Shop shop)
    {
        var measure = part.MeasureOf(measurement.Measure)!;
        var instrument = shop.InstrumentOf(measurement.Instrument);
        var (wear, grade) = measure.Judge(measurement.Readings, instrument, part.Grading)!.Value;
        var overdue = instrument is not null && (job.Stripped ?? job.Received) > instrument.Due;
        return new MeasureAssessment(measure, measurement, instrument, overdue, wear, grade);
    }

    private static string WordOf(Grade grade) => grade switch
    {
        Grade.Reuse => "reuse",
        Grade.Watch => "watch",
        _ => "renew",
    };
}
