using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Site.Assessment;

/// <summary>The teeth that are in a unit as a job leaves it.</summary>
/// <param name="Ratios">Its set of gears; null when the gearbox file has none of that name.</param>
/// <param name="DropPair">Its drop gears; null when the book does not say.</param>
/// <param name="FinalDrive">Its final drive; null for a unit without one.</param>
public sealed record FittedTeeth(RatioSet? Ratios, Teeth? DropPair, Teeth? FinalDrive)
{
    /// <summary>What is fitted as a job leaves the unit: what this job or the last one before it says, else the unit's file.</summary>
    public static FittedTeeth After(ShopBook book, JobAssessment job)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(job);
        Job[] sofar = [.. book.JobsOf(job.Unit.Id).Where(j => j.Received <= job.Job.Received).OrderBy(j => j.Received)];
        return new FittedTeeth(
            RatiosAfter(job.Gearbox, job.Unit, sofar),
            sofar.LastOrDefault(j => j.DropPair is not null)?.DropPair ?? job.Unit.DropPair,
            sofar.LastOrDefault(j => j.FinalDrive is not null)?.FinalDrive ?? job.Unit.FinalDrive);
    }

    /// <summary>The gears in a unit after some visits: its ratio set with the pairs that the last of them to say so left in it.</summary>
    public static RatioSet? RatiosAfter(Gearbox gearbox, Unit unit, IEnumerable<Job> visits)
    {
        ArgumentNullException.ThrowIfNull(gearbox);
        ArgumentNullException.ThrowIfNull(unit);
        var set = gearbox.RatioSetOf(unit.RatioSet);
        return visits.LastOrDefault(j => j.Gears.Count > 0) is { } changed && set is not null ? set with { Gears = changed.Gears } : set;
    }

    /// <summary>The teeth of a gear; null when neither the ratio set nor the part says.</summary>
    /// <param name="part">A gear or a drop gear.</param>
    /// <param name="gearbox">Its gearbox, to tell the driving drop gear from the driven one.</param>
    public int? Of(Part part, Gearbox gearbox)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(gearbox);
        return part.Teeth ?? part switch
        {
            { Kind: PartKind.Gear, Gear: >= 1 and var n, Shaft: ShaftPosition.Lay } when n <= Ratios?.Gears.Count => Ratios.Gears[n - 1].Driver,
            { Kind: PartKind.Gear, Gear: >= 1 and var n, Shaft: ShaftPosition.Main } when n <= Ratios?.Gears.Count => Ratios.Gears[n - 1].Driven,
            { Kind: PartKind.DropGear, Shaft: { } shaft } when DropPair is { } pair && OtherDropShaft(gearbox, shaft) is { } other =>
                shaft < other ? pair.Driver : pair.Driven,
            _ => null,
        };
    }

    // Drive goes from the input shaft over layshaft and mainshaft to the output shaft.
    private static ShaftPosition? OtherDropShaft(Gearbox gearbox, ShaftPosition shaft) =>
        gearbox.Parts.FirstOrDefault(p => p.Kind == PartKind.DropGear && p.Shaft is { } s && s != shaft)?.Shaft;
}
