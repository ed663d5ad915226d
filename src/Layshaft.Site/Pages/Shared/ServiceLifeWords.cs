using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Says which parts have used up their service life and which will next.</summary>
internal static class ServiceLifeWords
{
    private const int MostNamed = 3;

    /// <summary>Of the parts that a finished job left in: those past their service life, then those that reach it next.</summary>
    public static IEnumerable<string> AsLeft(Job job, Composition composition)
    {
        LifedPart[] parts = [.. LifedPart.AsLeft(job, composition.Assessment.Lives)];
        if (Past(parts, composition) is { } past)
        {
            yield return composition.Say("service_life.refitted", ("parts", past));
        }

        if (parts.Where(p => !p.IsPast).GroupBy(p => p.Left.Amount).MinBy(g => g.Key) is { } next)
        {
            var left = next.First().Left;
            yield return composition.Say(
                "service_life.next",
                ("parts", Few([.. next.Select(p => p.Part.Name)], composition)),
                ("left", UseWords.Of(left, composition)),
                ("total", UseWords.Of(left with { Amount = left.Amount + (double)job.Use.Amount }, composition)));
        }
    }

    /// <summary>Of the parts that an open job found: those past their service life; null for none.</summary>
    public static string? AsFound(Job job, Composition composition) =>
        Past(LifedPart.AsFound(job, composition.Assessment.Lives), composition) is { } past ? composition.Say("service_life.reached", ("parts", past)) : null;

    // Parts of one age reach their life together; the service history has each of them.
    private static string Few(string[] parts, Composition composition) => parts.Length <= MostNamed + 1
        ? string.Join("; ", parts)
        : composition.Say("service_life.and_more", ("parts", string.Join("; ", parts.Take(MostNamed))), ("count", parts.Length - MostNamed));

    private static string? Past(IEnumerable<LifedPart> parts, Composition composition)
    {
        string[] past =
        [
            .. parts.Where(p => p.IsPast).Select(p => composition.Say(
                "service_life.part", ("part", p.Part.Name), ("ran", UseWords.Of(p.Ran, composition)), ("life", UseWords.Of(p.Life, composition)))),
        ];
        return past.Length == 0 ? null : string.Join("; ", past);
    }
}
