using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Tests.Gearing;

/// <summary>The gear of every corner that the demo's cars drive with any gearing in stock.</summary>
public class DemoCornerTests
{
    private static readonly Assessment.BookAssessment s_book = DemoBook.Review.Assessment!;

    [Fact]
    public void No_corner_is_left_near_the_limit_while_a_longer_gear_is_quicker()
    {
        var corners = 0;
        foreach (var made in Cases())
        {
            foreach (var candidate in s_book.Gearing.For(made.Job)!.Ranking.Candidates.Take(20))
            {
                var car = made.Case.With(candidate.Set);
                var run = Eng.VenueRun.For(car, made.Case.Course);
                foreach (var (corner, straight) in run.Corners.Zip(run.Straights))
                {
                    corners++;
                    if (corner.EngineSpeedAtExit / car.Engine.Limiter <= 0.95 || corner.ExitGear == car.Drivetrain.Gears.Count)
                    {
                        continue;
                    }

                    Assert.False(IsQuicker(car, straight, corner.ExitGear + 1), $"{made.Job.Number}: {candidate}, {corner}");
                }
            }
        }

        Assert.True(corners > 500);
    }

    private static IEnumerable<(Book.Records.Job Job, GearingCase Case)> Cases() => s_book.Book.Jobs
        .Select(job => (job, s_book.Gearing.For(job)?.Case)).Where(made => made.Case is not null)
        .DistinctBy(made => (made.Case!.Setup.Car.Id, made.Case.Venue.Id)).Select(made => (made.job, made.Case!));

    // A box without the gears below begins in the longer one.
    private static bool IsQuicker(Eng.Car car, Eng.StraightRun run, int longer)
    {
        var train = car.Drivetrain;
        var rest = Eng.Drivetrain.Create([.. train.Gears.Skip(longer - 1)], train.DropPair, train.FinalDrive, train.Place).Require();
        var tried = Eng.VenueRun.For(car.With(rest), Eng.Venue.Create("corner", [run.Straight]).Require());
        return tried.Corners[0] is { ExitGear: 1, Fit: Eng.CornerFit.InBand } && tried.Straights[0].Fault is null && tried.Straights[0].Time < run.Time;
    }
}
