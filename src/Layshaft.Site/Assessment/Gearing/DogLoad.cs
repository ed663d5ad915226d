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
public sealed record DogLoad(GearingCase Case, Eng.GearSet Gears, bool IsFromLastEvent, IReadOnlyList<Eng.RingWork> ByGear)
{
    /// <summary>Works it out; null when no run down the venue comes of it.</summary>
    public static DogLoad? Of(GearingCase made, Eng.GearSet gears, bool isFromLastEvent)
    {
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(gears);
        var car = made.With(gears);
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

    /// <summary>The greatest share of its wear allowance that a dog ring's side has used, by the gear its measures name.</summary>
    public static IReadOnlyDictionary<int, double> WearByGear(IEnumerable<FindingAssessment> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var wear = new SortedDictionary<int, double>();
        foreach (var measure in findings.Where(f => f.Part.Kind == PartKind.DogRing).SelectMany(f => f.Measures))
        {
            if (measure.Measure.Gear is > 0 and { } gear)
            {
                wear[gear] = Math.Max(Math.Max(0, measure.Wear.ShareUsed.Value), wear.GetValueOrDefault(gear));
            }
        }

        return wear;
    }
}
