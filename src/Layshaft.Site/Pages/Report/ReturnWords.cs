using Layshaft.Book.Records;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

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

    /// <summary>The sentence and the shop's reason; null when the job does not say.</summary>
    public static string? WithReason(Job job, Composition composition) =>
        Sentence(job, composition) is { } sentence ? string.Join(' ', new[] { sentence, job.ComeBack?.Reason }.OfType<string>()) : null;

    private static string Total(Job job, Book.Values.Use after, Composition composition) =>
        UseWords.Of(job.Use with { Amount = job.Use.Amount + after.Amount }, composition);
}
