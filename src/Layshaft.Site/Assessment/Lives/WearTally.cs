using Layshaft.Book.Records;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>One reading on the way of a part's wear.</summary>
/// <param name="Day">When the job that took it came in.</param>
/// <param name="Life">Which of the parts that sat in one place of the unit, counted from 0.</param>
/// <param name="Use">What the part had run since new.</param>
/// <param name="Share">Share of the wear allowance used.</param>
public readonly record struct DatedReading(DateOnly Day, int Life, double Use, double Share);

/// <summary>What one unit tells of the wear of one measure: the last two measured parts in one place, of which the whole usage is known.</summary>
/// <param name="Part">The part.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Uncertainty">The largest standard uncertainty of a reading, a share of the wear allowance; 0 if none is known.</param>
/// <param name="Readings">The readings, earliest first.</param>
public sealed record MeasuredWear(string Part, string Measure, double Uncertainty, IReadOnlyList<DatedReading> Readings)
{
    /// <summary>The readings of the last measured part up to a day.</summary>
    /// <param name="before">The day; its own readings do not count.</param>
    public IReadOnlyList<WearReading> Until(DateOnly before)
    {
        var life = Readings.Where(r => r.Day < before).Select(r => r.Life).DefaultIfEmpty(-1).Max();
        return [.. Readings.Where(r => r.Day < before && r.Life == life).Select(r => new WearReading(r.Use, r.Share))];
    }
}

/// <summary>What one unit tells of wear.</summary>
/// <param name="Unit">The id of the unit.</param>
/// <param name="Gearbox">The id of its type.</param>
/// <param name="Counted">What its usage is counted in.</param>
/// <param name="Owners">The ids of its owners, first owner first.</param>
/// <param name="Measures">What was measured.</param>
public sealed record WearTally(string Unit, string Gearbox, UseMeasure Counted, IReadOnlyList<string> Owners, IReadOnlyList<MeasuredWear> Measures)
{
    private const int Lives = 2;

    /// <summary>What the units of a book, or of a part of one that no other part touches, tell of wear.</summary>
    /// <param name="assessment">The book, worked out.</param>
    public static IReadOnlyList<WearTally> Of(BookAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return [.. assessment.Book.Units.Values.Select(unit => Of(unit, assessment))];
    }

    private static WearTally Of(Unit unit, BookAssessment assessment)
    {
        var (lives, counted, places) = (assessment.Lives, unit.UseAtStart.Unit.Measure(), new Dictionary<(string Part, string Measure), Place>());
        foreach (var job in assessment.Book.JobsOf(unit.Id).Where(j => j.Findings.Any(f => f.Measurements.Count > 0)))
        {
            foreach (var finding in assessment.Jobs[job.Number].Findings)
            {
                if (lives.LifeIn(job, finding.Part.Id) is not { TotalIsWhole: true, IsDoubtful: false } life || life.UseAt(unit.Id, job.Use.Counted()) is not { Amount: > 0 } use || use.Measure != counted)
                {
                    continue;
                }

                foreach (var measured in finding.Measures)
                {
                    var key = (finding.Part.Id, measured.Measure.Id);
                    var place = places.TryGetValue(key, out var known) ? known : places[key] = new Place();
                    place.Add(life, job.Received, use.Amount, measured);
                }
            }
        }

        return new WearTally(unit.Id, unit.Gearbox, counted, [.. unit.Owners.Select(o => o.Customer)], [.. places.Select(p => p.Value.Of(p.Key.Part, p.Key.Measure))]);
    }

    private sealed class Place
    {
        private readonly List<PartLife> seen = [];
        private readonly List<DatedReading> readings = [];
        private double uncertainty;

        public void Add(PartLife life, DateOnly day, double use, MeasureAssessment measured)
        {
            var at = seen.FindIndex(l => ReferenceEquals(l, life));
            if (at < 0)
            {
                at = seen.Count;
                seen.Add(life);
            }

            var share = measured.Wear.ShareUsed;
            readings.Add(new DatedReading(day, at, Math.Round(use, 3), Math.Round(share.Value, 4)));
            uncertainty = Math.Max(uncertainty, share.UncertaintyIsKnown ? share.StandardUncertainty : 0);
        }

        public MeasuredWear Of(string part, string measure) =>
            new(part, measure, Math.Round(uncertainty, 4), [.. readings.Where(r => r.Life >= seen.Count - Lives)]);
    }
}
