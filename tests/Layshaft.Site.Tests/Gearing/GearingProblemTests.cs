using Layshaft.Book.Problems;

namespace Layshaft.Site.Tests.Gearing;

public class GearingProblemTests
{
    [Fact]
    public void The_demo_book_has_nothing_wrong_in_its_gearing() =>
        Assert.DoesNotContain(DemoBook.Review.Problems, p => p.Code is "gearing" or "curve-file" or "lift");

    [Theory]
    [InlineData("225/45R17 94W", "225/45X17 94W", "tyre: { size: ")]
    [InlineData("circumference: 1.936 m", "circumference: 19.36 m", "circumference: ")]
    [InlineData("wheelbase: 2.64 m", "wheelbase: 26.4 m", "wheelbase: ")]
    [InlineData("driveline_efficiency: 89 %", "driveline_efficiency: 8.9 %", "driveline_efficiency: ")]
    [InlineData("drag_coefficient: 0.37", "drag_coefficient: 37", "drag_coefficient: ")]
    public void A_figure_that_cannot_be_is_a_problem_at_its_value(string good, string bad, string before)
    {
        var review = DemoBook.With("cars/saloon-44.yaml", t => t.Replace(good, bad, StringComparison.Ordinal));
        var problem = Assert.Single(review.Problems, p => p.Code == "gearing");
        Assert.Equal("cars/saloon-44.yaml", problem.Place.File);
        Assert.Equal(Severity.Stops, problem.Severity);
        var line = System.Text.Encoding.UTF8.GetString(review.Files.Read(problem.Place.File)).Split('\n')[problem.Place.Line - 1];
        Assert.EndsWith(before, line[..(problem.Place.Column - 1)], StringComparison.Ordinal);
    }

    [Fact]
    public void A_corner_that_no_gear_reaches_leaves_that_event_out_and_nothing_else()
    {
        var review = DemoBook.With("venues/hollinscar.yaml", t => t.Replace("corner: Esses, corner_speed: 107 km/h", "corner: Esses, corner_speed: 160 km/h", StringComparison.Ordinal).Replace("exit_speed: 112", "exit_speed: 161", StringComparison.Ordinal));
        var problem = Assert.Single(review.Problems, p => p.Code == "gearing");
        Assert.Equal(("venues/hollinscar.yaml", Severity.LeftOut), (problem.Place.File, problem.Severity));
        Assert.Contains("The corner speed of Esses is 160 km/h", problem.Message, StringComparison.Ordinal);
        var book = review.Assessment!;
        Assert.Null(book.Gearing.For(book.Jobs["0438"].Job));
        Assert.NotNull(book.Gearing.For(book.Jobs["0518"].Job));
        Assert.False(review.IsStopped);
    }

    [Fact]
    public void A_corner_whose_radius_allows_more_than_the_car_reaches_is_no_corner()
    {
        // Dispersal of 148 km/h, as one radius that grip and downforce would take at over 250.
        var review = DemoBook.With("venues/stenhowe.yaml", t => t.Replace("corner: Dispersal, corner_speed: 148 km/h", "corner: Dispersal, corner_speed: 148 km/h, corner_radius: 480 m", StringComparison.Ordinal));
        var note = Assert.Single(review.Problems, p => p.Code is "gearing" or "flat-corner");
        Assert.Equal(("flat-corner", "venues/stenhowe.yaml", 7), (note.Code, note.Place.File, note.Place.Line));
        Assert.Matches(@"reaches only \d+ km/h at Dispersal; its radius allows \d+ km/h\. It is taken flat out", note.Message);

        var book = review.Assessment!;
        var gearing = book.Gearing.For(book.Jobs["0411"].Job)!;
        var joined = gearing.Case.Course.Straights[1];
        Assert.Equal(("Perimeter / Cross runway", 1280.0, 4), (joined.Name, joined.Length.Meters, gearing.Case.Course.Straights.Count));
        Assert.Equal("Tower", gearing.Case.Track.Before(joined)!.Corner);
        Assert.Equal("Hangar", gearing.Case.Track.Before(2)!.Corner);
        var run = Engineering.Gearing.VenueRun.For(gearing.Case.With(gearing.Advice.Recommended!.Set), gearing.Case.Course);
        Assert.All(run.Straights, s => Assert.Null(s.Fault));
        Assert.True(run.Straights[1].TopSpeed.KilometersPerHour > 158); // through the corner without lifting

        // A whole lap without a corner cannot be: the slowest stays one.
        Assert.Contains(gearing.Case.Track.Corners, c => c.Source == Assessment.Gearing.CornerSource.Flat);
        Assert.Equal(4, gearing.Case.Track.Corners.Count(c => c.Slowest is not null));
    }

