namespace Layshaft.Engineering.Life;

/// <summary>
/// The lives of parts, worked out from what the jobs record. A part stays in its unit, and gathers the unit's use, until an
/// entry says otherwise.
/// </summary>
/// <param name="Lives">The lives, in the order in which they first appear.</param>
/// <param name="Contradictions">What does not fit together, in the order in which it shows.</param>
public sealed record PartLedger(IReadOnlyList<PartLife> Lives, IReadOnlyList<LedgerContradiction> Contradictions)
{
    // Of several the last one counts.
    private readonly Lazy<Dictionary<(string Unit, string Part), PartLife>> inPlace = new(() => Lives
        .Where(life => life.End == LifeEnd.Running)
        .GroupBy(life => (life.Spans[^1].Unit, life.Part.Part))
        .ToDictionary(place => place.Key, place => place.Last()));

    /// <summary>Works out the lives.</summary>
    /// <param name="events">Entries of all units in order of time; those of one job in the order in which they were done.</param>
    /// <returns>Lives and contradictions; both refer to events by their index.</returns>
    public static PartLedger Of(IReadOnlyList<FittingEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        var posting = new LedgerPosting();
        for (var index = 0; index < events.Count; index++)
        {
            posting.Post(events[index], index);
        }

        return posting.Ledger();
    }

    /// <summary>The life of the part that sits in a place now.</summary>
    /// <param name="unit">Serial number of the unit.</param>
    /// <param name="part">What the part is and where it sits.</param>
    /// <returns>The life, or <c>null</c> when nothing is known to sit there.</returns>
    public PartLife? InPlace(string unit, string part) => inPlace.Value.GetValueOrDefault((unit, part));
}
