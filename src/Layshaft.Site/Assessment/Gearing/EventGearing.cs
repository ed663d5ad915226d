using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>The gearing for one event, worked out: the ranking, and what was fitted and chosen held against it.</summary>
/// <param name="Case">What it is worked out from.</param>
/// <param name="Ranking">Everything in stock, fastest first.</param>
/// <param name="Best">What is recommended, see <see cref="Recommendation"/>.</param>
/// <param name="Chosen">What the technician chose for the event; null when the job does not say.</param>
/// <param name="AsItLeft">What is in the box as it leaves.</param>
/// <param name="LastEvent">What was in it at the event before; null when the job does not say.</param>
/// <param name="Dogs">What the dogs bear; null when it cannot be worked out.</param>
public sealed record EventGearing(
    GearingCase Case,
    Eng.GearingRanking Ranking,
    Eng.GearingCandidate Best,
    Eng.GearingCandidate? Chosen,
    Eng.GearingCandidate? AsItLeft,
    Eng.GearingCandidate? LastEvent,
    DogLoad? Dogs)
{
    /// <summary>The gearing that is going to be driven: the technician's choice, else the recommendation.</summary>
    public Eng.GearingCandidate Driven => Chosen ?? Best;

    /// <summary>The car as it is going to be driven.</summary>
    public Eng.Car DrivenCar => Case.With(Driven.DropPair, Driven.FinalDrive);

    /// <summary>What a choice costs a lap against the fastest in stock; negative when a choice that is not stocked is faster.</summary>
    public Duration LossOf(Eng.GearingCandidate candidate)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        return candidate.StraightsTime - Ranking.Best.StraightsTime;
    }

    /// <summary>Whether two choices are the same gears.</summary>
    public static bool IsSame(Eng.GearingCandidate one, Eng.GearingCandidate other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.DropPair == other.DropPair && one.FinalDrive == other.FinalDrive;
    }

    internal static EventGearing? Of(GearingCase made, ShopBook book, Job job, BookGearing gearing)
    {
        if (!made.Rank().TryGet(out var ranking))
        {
            return null;
        }

        var left = FittedGears.AsItLeft(book, job);
        var chosen = FittedGears.At(made.Plan, left);
        var last = FittedGears.At(job.LastEvent, left);
        var best = Recommendation.Of(ranking, left);
        return new EventGearing(
            made,
            ranking,
            best,
            Find(made, ranking, chosen),
            Find(made, ranking, left),
            Find(made, ranking, last),
            DogsOf(made, book, job, chosen ?? new FittedGears(best.DropPair, best.FinalDrive), last, gearing));
    }

    private static Eng.GearingCandidate? Find(GearingCase made, Eng.GearingRanking ranking, FittedGears? gears) => gears is null
        ? null
        : ranking.Candidates.FirstOrDefault(c => c.DropPair == gears.DropPair && c.FinalDrive == gears.FinalDrive) ?? made.Try(gears.DropPair, gears.FinalDrive);

    // The wear that was found comes from where the car ran, so the event before the job tells of it; the next one only for want of that.
    private static DogLoad? DogsOf(GearingCase made, ShopBook book, Job job, FittedGears next, FittedGears? last, BookGearing gearing)
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