    [Fact]
    public void A_straight_too_short_to_brake_on_is_told_at_its_length()
    {
        var review = DemoBook.With("venues/stenhowe.yaml", t => t.Replace("exit_speed: 158 km/h, length: 760 m", "exit_speed: 158 km/h, length: 20 m", StringComparison.Ordinal));
        var problem = Assert.Single(review.Problems, p => p.Code == "gearing");
        Assert.Contains("braking needs", problem.Message, StringComparison.Ordinal);
        Assert.Equal(("venues/stenhowe.yaml", 8), (problem.Place.File, problem.Place.Line));
    }

    [Theory]
    [InlineData("rpm,torque\n3000,180\n6500,240\n8200,210\n", null, 0)]
    [InlineData("# dyno run 4\nTorque;RPM;lambda\n180;3000;0.88\n\n240;6500;0.87\n210;8300;0.87\n", null, 0)]
    [InlineData("speed,torque\n3000,180\n", "columns 'rpm' and 'torque'", 1)]
    [InlineData("rpm,torque\n3000,180\n6500,lots\n8200,210\n", "torque: 'lots'", 3)]
    [InlineData("rpm,torque\n3000,180\n6500\n8200,210\n", "torque: the value is missing", 3)]
    [InlineData("rpm,torque\n3000,180\n6500,240\n6400,230\n8200,210\n", "6400 rpm follows 6500 rpm", 4)]
    [InlineData("rpm,torque\n3000,180\n6500,NaN\n8200,210\n", "torque: 'NaN'", 3)]
    public void A_dyno_run_is_read_from_its_file_and_its_faults_are_told_by_line(string csv, string? message, int line)
    {
        var review = DemoBook.With("cars/saloon-44.yaml", WithFile, ("cars/run.csv", csv));
        var problem = review.Problems.FirstOrDefault(p => p.Code is "gearing" or "curve-file");
        if (message is null)
        {
            Assert.Null(problem);
            Assert.Equal(240, review.Assessment!.Gearing.Cars["saloon-44"].Engine.TorqueAt(UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(6500)).NewtonMeters, 5e-7);
        }
        else
        {
            Assert.Contains(message, problem!.Message, StringComparison.Ordinal);
            Assert.Equal(("cars/run.csv", line), (problem.Place.File, problem.Place.Line));
        }
    }

    [Fact]
    public void A_dyno_run_that_ends_below_the_limiter_is_told_at_its_name()
    {
        var review = DemoBook.With("cars/saloon-44.yaml", WithFile, ("cars/run.csv", "rpm,torque\n3000,180\n6500,240\n"));
        var problem = Assert.Single(review.Problems, p => p.Code == "gearing");
        Assert.Equal("cars/saloon-44.yaml", problem.Place.File);
        Assert.Contains("below the limiter", problem.Message, StringComparison.Ordinal);
    }

    private static string WithFile(string car)
    {
        var start = car.IndexOf("  curve:", StringComparison.Ordinal);
        var end = car.IndexOf("driveline_efficiency", StringComparison.Ordinal);
        return car[..start] + "  curve_file: run.csv\n" + car[end..];
    }
}
