namespace Layshaft.Engineering.Life;

/// <summary>A life while the ledger is worked out. Mutable, never leaves the ledger.</summary>
internal sealed class OpenLife(PartIdentity part, LifeStart start, UseTally carried)
{
    private readonly List<LifeSpan> spans = [];

    public PartIdentity Part { get; } = part;

    public List<int> Events { get; } = [];

    public bool IsDoubtful { get; set; }

    public string? Unit { get; private set; }

    public LifeEnd End { get; private set; } = LifeEnd.OnTheShelf;

    public UseTally Total => spans.Aggregate(Carried, (tally, span) => tally.Plus(span.Ran));

    private UseTally Carried { get; set; } = carried;

    private RenewalReason Reason { get; set; }

    private (DateOnly Date, Use Use) Since { get; set; }

    public void Fit(string unit, DateOnly date, Use unitUse)
    {
        Unit = unit;
        Since = (date, unitUse);
        End = LifeEnd.Running;
    }

    public void TakeOut(DateOnly date, Use unitUse, LifeEnd end, RenewalReason reason = RenewalReason.NotRecorded)
    {
        spans.Add(new LifeSpan(Unit!, Since.Date, date, Since.Use, unitUse));
        Unit = null;
        End = end;
        Reason = reason;
    }

    public void Carry(Use unaccounted) => Carried = Carried.Plus(unaccounted);

    public PartLife Closed((DateOnly Date, Use Use)? lastKnown)
    {
        var all = spans.ToList();
        if (Unit is not null && lastKnown is { } known)
        {
            all.Add(new LifeSpan(Unit, Since.Date, known.Date, Since.Use, known.Use));
        }

        return new PartLife
        {
            Part = Part,
            Start = start,
            Carried = Carried,
            Spans = [.. all],
            End = End,
            Reason = Reason,
            Events = [.. Events],
            IsDoubtful = IsDoubtful,
        };
    }
}
