using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>A part with a service life, at one job.</summary>
/// <param name="Part">The part.</param>
/// <param name="Ran">What it had run.</param>
/// <param name="Life">Its service life, in the same measure.</param>
public sealed record LifedPart(Part Part, EngineUse Ran, EngineUse Life)
{
    /// <summary>Whether its service life is used up.</summary>
    public bool IsPast => Ran.Amount >= Life.Amount;

    /// <summary>What is left, 0 or more.</summary>
    public EngineUse Left => Life with { Amount = Math.Max(0, Life.Amount - Ran.Amount) };

    /// <summary>The parts as a job found them; parts whose whole life is not known are left out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="lives">The lives of all parts.</param>
    public static IEnumerable<LifedPart> AsFound(Job job, LifeAssessment lives)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lives);
        return At(job, lives, stays => stays.FirstOrDefault());
    }

    /// <summary>The parts as a job left them; parts whose whole life is not known are left out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="lives">The lives of all parts.</param>
    public static IEnumerable<LifedPart> AsLeft(Job job, LifeAssessment lives)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lives);
        return At(job, lives, stays => stays.LastOrDefault());
    }

    /// <summary>Notes each part past its service life that a finished job refitted without a written decision.</summary>
    /// <param name="lives">The lives of all parts.</param>
    /// <param name="problems">Receives the notes.</param>
    public static void Check(LifeAssessment lives, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(lives);
        ArgumentNullException.ThrowIfNull(problems);
        foreach (var job in lives.Book.Jobs.Where(j => j is { Finished: not null, Stripped: not null }))
        {
            foreach (var past in AsFound(job, lives).Where(p => p.IsPast && !job.Renewed.Any(r => r.Part == p.Part.Id)))
            {
                var findings = job.Findings.Where(f => f.Part == past.Part.Id).ToArray();
                if (!findings.Any(f => f.LeftIn is not null) && !job.Offers.Any(o => o.Declined.Any(l => l.Part == past.Part.Id)))
                {
                    problems.Note(
                        "past-service-life",
                        findings.Length > 0 ? findings[0].Origin.At("part") : job.Origin.At("stripped"),
                        FormattableString.Invariant($"'{past.Part.Name}' had run {past.Ran.Amount:0.#} of its service life of {past.Part.ServiceLife} and was refitted without a written decision."),
                        $"Add it to 'renewed', or 'left_in: …' with the reason to its finding.");
                }
            }
        }
    }

    // A part renewed at a job ends one stay and begins another at the same usage of the unit.
    private static IEnumerable<LifedPart> At(Job job, LifeAssessment lives, Func<IEnumerable<(PartLife Life, LifeSpan Span)>, (PartLife Life, LifeSpan Span)> choose)
    {
        var unit = lives.Book.Units[job.Unit];
        var use = job.Use.Counted();
        foreach (var part in lives.Book.GearboxOf(unit).Parts)
        {
            if (part.ServiceLife?.Counted() is not { } allowed || allowed.Measure != use.Measure)
            {
                continue;
            }

            var (life, span) = choose(lives.StaysIn(unit, part.Id).Where(s => s.Span.UseAtStart.Measure == use.Measure && s.Span.UseAtStart.Amount <= use.Amount && use.Amount <= s.Span.UseAtEnd.Amount));
            if (life is { TotalIsWhole: true, IsDoubtful: false } && life.UseBefore(span) is { IsMixed: false } before && before.Measures.All(m => m == use.Measure))
            {
                yield return new LifedPart(part, use with { Amount = (before.In(use.Measure) ?? 0) + use.Amount - span.UseAtStart.Amount }, allowed);
            }
        }
    }
}
