namespace Layshaft.Engineering.Life;

/// <summary>How a life enters the record.</summary>
public enum LifeStart
{
    /// <summary>Fitted new: the whole life is known.</summary>
    New,

    /// <summary>Fitted used with its earlier use stated.</summary>
    UsedKnown,

    /// <summary>Fitted used, or found in place, with its earlier use unknown: the total is only what was seen.</summary>
    UsedUnknown,
}

/// <summary>Where a life stands.</summary>
public enum LifeEnd
{
    /// <summary>In a unit.</summary>
    Running,

    /// <summary>Taken out and kept.</summary>
    OnTheShelf,

    /// <summary>Renewed: this life is over.</summary>
    Renewed,
}

/// <summary>The life of one part over all jobs and units.</summary>
public sealed record PartLife
{
    /// <summary>The part.</summary>
    public required PartIdentity Part { get; init; }

    /// <summary>How it enters the record.</summary>
    public required LifeStart Start { get; init; }

    /// <summary>Use that it brought with it.</summary>
    public required UseTally Carried { get; init; }

    /// <summary>Its stays in units, in order.</summary>
    public required IReadOnlyList<LifeSpan> Spans { get; init; }

    /// <summary>Where it stands.</summary>
    public required LifeEnd End { get; init; }

    /// <summary>Why it was renewed, when it was.</summary>
    public RenewalReason Reason { get; init; }

    /// <summary>Indices of the events that tell of it, in order.</summary>
    public required IReadOnlyList<int> Events { get; init; }

    /// <summary>Whether a contradiction touches it, so that its total is a reading of the record and not a fact.</summary>
    public bool IsDoubtful { get; init; }

    /// <summary>Carried use and all stays; hours, kilometres and events stay apart.</summary>
    public UseTally Total => Spans.Aggregate(Carried, (tally, span) => tally.Plus(span.Ran));

    /// <summary>Whether <see cref="Total"/> is its whole use since new.</summary>
    public bool TotalIsWhole => Start != LifeStart.UsedUnknown;

    /// <summary>What the part had run before one of its stays.</summary>
    /// <param name="span">One of <see cref="Spans"/>.</param>
    /// <returns>Carried use and all earlier stays.</returns>
    public UseTally UseBefore(LifeSpan span) => Spans.TakeWhile(s => !ReferenceEquals(s, span)).Aggregate(Carried, (tally, s) => tally.Plus(s.Ran));

    /// <summary>The part's own use when the unit it was in had a given use: where its wear reading belongs on the axis.</summary>
    /// <param name="unit">Serial number of the unit.</param>
    /// <param name="unitUse">The unit's use.</param>
    /// <returns>
    /// Use since new (since first seen, if the start is unknown) in the unit's measure; <c>null</c> when the part was
    /// not in that unit then.
    /// </returns>
    public Use? UseAt(string unit, Use unitUse)
    {
        var tally = Carried;
        foreach (var span in Spans)
        {
            if (span.Unit == unit && span.UseAtStart.Measure == unitUse.Measure
                && unitUse.Amount >= span.UseAtStart.Amount && unitUse.Amount <= span.UseAtEnd.Amount)
            {
                var ran = unitUse with { Amount = unitUse.Amount - span.UseAtStart.Amount };
                return unitUse with { Amount = tally.Plus(ran).In(unitUse.Measure)!.Value };
            }

            tally = tally.Plus(span.Ran);
        }

        return null;
    }
}
