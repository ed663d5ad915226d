using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.History;

/// <summary>The parts that are in the unit now, each by its most worn measure when it was last measured; worst first.</summary>
/// <param name="Key">How to read the gauges.</param>
/// <param name="Parts">The parts.</param>
/// <param name="NotMeasured">The parts that were not measured since they were fitted, counted; null for none.</param>
/// <param name="NotMeasuredNames">Their names.</param>
internal sealed record NowSection(string Key, IReadOnlyList<PartNowView> Parts, string? NotMeasured, string NotMeasuredNames)
{
    /// <summary>Composes the section; null for an earlier owner, who has the unit no more, and where nothing was measured.</summary>
    public static SectionView? Compose(HistoryContext history, TrendSection section)
    {
        if (!history.View.IsCurrent || section.Trends.Count == 0)
        {
            return null;
        }

        var composition = history.Composition;
        PartNowView[] parts =
        [
            .. section.Trends.GroupBy(t => t.Part)
                .Select(g => (Worst: g.MaxBy(LastShare)!, Next: g.Where(t => t.Line is not null).MinBy(t => t.Line!.LookAgainWithin)))
                .Select(p => (p.Worst, p.Next, Grade: GradeOf(p.Worst, composition)))
                .OrderByDescending(p => p.Grade).ThenByDescending(p => LastShare(p.Worst))
                .Select(p => View(p.Worst, p.Grade, p.Next is null ? null : section.Inspect(p.Next), section.Compared(p.Worst), composition)),
        ];
        string[] rest = [.. history.Gearbox.Parts.Where(p => p.Measures.Count > 0 && section.Trends.All(t => t.Part.Id != p.Id)).Select(p => p.Name)];
        return new SectionView(
            "now",
            composition.Say("history.now"),
            "sections/now.html",
            new NowSection(
                composition.Say("gauge.key"),
                parts,
                rest.Length > 0 ? composition.Say("history.now.not_measured", ("count", rest.Length)) : null,
                string.Join("; ", rest)));
    }

    private static double LastShare(TrendAssessment trend) => trend.Readings[^1].Measured.Wear.ShareUsed.Value;

    // The grade that the technician gave it with that reading.
    private static Grade GradeOf(TrendAssessment trend, Composition composition)
    {
        var last = trend.Readings[^1];
        return composition.Assessment.Jobs[last.Job.Number].Findings.FirstOrDefault(f => f.Part.Id == trend.Part.Id)?.Grade ?? last.Measured.Grade.Standing;
    }

    private static PartNowView View(TrendAssessment trend, Grade grade, string? inspect, string? compared, Composition composition)
    {
        var last = trend.Readings[^1];
        var evidence = Evidence.Of(last.Measured, trend.Part, composition);
        return new PartNowView(
            trend.Part.Name,
            GradeViews.Of(grade, composition),
            evidence,
            composition.Say("history.now.when", ("job", last.Job.Number), ("use", UseWords.Of(trend.UseNow with { Amount = last.PartUse }, composition)), ("now", UseWords.Of(trend.UseNow, composition))),
            inspect,
            compared);
    }
}

/// <summary>A part that is in the unit now.</summary>
/// <param name="Part">Its name.</param>
/// <param name="Grade">The grade that it was given last.</param>
/// <param name="Reading">Its most worn measure, as last measured.</param>
/// <param name="When">By which job, at which usage of the part, and its usage now.</param>
/// <param name="Inspect">When it is due for inspection; null without a trend.</param>
/// <param name="Compared">How fast it wears against other gearboxes of the type; null if no clear difference is known.</param>
internal sealed record PartNowView(string Part, GradeView Grade, Evidence Reading, string When, string? Inspect, string? Compared);
