using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Tests.Gearing;

/// <summary>The demo's rankings with another lower end of the torque curve.</summary>
public class DemoLaunchTests
{
    [Fact]
    public void Low_points_of_the_torque_curve_move_no_ranking()
    {
        var book = DemoBook.Review.Assessment!;
        var cases = book.Book.Jobs.Select(job => book.Gearing.For(job)?.Case).OfType<GearingCase>().DistinctBy(made => (made.Setup.Car.Id, made.Venue.Id)).ToList();
        Assert.True(cases.Count > 4);
        foreach (var made in cases)
        {
            var points = made.Setup.Engine.Points;
            var first = points[0];
            Eng.TorquePoint[] longer = [new(first.EngineSpeed * 0.3, first.Torque * 0.2), new(first.EngineSpeed * 0.7, first.Torque * 0.6), .. points];
            Eng.TorquePoint[] shorter = [.. points.Where((_, i) => i == points.Count - 1 || points[i + 1].EngineSpeed > made.Setup.Engine.UsableFrom)];
            var asWritten = Times(made, [.. points]);
            foreach (var times in new[] { Times(made, longer), Times(made, shorter) })
            {
                Assert.All(asWritten, candidate => Assert.Equal(candidate.Value, times[candidate.Key], 0.02));
            }
        }
    }

    private static Dictionary<string, double> Times(GearingCase made, Eng.TorquePoint[] points)
    {
        var engine = Eng.EngineCurve.Create(points, made.Setup.Car.Engine.Limit, made.Setup.Car.Engine.LowestUseful, made.Setup.Car.Engine.Launch).Require();
        var car = Eng.Car.Create(made.Car.Vehicle, engine, made.Box.Drivetrain, made.Setup.Tyre, made.Car.Conditions).Require();
        return (made with { Car = car }).Rank().Require().Candidates.Where(c => c.Set.Gears is null).ToDictionary(c => $"{c.DropPair} {c.FinalDrive}", c => c.StraightsTime.Seconds, StringComparer.Ordinal);
    }
}
