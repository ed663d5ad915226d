using System.Globalization;
using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>What the dogs of each gear bear at an event when the engine is not matched to the gear.</summary>
/// <param name="Case">The car at the venue.</param>
/// <param name="Gears">What was, or will be, fitted.</param>
/// <param name="IsFromLastEvent">Whether it is the event before the job, of which the wear tells.</param>
/// <param name="ByGear">One entry for each gear, first gear first; the ring's name is the gear's number.</param>
public sealed record DogLoad(GearingCase Case, FittedGears Gears, bool IsFromLastEvent, IReadOnlyList<Eng.RingWork> ByGear)
{
    /// <summary>Works it out; null when no run down the venue comes of it.</summary>
    public static DogLoad? Of(GearingCase made, FittedGears gears, bool isFromLastEvent)
    {
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(gears);
        var car = made.With(gears.DropPair, gears.FinalDrive);
        Eng.DogRing[] dogs =
        [
            .. Enumerable.Range(1, car.Drivetrain.Gears.Count).Select(g => new Eng.DogRing(g.ToString(CultureInfo.InvariantCulture), [g])),
        ];
        Eng.DogInertias? inertias = made.Setup.Car.Engine.Inertia is { } engine
            ? new Eng.DogInertias(engine + (made.Box.Gearbox.InputInertia ?? default))
            : null;
        var work = Eng.DogWork.For(car, Eng.VenueRun.For(car, made.Course), dogs, new Eng.ShiftStyle(RotationalSpeed.Zero), made.Laps, inertias);
        return work.Value is { Engagements.Count: > 0 } done ? new DogLoad(made, gears, isFromLastEvent, done.Rings) : null;
    }

    /// <summary>
    /// The greatest share of its wear allowance that a dog ring's side has used, by gear. A measure belongs to the gear
    /// whose number ends its id (<c>radius-2</c>); on a ring whose measures name no gear all belong to the ring's own.
    /// </summary>
    public static IReadOnlyDictionary<int, double> WearByGear(IEnumerable<FindingAssessment> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var wear = new SortedDictionary<int, double>();
        foreach (var finding in findings.Where(f => f.Part is { Kind: PartKind.DogRing, Gear: > 0 }))
        {
            var first = finding.Part.Gear!.Value;
            var named = finding.Part.Measures.Any(m => GearOf(m.Id, first) is not null);
            foreach (var measure in finding.Measures)
            {
                if ((named ? GearOf(measure.Measure.Id, first) : first) is { } gear)
                {
                    var used = Math.Max(0, measure.Wear.ShareUsed.Value);
                    wear[gear] = Math.Max(used, wear.GetValueOrDefault(gear));
                }
            }
        }

        return wear;
    }

    // A ring serves its own gear and the next one.
    private static int? GearOf(string id, int first) =>
        int.TryParse(id.AsSpan(id.LastIndexOf('-') + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var gear) && (gear == first || gear == first + 1)
            ? gear
            : null;
}
