using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Gearing;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>The wear of a job's dog rings set against the work that their dogs do.</summary>
public static class RingWear
{
    /// <summary>
    /// Compares them, each gear's wear by what its ring had run: rings renewed at different times have different use behind
    /// them. A gear whose ring's use is not known is left aside.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="lives">The lives of all parts.</param>
    /// <param name="dogs">The work of the dogs; null when it could not be worked out.</param>
    /// <returns>The comparison; null without work to compare with.</returns>
    public static WearAgainstWork? Against(JobAssessment job, LifeAssessment lives, DogLoad? dogs)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lives);
        if (dogs is null)
        {
            return null;
        }

        var rates = new SortedDictionary<int, double>();
        foreach (var ring in job.Findings.Where(f => f.Part.Kind == PartKind.DogRing))
        {
            if (lives.LifeIn(job.Job, ring.Part.Id) is not { TotalIsWhole: true, IsDoubtful: false } life
                || life.UseAt(job.Unit.Id, job.Job.Use.Counted()) is not { Amount: > 0 } ran)
            {
                continue;
            }

            foreach (var (gear, used) in DogLoad.WearByGear([ring]))
            {
                rates[gear] = Math.Max(used / ran.Amount, rates.GetValueOrDefault(gear));
            }
        }

        return WearAgainstWork.Of(rates, dogs.ByGear.Select((work, i) => (Gear: i + 1, work.Share)).ToDictionary(w => w.Gear, w => w.Share));
    }
}
