using Layshaft.Book.Records;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>When a unit or one of its parts is due.</summary>
public enum DueState
{
    /// <summary>Not yet.</summary>
    NotYet,

    /// <summary>Within the next two months at the unit's mean use, or by its day.</summary>
    Soon,

    /// <summary>Now, or already past.</summary>
    Now,
}

/// <summary>Something that is due.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Part">The part whose service life runs out; null for the unit's next visit.</param>
/// <param name="At">Use of the unit at which it is due; null when only a day is set.</param>
/// <param name="Left">Use until then, 0 or more; null when only a day is set.</param>
/// <param name="By">The earlier of the day that was set and the day at which the use is reached at the unit's mean use; null when neither is known.</param>
/// <param name="State">How pressing it is on the last day of the book.</param>
public sealed record ServiceDue(Unit Unit, Part? Part, EngineUse? At, EngineUse? Left, DateOnly? By, DueState State);

/// <summary>What is due for a unit: its next visit as the last finished job says it, and parts with a service life.</summary>
public static class ServiceAssessment
{
    /// <summary>How far ahead something counts as due soon, in days: two months, the time that parts may take.</summary>
    public const int SoonInDays = 61;

    /// <summary>Everything that is set for a unit, most pressing first.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="lives">The lives of all parts.</param>
    /// <param name="asOf">The day to judge by.</param>
    public static IReadOnlyList<ServiceDue> Of(Unit unit, LifeAssessment lives, DateOnly asOf)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(lives);
        return [.. On(asOf, unit, lives.Book.GearboxOf(unit), Terms(unit, lives)).OrderByDescending(d => d.State).ThenBy(d => d.By ?? DateOnly.MaxValue)];
    }

    /// <summary>What is set for a unit, as it stands on a day; in the order given.</summary>
    /// <param name="asOf">The day to judge by.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="gearbox">Its type.</param>
    /// <param name="terms">What is set for it.</param>
    public static IEnumerable<ServiceDue> On(DateOnly asOf, Unit unit, Gearbox gearbox, IEnumerable<ServiceTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(gearbox);
        return terms.Select(t => new ServiceDue(unit, t.Part is { } part ? gearbox.PartOf(part) : null, t.At, t.Left, t.By, t.StateOn(asOf)));
    }

    /// <summary>Everything that is set for a unit: its next visit, then its parts.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="lives">The lives of all parts.</param>
    public static IReadOnlyList<ServiceTerm> Terms(Unit unit, LifeAssessment lives)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(lives);
        return [.. new[] { Visit(unit, lives) }.OfType<ServiceTerm>().Concat(Parts(unit, lives))];
    }

    private static ServiceTerm? Visit(Unit unit, LifeAssessment lives)
    {
        var last = lives.Book.JobsOf(unit.Id).LastOrDefault(j => j.Finished is not null);
        return last?.ComeBack is { } back
            ? Term(unit, null, back.After is { } after ? after.Counted() with { Amount = (double)(last.Use.Amount + after.Amount) } : null, back.By, lives)
            : null;
    }

    private static IEnumerable<ServiceTerm> Parts(Unit unit, LifeAssessment lives)
    {
        var use = lives.LastUse(unit).Use;
        foreach (var part in lives.Book.GearboxOf(unit).Parts)
        {
            if (part.ServiceLife?.Counted() is { } allowed
                && lives.Ledger.InPlace(unit.Id, part.Id) is { TotalIsWhole: true, IsDoubtful: false } life
                && allowed.Measure == use.Measure
                && life.UseAt(unit.Id, use) is { } run)
            {
                yield return Term(unit, part, use with { Amount = use.Amount + allowed.Amount - run.Amount }, null, lives);
            }
        }
    }

    private static ServiceTerm Term(Unit unit, Part? part, EngineUse? at, DateOnly? set, LifeAssessment lives)
    {
        var known = lives.LastUse(unit);
        EngineUse? left = at is { } a && a.Measure == known.Use.Measure ? a with { Amount = Math.Max(0, a.Amount - known.Use.Amount) } : null;
        var reached = left is { } l ? l.Amount > 0 ? lives.UseOf(unit).DateAfter(known.Date, l.Amount) : known.Date : null;
        var by = set is { } s && reached is { } r ? (s < r ? s : r) : set ?? reached;
        return new ServiceTerm(part?.Id, at, left, by);
    }
}
