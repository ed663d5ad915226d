using Layshaft.Book.Records;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A drop pair and a final drive.</summary>
/// <param name="DropPair">The drop pair; null for none.</param>
/// <param name="FinalDrive">The final drive.</param>
public sealed record FittedGears(Eng.ToothPair? DropPair, Eng.FinalDrive FinalDrive)
{
    /// <summary>What is in a unit when a job leaves: as the job says, else as the visits before it left it, else as the book begins.</summary>
    public static FittedGears AsItLeft(ShopBook book, Job job)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(job);
        var unit = book.Units[job.Unit];
        var (pair, final) = (unit.DropPair, unit.FinalDrive);
        foreach (var visit in book.JobsOf(unit.Id))
        {
            pair = visit.DropPair ?? visit.LastEvent?.DropPair ?? pair;
            final = visit.FinalDrive ?? visit.LastEvent?.FinalDrive ?? final;
            if (visit.Number == job.Number)
            {
                break;
            }
        }

        return new FittedGears(pair is { } teeth ? GearboxStock.PairOf(teeth) : null, GearboxStock.FinalOf(final));
    }

    /// <summary>What an event names, the rest as given; null when it names neither.</summary>
    public static FittedGears? At(EventPlan? plan, FittedGears otherwise)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        return plan is null or { DropPair: null, FinalDrive: null }
            ? null
            : new FittedGears(
                plan.DropPair is { } pair ? GearboxStock.PairOf(pair) : otherwise.DropPair,
                plan.FinalDrive is { } final ? GearboxStock.FinalOf(final) : otherwise.FinalDrive);
    }
}
