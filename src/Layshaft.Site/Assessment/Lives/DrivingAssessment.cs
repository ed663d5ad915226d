using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>What the dogs of a job say about how they engage: from the gear and side of each measure, whatever its name.</summary>
/// <param name="Wear">Wear by gear, reverse first, then lowest gear first.</param>
/// <param name="Signs">What it says.</param>
/// <param name="BackCuts">Back-cuts that have reached the watch level, by gear.</param>
/// <param name="WornSelectors">Forks, rails and detents that did not pass as serviceable.</param>
/// <param name="SoundGears">Gears whose wheels were inspected and are all serviceable.</param>
public sealed record DrivingAssessment(
    IReadOnlyList<GearWear> Wear,
    DrivingSigns Signs,
    IReadOnlyList<(int Gear, MeasureAssessment Measure)> BackCuts,
    IReadOnlyList<Part> WornSelectors,
    IReadOnlyCollection<int> SoundGears)
{
    /// <summary>Reads a job's findings.</summary>
    /// <param name="job">The job.</param>
    public static DrivingAssessment Of(JobAssessment job)
    {
        ArgumentNullException.ThrowIfNull(job);
        (int Gear, Flank? Side, MeasureAssessment Measure, DogWear Wear)[] dogs =
        [
            .. job.Findings.SelectMany(f => f.Measures.Where(m => m.Measure.Gear is not null).Select(m => (
                m.Measure.Gear is 0 ? GearWear.Reverse : m.Measure.Gear!.Value,
                m.Measure.Side ?? f.Finding.Flank,
                m,
                new DogWear(m.Wear.ShareUsed.Value, m.Wear.ShareUsed.ExpandedUncertainty, f.Part.Grading.WatchFrom)))),
        ];

        // A back-cut is the angle of a flank: it holds a gear in, and says nothing of how the gear went in.
        GearWear[] wear =
        [
            .. dogs.Where(d => d.Measure.Measure.New is not Angle)
                .GroupBy(d => d.Gear)
                .OrderBy(g => g.Key)
                .Select(g => new GearWear(g.Key, Worst(g, Flank.Drive), Worst(g, Flank.Coast), Worst(g, null))),
        ];
        return new DrivingAssessment(
            wear,
            DrivingSigns.Of(wear, [.. (job.Gearbox.RatioSetOf(job.Unit.RatioSet)?.Gears ?? []).Select(g => (double)g.Driven / g.Driver)]),
            [
                .. dogs.Where(d => d.Measure.Measure.New is Angle && d.Wear.IsWorn)
                    .GroupBy(d => d.Gear)
                    .OrderBy(g => g.Key)
                    .Select(g => (g.Key, g.MaxBy(d => d.Wear.Share).Measure)),
            ],
            [.. job.Findings.Where(f => f.Part.Kind == PartKind.Selector && f.Grade != Grade.Reuse).Select(f => f.Part).DistinctBy(p => p.Id)],
            [
                .. job.Findings.Where(f => f.Part is { Kind: PartKind.Gear, Gear: not null })
                    .GroupBy(f => f.Part.Gear is 0 ? GearWear.Reverse : f.Part.Gear!.Value)
                    .Where(g => g.All(f => f.Grade == Grade.Reuse))
                    .Select(g => g.Key),
            ]);
    }

    /// <summary>Worn selector parts that serve one of some gears: a fork serves its own gear and the next one, a part without a gear all.</summary>
    /// <param name="gears">The gears.</param>
    public IEnumerable<Part> WornSelectorsOf(IReadOnlyCollection<int> gears) =>
        WornSelectors.Where(p => p.Gear is not { } gear || gears.Contains(gear is 0 ? GearWear.Reverse : gear) || gears.Contains(gear + 1));

    private static DogWear? Worst(IEnumerable<(int Gear, Flank? Side, MeasureAssessment Measure, DogWear Wear)> dogs, Flank? side) =>
        dogs.Where(d => d.Side == side).Select(d => d.Wear).MaxBy(w => w.Share);
}
