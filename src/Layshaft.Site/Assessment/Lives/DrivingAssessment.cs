using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Engineering.Measurement;
using Pattern = Layshaft.Engineering.Life.WearPattern;
using Rule = Layshaft.Book.Records.WearPattern;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>What the dog rings of a job say about the driving.</summary>
/// <param name="Wear">Wear by gear, lowest gear first.</param>
/// <param name="Rules">The rules of the shop's advice that hold.</param>
public sealed record DrivingAssessment(IReadOnlyList<GearWear> Wear, IReadOnlyList<Rule> Rules)
{
    /// <summary>Reads a job's findings on dog rings.</summary>
    /// <param name="job">The job.</param>
    /// <param name="work">Their wear against the work of the dogs; null when that is not known.</param>
    public static DrivingAssessment Of(JobAssessment job, WearAgainstWork? work = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        FindingAssessment[] rings = [.. job.Findings.Where(f => f.Part.Kind == PartKind.DogRing)];
        GearWear[] wear =
        [
            .. rings.SelectMany(f => f.Measures.Select(m => (Gear: GearOf(m.Measure, f.Part), f.Finding.Flank, Share: Math.Max(0, m.Wear.ShareUsed.Value))))
                .Where(w => w.Gear is not null)
                .GroupBy(w => w.Gear!.Value)
                .OrderBy(g => g.Key)
                .Select(g => new GearWear(g.Key, Worst(g.Where(w => w.Flank != Flank.Coast).Select(w => w.Share)), Worst(g.Where(w => w.Flank == Flank.Coast).Select(w => w.Share)))),
        ];
        return new DrivingAssessment(wear, [.. RulesOf(wear, rings, work)]);
    }

    /// <summary>
    /// The gear whose dogs a measure is taken on: a ring serves two gears, so the number at the end of the measure's id says
    /// which (radius-2), 0 for reverse. A measure without one (the fork's groove) tells of no gear.
    /// </summary>
    public static int? GearOf(Measure measure, Part part)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(part);
        var at = measure.Id.LastIndexOf('-') + 1;
        return at > 0 && int.TryParse(measure.Id.AsSpan(at), NumberStyles.None, CultureInfo.InvariantCulture, out var gear)
            ? gear == 0 ? GearWear.Reverse : gear
            : null;
    }

    private static IEnumerable<Rule> RulesOf(GearWear[] wear, FindingAssessment[] rings, WearAgainstWork? work)
    {
        var signs = DrivingSigns.Of(wear);
        var pattern = signs.Pattern is Pattern.LowGearsAndReverseWorst || (signs.Pattern is Pattern.NoPattern && LowGears.AreWorst(wear))
            ? Rule.LowGearsWorst
            : signs.Pattern switch
            {
                Pattern.OneGearOnly => Rule.OneGear,
                Pattern.AllAlike => Rule.AllAlike,
                Pattern.HardlyWorn => Rule.NothingWorn,
                Pattern.NoPattern when StandsOut(work) => Rule.OneGear,
                _ => (Rule?)null,
            };
        if (pattern is { } found)
        {
            yield return found;
        }

        // Where too few gears were measured on both sides, the side on which the technician found the worn rings says it.
        var sides = rings.Where(f => f.Grade != Grade.Reuse).Select(f => f.Finding.Flank).Distinct().ToArray();
        var side = signs.Side switch
        {
            WornSide.DriveSide => Flank.Drive,
            WornSide.CoastSide => Flank.Coast,
            WornSide.TooFewToSay => sides is [{ } one] ? one : (Flank?)null,
            _ => null,
        };
        if (side is { } worn)
        {
            yield return worn == Flank.Drive ? Rule.DriveSide : Rule.CoastSide;
        }
    }

    // Starts and the paddock are not in the work, so first gear always does more than was reckoned.
    private static bool StandsOut(WearAgainstWork? work) => work is { Verdict: WearAgainstWorkVerdict.OneGearStandsOut, Gear: > 1 };

    private static double? Worst(IEnumerable<double> shares) => shares.Select(s => (double?)s).Max();
}
