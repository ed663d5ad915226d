namespace Layshaft.Engineering.Life;

/// <summary>What one life comes to, without the entries that tell of it: all that statistics need.</summary>
/// <param name="Total">Carried use and all stays; hours, kilometres and events stay apart.</param>
/// <param name="IsWhole">Whether that is the part's whole use since new.</param>
/// <param name="IsDoubtful">Whether a contradiction touches it.</param>
/// <param name="End">Where it stands.</param>
/// <param name="Reason">Why it was renewed, when it was.</param>
/// <param name="Seen">
/// What inspections showed of it, in the one measure of <paramref name="Total"/>; <c>null</c> if it was not inspected since it was
/// fitted, or ran in several measures.
/// </param>
public sealed record LifeTotal(UseTally Total, bool IsWhole, bool IsDoubtful, LifeEnd End, RenewalReason Reason, ObservedLife? Seen)
{
    /// <summary>What a life comes to.</summary>
    /// <param name="life">The life.</param>
    /// <param name="inspections">
    /// The inspections of the units it was in, of the unit as a whole or of this part, in any order. A part that went back in after its
    /// unit was open was good then, by the judgement that this statistic counts.
    /// </param>
    public static LifeTotal Of(PartLife life, IEnumerable<Sighting> inspections)
    {
        ArgumentNullException.ThrowIfNull(life);
        ArgumentNullException.ThrowIfNull(inspections);
        return new LifeTotal(life.Total, life.TotalIsWhole, life.IsDoubtful, life.End, life.Reason, Observed(life, inspections));
    }

    private static ObservedLife? Observed(PartLife life, IEnumerable<Sighting> inspections)
    {
        if (life.Total.Measures is not [var measure] || life.Total.In(measure) is not > 0)
        {
            return null;
        }

        var entry = life.Carried.In(measure) ?? 0;
        var total = life.Total.In(measure)!.Value;
        var seen = inspections
            .Select(inspection => (Use: life.UseAt(inspection.Unit, inspection.UnitUse)?.Amount, inspection.IsWorn))
            .Where(inspection => inspection.Use > entry)
            .Select(inspection => (Use: inspection.Use!.Value, inspection.IsWorn))
            .ToList();

        // Taken out, it was seen at its end; a renewal without a recorded reason counts as a failure, the safe side.
        var failed = life.End == LifeEnd.Renewed && life.Reason != RenewalReason.Precaution;
        if (life.End != LifeEnd.Running && total > entry)
        {
            seen.Add((total, failed));
        }

        double? worn = life.Reason == RenewalReason.Precaution ? null : seen.Where(s => s.IsWorn).Select(s => (double?)s.Use).Min();
        var good = seen.Where(s => !(s.Use >= worn)).Select(s => s.Use).DefaultIfEmpty(entry).Max();
        return worn is not null || good > entry ? new ObservedLife(good, worn, entry) : null;
    }
}
