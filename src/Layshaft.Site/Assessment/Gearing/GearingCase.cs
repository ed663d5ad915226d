using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>Everything that a gearing is worked out from: a unit in its car at a venue on a day.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Box">Its gears and what is stocked for it.</param>
/// <param name="Setup">The car.</param>
/// <param name="Venue">The venue as written.</param>
/// <param name="Plan">The event; null for the venue in standard air.</param>
/// <param name="Air">The air.</param>
/// <param name="Track">The venue as the car drives it.</param>
/// <param name="Car">The car on the day, with the first pair and final drive of the stock.</param>
public sealed record GearingCase(
    Unit Unit, GearboxStock Box, CarSetup Setup, Venue Venue, EventPlan? Plan, EventAir Air, Course Track, Eng.Car Car)
{
    private static readonly Length UsualWear = Length.FromMillimeters(3);

    /// <summary>The owner's own gears for the unit; null for none.</summary>
    public Kit? Kit { get; init; }

    /// <summary>What is fitted, or is to be fitted for the event.</summary>
    public Eng.GearSet? Fitted { get; init; }

    /// <summary>The pairs to choose from for each gear, first gear first; empty if neither the workshop nor the owner has any.</summary>
    public IReadOnlyList<IReadOnlyList<Eng.ToothPair>> GearPairs
    {
        get
        {
            GearChoices[] choices = [.. Box.Gearbox.GearPairs, .. Kit?.GearPairs ?? []];
            var gears = (Fitted is null ? Car.Drivetrain : Car.Drivetrain.With(Fitted)).Gears;
            return choices.Length == 0 ? [] :
            [
                .. gears.Select((gear, i) => (IReadOnlyList<Eng.ToothPair>)
                    [.. gear.Pairs.Concat(choices.Where(c => c.Gear == i + 1).SelectMany(c => c.Pairs).Select(GearboxStock.PairOf)).Distinct()]),
            ];
        }
    }

    /// <summary>The combinations of the pairs to choose from with drop pairs and final drives; 0 if no pairs can be changed.</summary>
    public long Combinations => GearPairs is { Count: > 0 } pairs && Box.With(Kit) is var stock
        ? pairs.Aggregate((long)stock.DropPairs.Count * stock.FinalDrives.Count, (all, pair) => all * pair.Count)
        : 0;

    /// <summary>The straights as they are calculated.</summary>
    public Eng.Venue Course => Track.Venue;

    /// <summary>Laps or runs of the event; 1 where none is planned.</summary>
    public int Laps => Plan?.Laps ?? 1;

    /// <summary>The limits that a gearing is held against.</summary>
    public Eng.GearingGuards Guards => new(Setup.Car.PropshaftLimit, Box.Gearbox.OutputLimit);

    /// <summary>The ways in which the day may differ: the usual ones, tyres worn as far as this car's may be.</summary>
    public IReadOnlyList<Eng.ConditionChange> Changes =>
    [
        .. Eng.ConditionChange.Usual.Select(c => c.Wear > Length.Zero ? c with { Wear = Setup.Car.Tyre.Wear ?? UsualWear } : c),
    ];

    /// <summary>The car with a set of gears.</summary>
    public Eng.Car With(Eng.GearSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return Car.With(Car.Drivetrain.With(set));
    }

    /// <summary>Ranks everything in stock and in the owner's kit, what is fitted, and the sets asked about.</summary>
    /// <param name="others">Sets to rank besides, in stock or not.</param>
    public Eng.Outcome<Eng.GearingRanking> Rank(params Eng.GearSet[] others) => Eng.GearingRanking.Rank(new Eng.RankingQuestion(Car, Course, Box.With(Kit))
    {
        Fitted = Fitted,
        GearPairs = GearPairs,
        Work = GearChange.WorkOf(Box.Gearbox.ChangeTimes),
        Bought = set => GearChange.Of(this, set)?.Pairs.Count(p => p.Source == GearSource.Shelf) ?? 0,
        Others = others,
        Guards = Guards,
        Changes = Changes,
    });

    /// <summary>The straights on which not even an infinitely variable transmission brings this car to the corner's speed.</summary>
    public IEnumerable<(Straight Straight, Eng.GearingFault Fault)> Unreachable()
    {
        return Eng.VenueRun.Ideal(Shortest(Box, Car), Course).Straights.Zip(Track.Ends)
            .Where(s => s.First.Fault is not null).Select(s => (Venue.Straights[s.Second], s.First.Fault!));
    }

    /// <summary>A car with the shortest drop pair and final drive of its box.</summary>
    internal static Eng.Car Shortest(GearboxStock box, Eng.Car car) =>
        car.With(car.Drivetrain.With(box.Stock.DropPairs.MaxBy(p => p?.Ratio ?? 1), box.Stock.FinalDrives.MaxBy(f => f.Ratio)!));

    /// <summary>Combines unit, car and venue on a day; null when a figure cannot be used, which the problems then say.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="box">Its gears.</param>
    /// <param name="setup">The car.</param>
    /// <param name="venue">The venue.</param>
    /// <param name="plan">The event; null for the venue in standard air.</param>
    /// <param name="track">The venue as the car on that day drives it.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    internal static GearingCase? Of(Unit unit, GearboxStock box, CarSetup setup, Venue venue, EventPlan? plan, Func<Eng.Car, Course?> track, ProblemList problems)
    {
        if (EventAir.Of(venue, plan, problems) is not { } air)
        {
            return null;
        }

        var standard = setup.Car.Engine.Corrected ? Eng.PowerStandard.Iso1585 : Eng.PowerStandard.None;
        var faults = new FaultPlaces(problems);
        var wind = plan?.Wind is { } speed ? new Eng.Wind(speed, plan.WindFrom) : null;
        if (faults.Take(MeshByMesh(setup, box), subject => subject == "mesh_efficiency" ? box.Gearbox.Origin.At(subject) : setup.Car.Origin.At(subject)) is not { } vehicle)
        {
            return null;
        }

        var car = faults.Take(
            Eng.Car.Create(vehicle, setup.Engine, box.Drivetrain, setup.Tyre, new Eng.Conditions(air.Air, standard, wind)),
            subject => subject == "wind" && plan is not null ? plan.Origin.At(subject) : (plan?.Origin ?? venue.Origin).Place);
        return car is not null && track(car) is { } course ? new GearingCase(unit, box, setup, venue, plan, air, course, car) { Kit = unit.Owners[^1].Kit } : null;
    }

    // Mesh by mesh only where the gearbox's and the car's figure are both known.
    private static Eng.Outcome<Eng.Vehicle> MeshByMesh(CarSetup setup, GearboxStock box) => Eng.Vehicle.Create(setup.Vehicle.Spec with
    {
        MeshEfficiency = setup.Car.AxleEfficiency is null ? null : box.Gearbox.MeshEfficiency,
        AxleEfficiency = box.Gearbox.MeshEfficiency is null ? null : setup.Car.AxleEfficiency,
    });
}
