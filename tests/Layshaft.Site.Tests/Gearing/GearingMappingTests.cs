using Layshaft.Book.Problems;
using Layshaft.Book.Values;
using Layshaft.Site.Assessment.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Tests.Gearing;

public class GearingMappingTests
{
    private static readonly Assessment.BookAssessment s_book = DemoBook.Review.Assessment!;

    [Fact]
    public void A_car_keeps_its_figures()
    {
        var setup = s_book.Gearing.Cars["saloon-44"];
        var spec = setup.Vehicle.Spec;
        Assert.Equal(0.37 * 2.04, spec.DragArea.SquareMeters, 5e-10);
        Assert.Equal(0.15 * 2.04, spec.DownforceArea.SquareMeters, 5e-10);
        Assert.Equal(0.89, spec.DrivelineEfficiency, 5e-10);
        Assert.Equal(Eng.CircumferenceBasis.Measured, setup.Tyre.Basis);
        Assert.Equal("W", setup.Tyre.SpeedSymbol!.Symbol);

        // Growth of 0.4 % is written for 200 km/h.
        Assert.Equal(1.936 * 1.004, setup.Tyre.CircumferenceAt(Speed.FromKilometersPerHour(200)).Meters, 5e-10);
    }

    [Fact]
    public void A_pair_written_as_driven_over_driver_is_read_so()
    {
        // ISO 1122-1: teeth of the wheel over those of the pinion. 28 teeth driving 25 turn it 28/25 = 1.12 times as fast.
        var pair = GearboxStock.PairOf(Teeth.Parse("25/28").Value);
        Assert.Equal((28, 25), (pair.Driver, pair.Driven));
        Assert.True(pair.IsOverdrive);
        Assert.Equal(1.12, 1 / pair.Ratio, 1e-12);
    }

    [Fact]
    public void Every_stocked_pair_is_offered_both_ways_round_and_once()
    {
        var pairs = s_book.Gearing.Boxes[("ostrel-t6", "standard")].Stock.DropPairs;
        Assert.Equal(17, pairs.Count); // nine pairs, 26/26 is its own swap
        Assert.Equal(pairs.Count, pairs.Distinct().Count());
        Assert.All(pairs, p => Assert.Contains(p!.Swapped, pairs));
    }

    [Fact]
    public void Pairs_that_may_not_be_swapped_are_offered_as_written()
    {
        var box = s_book.Book.Gearboxes["ostrel-t6"];
        var fixedBox = box with { DropGears = box.DropGears! with { Swappable = false } };
        Assert.Equal(9, GearboxStock.Of(fixedBox, box.RatioSets[0], new ProblemList())!.Stock.DropPairs.Count);
    }

    [Fact]
    public void A_box_without_drop_gears_ranks_its_final_drives_only()
    {
        var box = s_book.Book.Gearboxes["ostrel-t6"] with { DropGears = null };
        var stock = GearboxStock.Of(box, box.RatioSets[0], new ProblemList())!;
        Assert.Null(Assert.Single(stock.Stock.DropPairs));
        var made = MadeFor("0518");
        var ranking = (made with { Box = stock, Car = made.Car.With(stock.Drivetrain), Fitted = null }).Rank().Require();
        Assert.Equal(4, ranking.Candidates.Count);
        Assert.All(ranking.Candidates, c => Assert.Null(c.DropPair));
    }

    [Fact]
    public void Drop_gears_before_the_gears_turn_the_dog_rings_faster_or_slower()
    {
        Assert.Equal(Eng.DropPairPlace.GearboxInput, s_book.Gearing.Boxes[("calvane-s6", "circuit")].Drivetrain.Place);
        Assert.Equal(Eng.DropPairPlace.GearboxOutput, s_book.Gearing.Boxes[("ostrel-t6", "standard")].Drivetrain.Place);
    }

    [Fact]
    public void The_lowest_speed_before_a_straight_is_that_of_the_corner_before_it()
    {
        var course = MadeFor("0518").Course; // Brackwater, a lap: the last corner comes before the first straight
        Assert.Equal(90, course.Straights[0].CornerMinimum!.Value.KilometersPerHour, 5e-7);
        Assert.Equal(76, course.Straights[1].CornerMinimum!.Value.KilometersPerHour, 5e-7);
    }

