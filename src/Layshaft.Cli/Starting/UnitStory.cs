using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Cli.Starting;

/// <summary>What the next job of a unit takes over from the last one.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Gearbox">Its type.</param>
/// <param name="Shop">The shop.</param>
/// <param name="Last">Its last job; null if there is none.</param>
/// <param name="Teeth">The gears fitted in it.</param>
/// <param name="Seen">The last finding on each part that is still in it, with its job; the worst where a job has several.</param>
/// <param name="Set">The last record of each setting, with its job.</param>
/// <param name="Renewed">The last renewal in each place, with its job.</param>
/// <param name="Due">What is due by the day it comes in.</param>
internal sealed record UnitStory(
    Unit Unit,
    Gearbox Gearbox,
    Shop Shop,
    Job? Last,
    FittedTeeth Teeth,
    IReadOnlyDictionary<string, (FindingAssessment Finding, Job Job)> Seen,
    IReadOnlyDictionary<string, (JobSetting Setting, Job Job)> Set,
    IReadOnlyDictionary<string, (Renewal Renewal, Job Job)> Renewed,
    IReadOnlyList<ServiceDue> Due)
{
    /// <summary>Parts that have been moved out of it to another unit since, each with that unit; null for one that is kept.</summary>
    public required IReadOnlyDictionary<string, Unit?> MovedOut { get; init; }

    /// <summary>The last job that recorded how the plate differential was built; null if none did.</summary>
    public Job? LastDifferential { get; init; }

    /// <summary>The parts to inspect first: those graded renew but not renewed, then those graded watch.</summary>
    public IEnumerable<Part> First => Gearbox.Parts
        .Where(p => GradeOf(p) is Grade.Renew or Grade.Watch)
        .OrderByDescending(p => GradeOf(p));

    /// <summary>The other parts.</summary>
    public IEnumerable<Part> Others => Gearbox.Parts.Where(p => !MovedOut.ContainsKey(p.Id)).Except(First);

    public static UnitStory Of(BookAssessment assessment, Unit unit, DateOnly received)
    {
        var gearbox = assessment.Book.GearboxOf(unit);
        var seen = new Dictionary<string, (FindingAssessment, Job)>(StringComparer.Ordinal);
        var set = new Dictionary<string, (JobSetting, Job)>(StringComparer.Ordinal);
        var renewed = new Dictionary<string, (Renewal, Job)>(StringComparer.Ordinal);
        foreach (var job in assessment.Book.JobsOf(unit.Id))
        {
            foreach (var findings in assessment.Jobs[job.Number].Findings.GroupBy(f => f.Part.Id))
            {
                seen[findings.Key] = (findings.MaxBy(f => f.Grade)!, job);
            }

            foreach (var renewal in job.Renewed)
            {
                seen.Remove(renewal.Part);
                renewed[renewal.Part] = (renewal, job);
            }

            foreach (var setting in job.Settings.Where(s => s.Pack.Count > 0 || s.Built.Count > 0))
            {
                set[setting.Setting] = (setting, job);
            }
        }

        // A part that another unit took over is that unit's to inspect.
        var moved = new Dictionary<string, Unit?>(StringComparer.Ordinal);
        foreach (var part in gearbox.Parts.Where(p => assessment.Lives.Ledger.InPlace(unit.Id, p.Id) is null && assessment.Lives.StaysIn(unit, p.Id).Any()))
        {
            var gone = assessment.Lives.StaysIn(unit, part.Id).Last().Life;
            moved[part.Id] = gone.Spans[^1].Unit == unit.Id ? null : assessment.Book.Units[gone.Spans[^1].Unit];
            seen.Remove(part.Id);
            renewed.Remove(part.Id);
        }

        var last = assessment.Book.JobsOf(unit.Id).LastOrDefault();
        var teeth = last is null
            ? new FittedTeeth(gearbox.RatioSetOf(unit.RatioSet), unit.DropPair, unit.FinalDrive)
            : FittedTeeth.After(assessment.Book, assessment.Jobs[last.Number]);
        return new UnitStory(
            unit, gearbox, assessment.Book.Shop, last, teeth, seen, set, renewed,
            [.. ServiceAssessment.Of(unit, assessment.Lives, received).Where(d => d.State != DueState.NotYet && d.Part is not null)])
        {
            MovedOut = moved,
            LastDifferential = assessment.Book.JobsOf(unit.Id).LastOrDefault(j => j.Differential?.Built is not null),
        };
    }

    /// <summary>The last grade of a part; null if it was not inspected since it was fitted.</summary>
    public Grade? GradeOf(Part part) => Seen.TryGetValue(part.Id, out var seen) ? seen.Finding.Grade : null;
}
