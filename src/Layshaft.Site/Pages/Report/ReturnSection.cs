using Layshaft.Book.Records;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>When to come back.</summary>
internal static class ReturnSection
{
    public static SectionView? Compose(ReportContext report) => ReturnWords.Sentence(report.Job, report.Composition) is { } sentence
        ? new SectionView(
            "return",
            report.Composition.Say("report.return"),
            "sections/lines.html",
            new LinesView([.. new[] { sentence, report.Job.ComeBack?.Reason }.OfType<string>()]))
        : null;
}

/// <summary>Says when a unit should be looked at again.</summary>
public static class ReturnWords
{
    /// <summary>One sentence; null when the job does not say.</summary>
    public static string? Sentence(Job job, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(composition);
        return job.ComeBack switch
        {
            { After: { } after, By: { } by } => composition.Say("return.both", ("use", UseWords.Of(after, composition)), ("total", Total(job, after, composition)), ("date", composition.Figures.Date(by))),
            { After: { } after } => composition.Say("return.after", ("use", UseWords.Of(after, composition)), ("total", Total(job, after, composition))),
            { By: { } by } => composition.Say("return.by", ("date", composition.Figures.Date(by))),
            _ => null,
        };
    }

    private static string Total(Job job, Book.Values.Use after, Composition composition) =>
        UseWords.Of(job.Use with { Amount = job.Use.Amount + after.Amount }, composition);
}