    [Fact]
    public void Corner_speeds_are_the_events_then_the_cars_then_those_of_the_radius_then_the_venues()
    {
        var saloon = CornerTaken.All(MadeFor("0518").Venue, MadeFor("0518").Setup, null); // Brackwater, measured in two corners
        Assert.Equal(CornerSource.Car, saloon.Single(c => c.Corner == "Capstan").Source);
        Assert.Equal(89, saloon.Single(c => c.Corner == "Capstan").Exit!.Value.KilometersPerHour, 1e-9);
        Assert.Equal(89, MadeFor("0518").Course.Straights[1].StartSpeed.KilometersPerHour, 1e-9);
        Assert.Equal((CornerSource.Venue, 92), (saloon.Single(c => c.Corner == "Lock Gates").Source, saloon.Single(c => c.Corner == "Lock Gates").Slowest!.Value.KilometersPerHour));
        var damp = CornerTaken.All(MadeFor("0628").Venue, MadeFor("0628").Setup, MadeFor("0628").Plan);
        Assert.Equal((CornerSource.Event, 64), (damp.Single(c => c.Corner == "Lighthouse").Source, damp.Single(c => c.Corner == "Lighthouse").Slowest!.Value.KilometersPerHour));
        Assert.Equal(64, MadeFor("0628").Course.Straights[4].EndSpeed.KilometersPerHour, 1e-9);
        var tower = CornerTaken.All(MadeFor("0411").Venue, MadeFor("0411").Setup, null).Single(c => c.Corner == "Tower");
        Assert.Equal(CornerSource.Radius, tower.Source);
        Assert.Equal(104.0 / 88, tower.Exit!.Value / tower.Slowest!.Value, 1e-9); // in proportion to the venue's
        var slower = CornerTaken.All(MadeFor("0411").Venue, s_book.Gearing.Cars["saloon-8"], null).Single(c => c.Corner == "Tower");
        Assert.True(slower.Slowest < tower.Slowest);
    }

    [Fact]
    public void Wind_blows_against_the_straights_that_head_into_it()
    {
        var made = MadeFor("0628");
        Assert.Equal(22, made.Car.Conditions.Wind!.Speed.KilometersPerHour, 1e-9);
        Assert.Equal(240, made.Car.Conditions.Wind.From!.Value.Degrees, 1e-9);
        Assert.True(made.Car.Conditions.Wind.Against(made.Course.Straights[2].Heading) > Speed.Zero); // 250°
        Assert.True(made.Car.Conditions.Wind.Against(made.Course.Straights[0].Heading) < Speed.Zero); // 75°
    }

    [Fact]
    public void Efficiencies_are_taken_mesh_by_mesh_where_gearbox_and_car_give_them()
    {
        Assert.Equal(0.988, MadeFor("0438").Car.Vehicle.Spec.MeshEfficiency);
        Assert.Null(MadeFor("0518").Car.Vehicle.Spec.MeshEfficiency);
        Assert.Equal(6500, MadeFor("0438").Setup.Engine.LaunchAt.RevolutionsPerMinute, 1e-9);
        Assert.Equal(190, MadeFor("0438").Setup.Vehicle.Spec.RollingDoublesAt!.Value.KilometersPerHour, 1e-9);
    }

    [Fact]
    public void A_hill_begins_at_rest_and_ends_at_full_throttle()
    {
        var made = MadeFor("0438");
        Assert.Equal(Speed.Zero, made.Course.Straights[0].StartSpeed);
        Assert.Null(made.Course.Straights[0].CornerMinimum);
        var run = Eng.VenueRun.For(made.With(new Eng.GearSet(made.Box.Stock.DropPairs[0], made.Box.Stock.FinalDrives[0])), made.Course);
        Assert.Null(run.Straights[^1].Fault);
        Assert.Equal(265, run.Straights[^1].BrakingPoint.Meters, 5e-7);
    }

    [Fact]
    public void The_air_is_that_of_the_day_where_it_is_written()
    {
        var made = MadeFor("0518");
        Assert.Equal(AirSource.Temperature, made.Air.Source);
        Assert.Equal(20, made.Air.Air.Temperature.DegreesCelsius, 5e-7);
        var standard = s_book.Gearing.Case(made.Unit, made.Venue, null, new ProblemList())!;
        Assert.Equal(AirSource.Altitude, standard.Air.Source);
        Assert.True(made.Air.Air.Density < standard.Air.Air.Density);
    }

    [Fact]
    public void What_is_fitted_is_what_the_last_visit_before_left()
    {
        var job = s_book.Jobs["0628"].Job;
        var left = FittedGears.AsItLeft(s_book.Book, job);
        Assert.Equal("33/27", left.DropPair!.ToString());
        Assert.Equal("39/10", left.FinalDrive.ToString());
    }

    [Fact]
    public void Wear_is_told_by_the_gear_that_a_measure_names()
    {
        var wear = DogLoad.WearByGear(s_book.Jobs["0628"].Findings);
        Assert.Equal([1, 2, 3, 4, 5, 6], wear.Keys);
        Assert.Equal(2, wear.MaxBy(w => w.Value).Key);
        Assert.InRange(wear[2], 0.95, 1.05); // 1.19 mm of 0.30 mm new and 1.20 mm at the limit
        Assert.InRange(wear[6], 0.0, 0.2);
    }

    private static GearingCase MadeFor(string job) => s_book.Gearing.For(s_book.Jobs[job].Job)!.Case;
}
