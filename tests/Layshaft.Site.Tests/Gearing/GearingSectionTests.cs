using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Gearing;
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
        Assert.Contains("driven/driver", section.Lead, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("[0-9] driving [0-9]|[0-9]:[0-9]+</text>"), html);
        Assert.NotEmpty(section.Better.Concat(section.NotBetter));
        Assert.Equal(s_demo.Assessment.Gearing.For(job)!.Case.Box.Set.Gears.Count, section.Gears!.Shifts.Count);
        Assert.Contains(section.Assumed, a => a.Value.Contains("kg/m³", StringComparison.Ordinal));
        Assert.DoesNotMatch(new Regex(@"[0-9]\.[0-9]{3}\u202Fs\b"), html); // no time is printed in thousandths
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Answer_charts_headings_and_shift_points_belong_to_one_combination(string number)
    {
        if (s_demo.Assessment.Gearing.For(Job(number)) is not { } gearing)
        {
            return;
        }

        var best = gearing.Advice.Recommended!;
        var name = $"{best.DropPair} with {best.FinalDrive}";
        var section = SectionOf(Job(number))!;
        Assert.Equal(name, section.Gears!.Name);
        Assert.Contains(best.DropPair!.ToString(), section.Lead, StringComparison.Ordinal);
        Assert.Contains(best.FinalDrive.ToString(), section.Lead, StringComparison.Ordinal);
        var document = new HtmlParser().ParseDocument(Html(Job(number)));
        var part = document.QuerySelector("#gears .gearing, .gearing")!;
        Assert.All(["summary", "figcaption"], tag => Assert.All(
            part.QuerySelectorAll(tag).Where(e => e.TextContent.Contains(" with ", StringComparison.Ordinal) && e.TextContent.Contains('/', StringComparison.Ordinal)),
            e => Assert.Contains(name, e.TextContent, StringComparison.Ordinal)));
        Assert.Contains(part.QuerySelectorAll("summary"), e => e.TextContent == $"Shift points: {name}");
        Assert.Contains($"Road speed in each gear with {name}", part.TextContent, StringComparison.Ordinal);

        // Its own speeds: top gear at the limiter.
        var car = gearing.Case.With(best.Set);
        var top = Eng.SpeedTable.For(car).Rows[^1].OverRevAbove;
        Assert.Equal(s_demo.Figures.Speed(top).Both, section.Gears.Shifts[^1].Never);
    }

    [Fact]
    public void A_change_is_recommended_only_beyond_doubt_and_says_what_it_takes()
    {
        var gearing = s_demo.Assessment.Gearing.For(Job("0438"))!;
        Assert.False(gearing.Advice.KeepsFitted);
        Assert.True(gearing.Advice.Gain!.IsResolved && gearing.Advice.Gain.Value > UnitsNet.Duration.Zero);
        Assert.Equal("27/21", gearing.Advice.Recommended!.DropPair!.ToString());
        var lines = SectionOf(Job("0438"))!.Lines;
        Assert.Contains("To change: drop gears 27/21. 0.4\u202Fh, with the gearbox in the car.", lines);
        Assert.Contains("In your own kit: drop gears 27/21.", lines);
        Assert.Contains(lines, l => l.StartsWith("Searched: ", StringComparison.Ordinal));
    }

    // A change of pairs in the box: two of three come from the owner's kit, and the box must be out.
    [Fact]
    public void Pairs_in_the_box_are_named_with_their_source_and_working_time()
    {
        var made = s_demo.Assessment.Gearing.For(Job("0438"))!.Case;
        Eng.ToothPair[] gears = [.. made.Box.Set.Gears.Select(Assessment.Gearing.GearboxStock.PairOf)];
        var to = made.Fitted! with { Gears = new Eng.GearPairs(gears[0], new(19, 30), new(22, 27), new(24, 24)) };
        var change = Assessment.Gearing.GearChange.Of(made, to)!;
        Assert.Equal([2, 3, 4], change.Pairs.Select(p => p.Gear));
        Assert.Equal(["Kit", "Kit", "Shelf"], change.Pairs.Select(p => p.Source.ToString()));
        Assert.Equal((4.0, true), (Math.Round(change.Labour!.Value.Hours, 9), change.BoxOut));
        Assert.StartsWith("gear\u00A02\u00A030/19, gear\u00A03\u00A027/22, gear\u00A04\u00A024/24, ", GearingWords.Short(to, s_demo, made), StringComparison.Ordinal);
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
        var best = gearing.Advice.Recommended!;
        Assert.InRange(best.EngineSpeedAtTop / gearing.Case.Setup.Car.Engine.Limit, 0.85, 1.0001);
        Assert.True(best.OnLimiter.Seconds < 1.5);
        Assert.True(best.IsUsable);
        Assert.True(best.LossToIdeal > UnitsNet.Duration.Zero);

        // What the technician fitted is near what the figures say.
        Assert.InRange(gearing.Advice.Fitted!.LossToBest.Seconds, 0, 0.4);
    }

    [Fact]
    public void Gears_that_lose_time_are_to_be_changed_with_what_that_gains()
    {
        var review = DemoBook.With("jobs/2026/0628/job.yaml", t => t[..t.LastIndexOf("  drop_pair: 33/27", StringComparison.Ordinal)]
            + t[t.LastIndexOf("  drop_pair: 33/27", StringComparison.Ordinal)..].Replace("33/27", "34/26", StringComparison.Ordinal).Replace("39/10", "43/10", StringComparison.Ordinal));
        var composition = DemoBook.Composition(review);
        var job = composition.Book.Jobs.Single(j => j.Number == "0628");
        var advice = composition.Assessment.Gearing.For(job)!.Advice;
        Assert.Equal("34/26", advice.Fitted!.DropPair!.ToString());
        Assert.True(advice.Gain is { IsResolved: true, Value.Seconds: > 0.1 });
        var section = (GearingSection)GearingSection.Compose(Context(composition, job))!.Model;
        Assert.StartsWith("Fit ", section.Lead, StringComparison.Ordinal);
        Assert.Contains(section.Lines, l => l.Contains("on the fitted 34/26 with 43/10", StringComparison.Ordinal) && l.Contains(GearingWords.Difference(advice.Gain, composition), StringComparison.Ordinal));
        Assert.Contains(section.Lines, l => l.StartsWith("To change: ", StringComparison.Ordinal));
        Assert.Contains(section.Lines, l => l.StartsWith("The gearbox left us with 33/27 with 39/10", StringComparison.Ordinal));
        Assert.Contains("34/26 with 43/10, fitted", section.Gears!.RankingChart.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0518", "cars/saloon-44.yaml", "propshaft_limit: 8400 rpm", "propshaft_limit: 7000 rpm")]
    [InlineData("0518", "gearboxes/calvane-s6.yaml", "output_limit: 9000 rpm", "output_limit: 7000 rpm")]
    public void Past_a_limit_the_fitted_gears_are_warned_of_and_others_recommended(string number, string file, string was, string held)
    {
        var composition = DemoBook.Composition(DemoBook.With(file, t => t.Replace(was, held, StringComparison.Ordinal)));
        var job = composition.Book.Jobs.Single(j => j.Number == number);
        var advice = composition.Assessment.Gearing.For(job)!.Advice;
        Assert.NotEmpty(advice.Fitted!.PassedLimits);
        Assert.Empty(advice.Recommended!.PassedLimits);
        var section = (GearingSection)GearingSection.Compose(Context(composition, job))!.Model;
        Assert.StartsWith("Fit ", section.Lead, StringComparison.Ordinal);
        Assert.Contains(section.Lines, l => l.StartsWith("The fitted 33/28 with 41/10 exceeds a limit here and must not be used.", StringComparison.Ordinal));
        Assert.Contains(section.Guards, g => g.StartsWith("Fitted gears 33/28 with 41/10: ", StringComparison.Ordinal) && g.EndsWith("Do not use this gearing.", StringComparison.Ordinal));
        Assert.Contains("exceeds ", section.Gears!.RankingChart.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void If_nothing_in_stock_is_within_the_limits_the_report_says_so_and_what_would_help()
    {
        var composition = DemoBook.Composition(DemoBook.With("cars/saloon-44.yaml", t => t.Replace("propshaft_limit: 8400 rpm", "propshaft_limit: 5000 rpm", StringComparison.Ordinal)));
        var job = composition.Book.Jobs.Single(j => j.Number == "0518");
        var section = (GearingSection)GearingSection.Compose(Context(composition, job))!.Model;
        Assert.StartsWith("Do not run these gears: none of the 68 combinations in stock is suitable", section.Lead, StringComparison.Ordinal);
        Assert.Contains(section.Lines, l => l.StartsWith("Propshaft limit 5000\u202Frpm: 68 combinations exceed it", StringComparison.Ordinal) && l.Contains("A final drive below 2.", StringComparison.Ordinal));
        Assert.Null(section.Gears);
        Assert.Empty(section.Better);
        Assert.DoesNotContain("Shift points:", Html(composition, job), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_recorded_is_said_and_not_taken_as_none_in_silence()
    {
        var composition = DemoBook.Composition(DemoBook.With("cars/saloon-44.yaml", t => t
            .Replace("wheel_inertia: 4.6 kg·m²\n", "", StringComparison.Ordinal).Replace("  inertia: 0.095 kg·m²\n", "", StringComparison.Ordinal).Replace("propshaft_limit: 8400 rpm\n", "", StringComparison.Ordinal)));
        var section = (GearingSection)GearingSection.Compose(Context(composition, composition.Book.Jobs.Single(j => j.Number == "0518")))!.Model;
        Assert.Contains(section.Assumed, a => a.Value == "not given, not included; not given, not included");
        Assert.Contains(section.Assumed, a => a.Value.StartsWith("propshaft not recorded (not checked), gearbox output shaft 9000", StringComparison.Ordinal));
    }

    [Fact]
    public void The_ranges_of_the_inputs_on_the_page_are_those_of_the_calculation()
    {
        var ranges = Assert.Single(SectionOf(Job("0518"))!.Assumed, a => a.Name == "Uncertainty of the inputs").Value;
        Assert.Equal(Eng.InputRange.Usual(Eng.CircumferenceBasis.Measured).Count, ranges.Split('±').Length - 1);
        Assert.Contains("rolling circumference ±0.5", ranges, StringComparison.Ordinal);
        Assert.Contains("wind ±2 m/s", ranges, StringComparison.Ordinal);
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
        var run = Eng.VenueRun.For(dogs.Case.With(dogs.Gears), dogs.Case.Course);
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
