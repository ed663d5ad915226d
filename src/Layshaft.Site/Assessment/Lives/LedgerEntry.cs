using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>An entry of the ledger of parts, with where the book says it.</summary>
/// <param name="Event">The entry.</param>
/// <param name="Place">Where it stands in the book.</param>
/// <param name="Job">The job that records it; null for what the unit's file says.</param>
public sealed record LedgerEntry(FittingEvent Event, Place Place, Job? Job)
{
    /// <summary>Whether the job found the part worn, damaged or broken.</summary>
    public bool IsWorn { get; init; }

    /// <summary>What tells why a part was renewed.</summary>
    public ReasonSource ReasonSource { get; init; }
}
