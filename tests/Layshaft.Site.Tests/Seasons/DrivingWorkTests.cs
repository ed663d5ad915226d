using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>What the wear of the rings says beside the work of their dogs.</summary>
public sealed class DrivingWorkTests
{
    private static readonly Composition s_demo = DemoBook.Composition();

    [Theory]
    [InlineData("0628", WearAgainstWorkVerdict.Differs, null)]
    [InlineData("0527", WearAgainstWorkVerdict.Differs, null)]
    [InlineData("0441", WearAgainstWorkVerdict.TooFewToSay, null)]
    public void Wear_is_set_against_work_gear_by_gear(string job, WearAgainstWorkVerdict verdict, int? gear)
    {
        var found = Against(job)!;
        Assert.Equal((verdict, gear), (found.Verdict, found.Gear));
    }

    [Fact]
    public void A_report_compares_wear_with_work_only_where_dogs_are_worn()
    {
        var said = 0;
        foreach (var job in s_demo.Book.Jobs.Where(j => j.Finished is not null))
        {
            var view = OwnerView.Of(s_demo.Book, s_demo.Book.Units[job.Unit]).First(v => v.IsOwn(job));
            var section = (DrivingSection?)DrivingSection.Compose(new ReportContext(s_demo, view, s_demo.Assessment.Jobs[job.Number]))?.Model;
            var about = section?.Facts.Count(f => f.Contains("work ", StringComparison.Ordinal)) ?? 0;
            Assert.InRange(about, 0, Against(job.Number)?.Verdict is null or WearAgainstWorkVerdict.TooFewToSay or WearAgainstWorkVerdict.NoWear or WearAgainstWorkVerdict.Agrees ? 0 : 1);
            Assert.True(about == 0 || DrivingAssessment.Of(s_demo.Assessment.Jobs[job.Number]).Signs is { AtRest.Count: > 0 } or { Moving.Count: > 0 }, job.Number);
            said += about;
        }

        Assert.True(said > 0);
    }

    [Fact]
    public void The_technicians_words_to_the_driver_come_before_the_shops_advice_and_stay_with_him()
    {
        var job = s_demo.Book.Jobs.Single(j => j.Number == "0628") with { Driving = "Count *two* before second." };
        var assessed = s_demo.Assessment.Jobs[job.Number] with { Job = job };
        var views = OwnerView.Of(s_demo.Book, s_demo.Book.Units[job.Unit]);
        var section = (DrivingSection)DrivingSection.Compose(new ReportContext(s_demo, views.First(v => v.IsOwn(job)), assessed))!.Model;

        Assert.Contains("Count <em>two</em> before second.", section.Words[0].ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(section.Signs);
    }

    private static WearAgainstWork? Against(string job) =>
        RingWear.Against(s_demo.Assessment.Jobs[job], s_demo.Assessment.Lives, s_demo.Assessment.Gearing.For(s_demo.Book.Jobs.Single(j => j.Number == job))?.Dogs);
}
