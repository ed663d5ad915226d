using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>The gearing for one event, worked out: the ranking, and the one set to fit.</summary>
/// <param name="Case">What it is worked out from.</param>
/// <param name="Ranking">Everything in stock and what is fitted, fastest first.</param>
/// <param name="Advice">The set to fit, and how what is fitted compares.</param>
/// <param name="AsItLeft">What is in the box as it leaves.</param>
/// <param name="Dogs">What the dogs bear; null when it cannot be worked out.</param>
public sealed record EventGearing(
    GearingCase Case,
    Eng.GearingRanking Ranking,
    Eng.GearingAdvice Advice,
    Eng.GearSet AsItLeft,
    DogLoad? Dogs)
{
    internal static EventGearing? Of(GearingCase made, ShopBook book, Job job, BookGearing gearing)
    {
        // What is fitted for the event is what the job names for it, else what the box leaves with.
        var left = FittedGears.AsItLeft(book, job);
        var fitted = FittedGears.At(made.Plan, left) ?? left;
        made = made with { Fitted = fitted };
        if (!made.Rank().TryGet(out var ranking))
        {
            return null;
        }

        var advice = Eng.GearingAdvice.Of(ranking, fitted);
        return new EventGearing(made, ranking, advice, left, DogsOf(made, book, job, advice.Recommended?.Set ?? fitted, FittedGears.At(job.LastEvent, left), gearing));
    }

    // The wear that was found comes from where the car ran, so the event before the job tells of it; the next one only for want of that.
    private static DogLoad? DogsOf(GearingCase made, ShopBook book, Job job, Eng.GearSet next, Eng.GearSet? last, BookGearing gearing)
    {
        if (job.LastEvent is { } before && last is not null
            && gearing.Case(made.Unit, book.Venues[before.Venue], before, new ProblemList()) is { } ran
            && DogLoad.Of(ran, last, isFromLastEvent: true) is { } load)
        {
            return load;
        }

        return DogLoad.Of(made, next, isFromLastEvent: false);
    }
}
