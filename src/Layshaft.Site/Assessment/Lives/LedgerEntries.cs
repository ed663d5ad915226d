using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Engineering.Measurement;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>
/// Reads the book as entries of the ledger of parts, in order of time: what each unit held on its first day, then job by
/// job what was seen in place and what was renewed.
/// </summary>
internal sealed class LedgerEntries
{
    private readonly List<LedgerEntry> entries = [];
    private readonly Dictionary<string, EngineUse> lastUse = new(StringComparer.Ordinal);
    private readonly HashSet<(string Unit, string Part)> empty = []; // places whose part went to another unit
    private readonly HashSet<(string Unit, string Part)> donated;

    private readonly Dictionary<string, PartIdentity> unmarked = new(StringComparer.Ordinal); // one for all parts of a name without a serial

    private readonly UnitClusters clusters;

    private LedgerEntries(ShopBook book) => (clusters, donated) = (UnitClusters.Of(book), [.. book.Jobs.SelectMany(j => j.Renewed).Where(r => r.From is not null).Select(r => (r.From!, r.Part))]);

    /// <summary>The entries of a whole book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="jobs">Its jobs, judged, by number.</param>
    public static IReadOnlyList<LedgerEntry> Of(ShopBook book, IReadOnlyDictionary<string, JobAssessment> jobs)
    {
        var reading = new LedgerEntries(book);
        var steps = book.Units.Values.Select(u => new Step(u.InService, false, u.Id, () => reading.Begin(u, book.GearboxOf(u))))
            .Concat(book.Jobs.Select(j => new Step(j.Received, true, j.Number, () => reading.Read(jobs[j.Number]))));
        foreach (var step in steps.OrderBy(s => s.Day).ThenBy(s => s.IsJob).ThenBy(s => s.Id, StringComparer.Ordinal))
        {
            step.Read();
        }

        return reading.entries;
    }

    // A part that the unit's file does not name, or names without hours, counts from the unit's first day: as new when the
    // unit had not run, otherwise with an unknown past.
    private void Begin(Unit unit, Gearbox gearbox)
    {
        var use = unit.UseAtStart.Counted();
        lastUse[unit.Id] = use;
        foreach (var part in gearbox.Parts)
        {
            var fitted = unit.Fitted.FirstOrDefault(f => f.Part == part.Id);
            EngineUse? brought = fitted?.Use?.Counted();
            var isNew = brought is { } b ? b.Amount <= 0 : use.Amount <= 0;
            Add(isNew ? FittingKind.FittedNew : FittingKind.FittedUsed, unit.Id, part.Id, fitted?.Serial, unit.InService, use, fitted?.Origin.Place ?? unit.Origin.At("in_service"), null, isNew ? null : brought);
        }
    }

    private void Read(JobAssessment assessed)
    {
        var job = assessed.Job;
        var use = job.Use.Counted();
        foreach (var finding in job.Findings.DistinctBy(f => f.Part))
        {
            var worn = assessed.Findings.Any(f => f.Part.Id == finding.Part && f.Grade == Grade.Renew);
            Add(FittingKind.StillRunning, job.Unit, finding.Part, null, job.Received, use, finding.Origin.At("part"), job, worn: worn);
            empty.Remove((job.Unit, finding.Part));
        }

        if (job.Findings.Count == 0 && assessed.Gearbox.Parts.FirstOrDefault(p => !donated.Contains((job.Unit, p.Id))) is { } witness)
        {
            // The unit's use is worth noting though nothing was looked at: every part in it ran on.
            Add(FittingKind.StillRunning, job.Unit, witness.Id, null, job.Received, use, job.Origin.At("use"), job);
        }

        foreach (var renewal in job.Renewed)
        {
            Renew(assessed, renewal, use);
        }

        lastUse[job.Unit] = use;
    }

    private void Renew(JobAssessment assessed, Renewal renewal, EngineUse use)
    {
        var job = assessed.Job;
        if (renewal.OldSerial is { } old)
        {
            Add(FittingKind.StillRunning, job.Unit, renewal.Part, old, job.Received, use, renewal.Origin.At("old_serial"), job);
        }

        var (serial, brought) = (renewal.Serial, renewal.Use?.Counted());
        if (renewal.From is { } donor)
        {
            var life = PartLedger.Of([.. entries.Select(e => e.Event).Where(e => clusters.AreJoined(e.Unit, donor))]).InPlace(donor, renewal.Part);
            serial ??= life?.Part.Serial;
            brought ??= life is { Total.IsMixed: false, Total.Measures: [var measure] } ? new EngineUse(life.Total.In(measure)!.Value, measure) : null;
            Add(FittingKind.Removed, donor, renewal.Part, serial, job.Received, lastUse[donor], renewal.Origin.At("from"), job);
            empty.Add((donor, renewal.Part));
        }

        var vacant = empty.Remove((job.Unit, renewal.Part));
        var kind = !vacant ? FittingKind.Renewed : brought is null ? FittingKind.FittedNew : FittingKind.FittedUsed;
        var place = renewal.Origin.At(renewal.Serial is null ? "part" : "serial");
        var (reason, source) = RenewalReasons.Of(assessed, renewal, assessed.Gearbox.PartOf(renewal.Part)!);
        Add(kind, job.Unit, renewal.Part, serial, job.Received, use, place, job, brought, reason, source);
    }

    private PartIdentity Unmarked(string part) => unmarked.TryGetValue(part, out var known) ? known : unmarked[part] = new PartIdentity(part);

    private void Add(
        FittingKind kind, string unit, string part, string? serial, DateOnly date, EngineUse use, Place place, Job? job, EngineUse? brought = null, RenewalReason reason = RenewalReason.NotRecorded, ReasonSource source = ReasonSource.None, bool worn = false) =>
        entries.Add(new LedgerEntry(
            new FittingEvent
            {
                Part = serial is null ? Unmarked(part) : new PartIdentity(part, serial),
                Unit = unit,
                Date = date,
                UnitUse = use,
                Kind = kind,
                CarriedUse = brought,
                Reason = kind == FittingKind.Renewed ? reason : RenewalReason.NotRecorded,
            },
            place,
            job)
        {
            IsWorn = worn,
            ReasonSource = source,
        });

    private sealed record Step(DateOnly Day, bool IsJob, string Id, Action Read);
}
