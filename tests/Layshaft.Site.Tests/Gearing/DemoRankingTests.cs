using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Tests.Gearing;

/// <summary>The ranking of every demo car against runs with steps in time, which the drawn runs use.</summary>
public class DemoRankingTests
{
    // A page shows hundredths of a second, full km/h and tens of rpm.
    private const double Seconds = 2e-4;

    private static readonly Assessment.BookAssessment s_book = DemoBook.Review.Assessment!;

    [Fact]
    public void Every_figure_of_a_ranking_is_that_of_a_drawn_run()
    {
        var runs = 0;
        foreach (var made in s_book.Book.Jobs.Select(job => s_book.Gearing.For(job)).OfType<Assessment.Gearing.EventGearing>().DistinctBy(made => (made.Case.Setup.Car.Id, made.Case.Venue.Id)))
        {
            Eng.Car car = made.Case.With(made.AsItLeft);
            IReadOnlyList<Eng.RankingUnderChange> days = [new(new Eng.ConditionChange("planned"), made.Ranking.Candidates), .. made.Ranking.Changes];
            foreach (var (change, candidates) in days)
            {
                var (changed, course) = (change.Apply(car).Require(), change.Apply(made.Case.Course).Require());
                foreach (var candidate in candidates.Where((_, i) => i % (change.Key == "planned" ? 1 : 8) == 0))
                {
                    runs++;
                    AssertSame(Eng.VenueRun.For(changed.With(car.Drivetrain.With(candidate.Set)), course), candidate);
                }
            }
        }

        Assert.True(runs > 500);
    }

    private static void AssertSame(Eng.VenueRun run, Eng.GearingCandidate candidate)
    {
        Assert.Equal(run.StraightsTime.Seconds, candidate.StraightsTime.Seconds, Seconds);
        Assert.Equal(run.Straights.Sum(straight => straight.OnLimiter.Seconds), candidate.OnLimiter.Seconds, Seconds);
        Assert.Equal(run.Straights.Sum(straight => straight.Shifts.Count), candidate.ShiftsPerLap);
        Assert.Equal(run.Straights.Max(straight => straight.TopSpeed.KilometersPerHour), candidate.TopSpeed.KilometersPerHour, 1e-3);
        Assert.Equal(run.Corners.Where(corner => corner.Falls).Select(corner => corner.Straight), candidate.CornersBetweenGears.Select(straight => straight.Name));
    }
}
