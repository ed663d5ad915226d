using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>Which gears a job says are fitted.</summary>
public static class FittedGears
{
    /// <summary>What is in a unit when a job leaves: as the job says, else as the visits before it left it, else as the book begins.</summary>
    public static Eng.GearSet AsItLeft(ShopBook book, Job job)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(job);
        var unit = book.Units[job.Unit];
        var (pair, final, gears) = (unit.DropPair, unit.FinalDrive, (IReadOnlyList<Teeth>)[]);
        foreach (var visit in book.JobsOf(unit.Id))
        {
            pair = visit.DropPair ?? visit.LastEvent?.DropPair ?? pair;
            final = visit.FinalDrive ?? visit.LastEvent?.FinalDrive ?? final;
            gears = visit.Gears.Count > 0 ? visit.Gears : gears;
            if (visit.Number == job.Number)
            {
                break;
            }
        }

        return SetOf(pair, final) with { Gears = GearsOf(book.GearboxOf(unit).RatioSetOf(unit.RatioSet), gears) };
    }

    /// <summary>What was in a unit when it came in for a job: as the visit before it left it, else as the book begins.</summary>
    public static Eng.GearSet AsItCame(ShopBook book, Job job)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(job);
        var unit = book.Units[job.Unit];
        return book.JobsOf(unit.Id).TakeWhile(visit => visit.Number != job.Number).LastOrDefault() is { } before
            ? AsItLeft(book, before)
            : SetOf(unit.DropPair, unit.FinalDrive);
    }

    /// <summary>What is in a unit now: as its last visit left it, else as the book begins.</summary>
    public static Eng.GearSet Now(ShopBook book, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(unit);
        return book.JobsOf(unit.Id).LastOrDefault() is { } job ? AsItLeft(book, job) : SetOf(unit.DropPair, unit.FinalDrive);
    }

    /// <summary>What an event names, the rest as given; null when it names neither.</summary>
    public static Eng.GearSet? At(EventPlan? plan, Eng.GearSet otherwise)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        return plan is null or { DropPair: null, FinalDrive: null }
            ? null
            : new Eng.GearSet(
                plan.DropPair is { } pair ? GearboxStock.PairOf(pair) : otherwise.DropPair,
                plan.FinalDrive is { } final ? GearboxStock.FinalOf(final) : otherwise.FinalDrive,
                otherwise.Gears);
    }

    // The gears of the ratio set need no naming.
    private static Eng.GearPairs? GearsOf(RatioSet? set, IReadOnlyList<Teeth> gears) =>
        gears.Count == 0 || set is null || gears.Count != set.Gears.Count || set.Gears.SequenceEqual(gears) ? null : new Eng.GearPairs([.. gears.Select(GearboxStock.PairOf)]);

    // Gearing is calculated for gearboxes alone, and each has a final drive.
    private static Eng.GearSet SetOf(Teeth? pair, Teeth? final) => new(pair is { } teeth ? GearboxStock.PairOf(teeth) : null, GearboxStock.FinalOf(final!.Value));
}
