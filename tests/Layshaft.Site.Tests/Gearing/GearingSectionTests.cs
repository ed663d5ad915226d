using System.Text.RegularExpressions;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Tests.Gearing;

public class GearingSectionTests
{
    private static readonly Composition s_demo = DemoBook.Composition();

    public static TheoryData<string> Jobs => [.. s_demo.Book.Jobs.Where(j => j.Finished is not null && j.NextEvent is not null).Select(j => j.Number)];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Every_finished_job_with_an_event_says_which_gears_and_no_figure_is_missing(string number)
    {
        var job = Job(number);
        if (s_demo.Book.Units[job.Unit].Car is null)
        {
            Assert.Null(SectionOf(job));
            return;
        }

        var section = SectionOf(job)!;
        var html = Html(job);
        Assert.Contains($"Gearing for {job.NextEvent!.Name}", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("NaN|Infinity|∞"), html);
        Assert.Contains("km/h", section.Ranked.Rows[0].TopSpeed, StringComparison.Ordinal);
        Assert.Contains("mph", section.Ranked.Rows[0].TopSpeed, StringComparison.Ordinal);
        Assert.Contains("driven/driver: ", section.Lead, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("[0-9] driving [0-9]|[0-9]:[0-9]+</text>"), html);
        Assert.Single(section.Ranked.Rows, r => r.IsBest && r.Name.Contains("recommended", StringComparison.Ordinal));
        Assert.StartsWith("1", section.Ranked.Rows[0].Name, StringComparison.Ordinal);
        Assert.Equal(4, section.Changes.Count);
        Assert.Equal(s_demo.Assessment.Gearing.For(job)!.Case.Box.Set.Gears.Count, section.Shifts.Count);
        Assert.Contains(section.Assumed, a => a.Value.Contains("kg/m³", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_recommendation_makes_sense_to_a_person_of_the_trade(string number)
    {
        if (s_demo.Assessment.Gearing.For(Job(number)) is not { } gearing)
        {
            return;
        }

        // Common practice, no source: near the end of the fastest straight the engine is past its best torque and not long on its limiter.
        var limit = gearing.Case.Setup.Car.Engine.Limit;
        Assert.InRange(gearing.Best.EngineSpeedAtTop / limit, 0.85, 1.0001);
        Assert.True(gearing.Best.OnLimiter.Seconds < 1.5);
        Assert.True(gearing.Best.IsFinished);
        Assert.True(gearing.Best.LossToIdeal > UnitsNet.Duration.Zero);

        Assert.InRange(gearing.LossOf(gearing.Best).Seconds, 0, Recommendation.Tie.Seconds);

        // What the technician fitted is near what the figures say.
        Assert.InRange(gearing.LossOf(gearing.Driven).Seconds, 0, 0.4);
    }

    [Fact]
    public void A_choice_that_differs_is_shown_with_what_it_costs()
    {
        var review = DemoBook.With("jobs/2026/0628/job.yaml", t => t[..t.LastIndexOf("  drop_pair: 33/27", StringComparison.Ordinal)] + "  drop_pair: 26/34" + t[(t.LastIndexOf("  drop_pair: 33/27", StringComparison.Ordinal) + 18)..]);
        var composition = DemoBook.Composition(review);
        var job = composition.Book.Jobs.Single(j => j.Number == "0628");
        var gearing = composition.Assessment.Gearing.For(job)!;
        Assert.Equal("26/34", gearing.Chosen!.DropPair!.ToString());
        Assert.True(gearing.LossOf(gearing.Chosen).Seconds > 0.1);
        var section = (GearingSection)GearingSection.Compose(Context(composition, job))!.Model;
        var line = Assert.Single(section.Lines, l => l.StartsWith("Chosen for the event", StringComparison.Ordinal));
        Assert.Contains(composition.Figures.Seconds(gearing.LossOf(gearing.Chosen)).Text, line, StringComparison.Ordinal);
        Assert.Contains(section.Ranked.Rows, r => r.Name.EndsWith(", chosen for the event", StringComparison.Ordinal) && r.Pair.Contains("overdrive", StringComparison.Ordinal));
        Assert.Contains(section.Ranked.Rows, r => r.Name.Contains("fitted on delivery", StringComparison.Ordinal) && r.Pair == "33/27 (1.222)" && r.Final == "39/10 (3.900)");
        Assert.Contains("(driven/driver)", composition.Say("gearing.head.pair"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.0002, "less than 0.001 s")]
    [InlineData(0.0006, "0.001 s")]
    [InlineData(0.0304, "0.030 s")]
    public void A_loss_too_small_to_be_written_is_not_written_as_none(double seconds, string words) =>
        Assert.Equal(words, GearingVerdict.Small(UnitsNet.Duration.FromSeconds(seconds), s_demo).Replace('\u202F', ' '));

    [Fact]
    public void A_gearing_outside_the_stock_can_be_tried()
    {
        var gearing = s_demo.Assessment.Gearing.For(Job("0628"))!;
        var tried = gearing.Case.Try(new Eng.ToothPair(25, 35), gearing.Best.FinalDrive)!;
        Assert.DoesNotContain(gearing.Ranking.Candidates, c => EventGearing.IsSame(c, tried));
        Assert.True(gearing.LossOf(tried) > UnitsNet.Duration.Zero);
    }

    [Fact]
    public void Among_choices_that_tell_no_difference_the_fitted_final_drive_stays_and_the_limiter_is_spared()
    {
        var gearing = s_demo.Assessment.Gearing.For(Job("0438"))!;
        Assert.Equal(gearing.AsItLeft!.FinalDrive, gearing.Best.FinalDrive);
        var close = gearing.Ranking.Candidates.Where(c => c.LossToBest <= Recommendation.Tie && c.FinalDrive == gearing.Best.FinalDrive);
        Assert.Equal(close.Min(c => c.OnLimiter.Seconds), gearing.Best.OnLimiter.Seconds, 5e-2);
    }

    [Fact]
    public void Dogs_are_reckoned_for_the_event_that_the_wear_comes_from()
    {
        var gearing = s_demo.Assessment.Gearing.For(Job("0628"))!;
        Assert.True(gearing.Dogs!.IsFromLastEvent);
        Assert.Equal("Autumn Saloons", gearing.Dogs.Case.Plan!.Name);
        Assert.Equal(1, gearing.Dogs.ByGear.Sum(g => g.Share), 5e-10);
    }

    [Fact]
    public void On_a_hill_the_box_is_not_taken_down_after_the_finish()
    {
        var dogs = s_demo.Assessment.Gearing.For(Job("0438"))!.Dogs!;
        Assert.Equal(0, dogs.ByGear[0].UpshiftsPerLap);
        var run = Eng.VenueRun.For(dogs.Case.With(dogs.Gears.DropPair, dogs.Gears.FinalDrive), dogs.Case.Course);
        var braked = Enumerable.Range(0, run.Straights.Count - 1).Sum(i => Math.Max(0, run.Straights[i].BrakingGear - run.Corners[i + 1].Gear));
        Assert.Equal(braked, dogs.ByGear.Sum(g => g.DownshiftsPerLap));
    }

    [Fact]
    public void An_event_is_worked_out_once() =>
        Assert.Same(s_demo.Assessment.Gearing.For(Job("0518")), s_demo.Assessment.Gearing.For(Job("0518")));

    [Fact]
    public void The_same_book_gives_the_same_section()
    {
        var again = DemoBook.Composition(DemoBook.With("shop.yaml", t => t + "\n"));
        Assert.Equal(Html(Job("0615")), Html(again, again.Book.Jobs.Single(j => j.Number == "0615")));
    }

    [Fact]
    public void Another_owner_does_not_see_what_a_box_was_geared_for()
    {
        var unit = s_demo.Book.Units["t6-014"];
        var view = OwnerView.Of(s_demo.Book, unit)[1];
        var earlier = view.Jobs.First(j => !view.IsOwn(j) && j.NextEvent is not null);
        Assert.Null(GearingSection.Compose(new ReportContext(s_demo, view, s_demo.Assessment.Jobs[earlier.Number])));
    }

    private static Job Job(string number) => s_demo.Book.Jobs.Single(j => j.Number == number);

    private static GearingSection? SectionOf(Job job) => (GearingSection?)GearingSection.Compose(Context(s_demo, job))?.Model;

    private static string Html(Job job) => Html(s_demo, job);

    private static string Html(Composition composition, Job job)
    {
        var context = Context(composition, job);
        return DemoBook.Render(composition, ReportComposer.Template, ReportComposer.Compose(composition, context.View, job));
    }

    private static ReportContext Context(Composition composition, Job job)
    {
        var view = OwnerView.Of(composition.Book, composition.Book.Units[job.Unit]).First(v => v.IsOwn(job));
        return new ReportContext(composition, view, composition.Assessment.Jobs[job.Number]);
    }
}
