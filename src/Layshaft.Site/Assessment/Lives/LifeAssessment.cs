using System.Collections.Concurrent;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>A unit's use at the last day that the book knows it.</summary>
/// <param name="Date">The day.</param>
/// <param name="Use">What it had run in all.</param>
public readonly record struct KnownUse(DateOnly Date, EngineUse Use);

/// <summary>The lives of all parts of a book, and what each unit ran.</summary>
/// <param name="Book">The book.</param>
/// <param name="Entries">What the book records of parts, in order of time.</param>
/// <param name="Ledger">The lives; their event numbers are those of the entries.</param>
public sealed record LifeAssessment(ShopBook Book, IReadOnlyList<LedgerEntry> Entries, PartLedger Ledger)
{
    private readonly ConcurrentDictionary<string, SeasonUse> uses = new(StringComparer.Ordinal);
    private readonly Lazy<Dictionary<(string Job, string Part), PartLife>> seen = new(() => Seen(Entries, Ledger));
    private readonly Lazy<ILookup<(string Unit, string Part), (PartLife Life, LifeSpan Span)>> stays = new(() => Ledger.Lives
        .SelectMany(l => l.Spans.Select(s => (Life: l, Span: s)))
        .ToLookup(s => (s.Span.Unit, s.Life.Part.Part)));

    /// <summary>No lives, for what says nothing of any.</summary>
    /// <param name="book">The book.</param>
    public static LifeAssessment None(ShopBook book) => new(book, [], PartLedger.Of([]));

    /// <summary>Works out the lives.</summary>
    /// <param name="book">The book.</param>
    /// <param name="jobs">Its jobs, judged, by number.</param>
    /// <param name="problems">Receives what does not fit together, each at its line.</param>
    public static LifeAssessment Of(ShopBook book, IReadOnlyDictionary<string, JobAssessment> jobs, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(jobs);
        ArgumentNullException.ThrowIfNull(problems);
        var entries = LedgerEntries.Of(book, jobs);
        var ledger = PartLedger.Of([.. entries.Select(e => e.Event)]);
        foreach (var found in ledger.Contradictions)
        {
            // A life that does not add up is left out of trends and statistics; a mere gap is not always to be closed.
            var severity = found.Kind == LedgerContradictionKind.Gap ? Severity.Notice : Severity.LeftOut;
            problems.Add(new Problem("part-history", entries[found.Events[^1]].Place, found.Words, string.Empty, severity));
        }

        return new LifeAssessment(book, entries, ledger);
    }

    /// <summary>The life of the part that a job found in place; null when the job did not look at it.</summary>
    public PartLife? LifeIn(Job job, string part)
    {
        ArgumentNullException.ThrowIfNull(job);
        return seen.Value.GetValueOrDefault((job.Number, part));
    }

    /// <summary>What tells why a life ended; nothing for one that was not ended by a renewal.</summary>
    public ReasonSource SourceOf(PartLife life)
    {
        ArgumentNullException.ThrowIfNull(life);
        return life.End == LifeEnd.Renewed ? Entries[life.Events[^1]].ReasonSource : ReasonSource.None;
    }

    /// <summary>
    /// What was seen of a part: findings on it, and the visits for which its unit was stripped, after which it went back in.
    /// </summary>
    public IEnumerable<Sighting> InspectionsOf(PartLife life)
    {
        ArgumentNullException.ThrowIfNull(life);
        var found = life.Events.Select(e => Entries[e]).Where(e => e.Job is not null && e.Event.Kind == FittingKind.StillRunning && e.Job.Findings.Count > 0)
            .Select(e => new Sighting(e.Event.Unit, e.Event.UnitUse, e.IsWorn));
        var opened = life.Spans.Select(s => s.Unit).Distinct(StringComparer.Ordinal)
            .SelectMany(Book.JobsOf).Where(j => j.Stripped is not null)
            .Select(j => new Sighting(j.Unit, j.Use.Counted(), false));
        return found.Concat(opened);
    }

    /// <summary>The stays in a unit of all parts that sat in one place of it, in order.</summary>
    public IEnumerable<(PartLife Life, LifeSpan Span)> StaysIn(Unit unit, string part)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return stays.Value[(unit.Id, part)].OrderBy(s => s.Span.From).ThenBy(s => s.Span.To);
    }

    /// <summary>What a unit had run at the last day that the book knows it.</summary>
    public KnownUse LastUse(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Book.JobsOf(unit.Id).LastOrDefault() is { } job
            ? new KnownUse(job.Received, job.Use.Counted())
            : new KnownUse(unit.InService, unit.UseAtStart.Counted());
    }

    /// <summary>
    /// What a unit ran, season by season: spread evenly over the months of the shop's season, the whole year where it names none.
    /// </summary>
    public SeasonUse UseOf(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return uses.GetOrAdd(unit.Id, _ => SeasonUse.Of(
            unit.UseAtStart.Unit.Measure(),
            [new UseReading(unit.InService, (double)unit.UseAtStart.Amount), .. Book.JobsOf(unit.Id).Select(j => new UseReading(j.Received, (double)j.Use.Amount))],
            Book.Shop.Season));
    }

    private static Dictionary<(string Job, string Part), PartLife> Seen(IReadOnlyList<LedgerEntry> entries, PartLedger ledger)
    {
        var seen = new Dictionary<(string Job, string Part), PartLife>();
        foreach (var life in ledger.Lives)
        {
            foreach (var entry in life.Events.Select(e => entries[e]).Where(e => e is { Job: not null, Event.Kind: FittingKind.StillRunning, Event.Part.Serial: null }))
            {
                seen.TryAdd((entry.Job!.Number, entry.Event.Part.Part), life);
            }
        }

        return seen;
    }
}
