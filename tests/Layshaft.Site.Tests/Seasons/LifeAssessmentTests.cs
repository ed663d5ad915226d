using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>What the book's jobs come to for the lives of parts.</summary>
public sealed class LifeAssessmentTests
{
    [Fact]
    public void A_part_that_no_file_names_counts_from_the_first_day_of_a_new_unit()
    {
        var lives = SmallBook.Assess().Lives;
        var bearing = lives.Ledger.InPlace("a", "front")!;
        Assert.Equal(LifeStart.New, bearing.Start);
        Assert.Equal(60, bearing.Total.Hours);
        Assert.False(bearing.IsDoubtful);
    }

    [Fact]
    public void A_part_of_a_unit_that_came_used_has_an_unknown_past_and_counts_what_was_seen()
    {
        var bearing = SmallBook.Assess().Lives.Ledger.InPlace("b", "front")!;
        Assert.False(bearing.TotalIsWhole);
        Assert.Equal(20, bearing.Total.Hours);
    }

    [Fact]
    public void A_part_graded_renew_failed_and_a_seal_without_a_finding_was_a_precaution()
    {
        var ended = SmallBook.Assess().Lives.Ledger.Lives.Where(l => l.End == LifeEnd.Renewed).ToDictionary(l => l.Part.Part);
        Assert.Equal(RenewalReason.Condition, ended["ring-12"].Reason);
        Assert.Equal(40, ended["ring-12"].Total.Hours);
        Assert.Equal(RenewalReason.Precaution, ended["seal"].Reason);
    }

    [Fact]
    public void A_renewal_without_a_finding_has_no_recorded_reason()
    {
        var lives = SmallBook.Assess(("jobs/2025/0003/job.yaml", SmallBook.Job("a", "2025-11-01", "60 h", "complaint: x\nrenewed: [{ part: front }]\n"))).Lives;
        Assert.Equal(RenewalReason.NotRecorded, lives.Ledger.Lives.Single(l => l.Part.Part == "front" && l.End == LifeEnd.Renewed).Reason);
    }

    [Theory]
    [InlineData("worn", RenewalReason.Condition)]
    [InlineData("broken", RenewalReason.Condition)]
    [InlineData("precaution", RenewalReason.Precaution)]
    [InlineData("service life", RenewalReason.Precaution)]
    [InlineData("with another part", RenewalReason.Precaution)]
    public void A_reason_that_the_job_writes_decides_whether_a_life_failed_or_was_cut_short(string word, RenewalReason reason)
    {
        var job = SmallBook.Job("a", "2025-11-01", "60 h", $"complaint: x\nrenewed: [{{ part: front, reason: {word} }}, {{ part: ring-34, reason: {word} }}]\n" + SmallBook.Rings(0.35, 0.36, 1.30, 0.60));
        var lives = SmallBook.Assess(("jobs/2025/0003/job.yaml", job)).Lives;
        var ended = lives.Ledger.Lives.Where(l => l.End == LifeEnd.Renewed && l.Part.Part is "front" or "ring-34").Where(l => l.End == LifeEnd.Renewed).ToArray();
        Assert.Equal(2, ended.Length);
        Assert.All(ended, l => Assert.Equal((reason, ReasonSource.Written), (l.Reason, lives.SourceOf(l))));
        var bearings = ShopLives.Of(lives.Book, LifeTally.Of(lives)).Single(k => k.Kind == Book.Records.PartKind.Bearing).All.Sampling.Sample;
        Assert.Equal(reason == RenewalReason.Condition ? 1 : 0, bearings.Failures);
    }

    [Fact]
    public void Without_a_written_reason_the_grade_the_kind_or_nothing_decides()
    {
        var lives = SmallBook.Assess(("jobs/2025/0003/job.yaml", SmallBook.Job("a", "2025-11-01", "60 h", "complaint: x\nrenewed: [{ part: front }]\n"))).Lives;
        var sources = lives.Ledger.Lives.Where(l => l.End == LifeEnd.Renewed).ToDictionary(l => l.Part.Part, lives.SourceOf);
        Assert.Equal(ReasonSource.Grade, sources["ring-12"]);
        Assert.Equal(ReasonSource.Kind, sources["seal"]);
        Assert.Equal(ReasonSource.None, sources["front"]);
    }

    [Fact]
    public void A_season_over_the_turn_of_the_year_gathers_what_was_run_in_it()
    {
        var assessment = SmallBook.Assess(("shop.yaml", SmallBook.Shop + "\nseason: October to March\n"));
        var use = assessment.Lives.UseOf(assessment.Book.Units["a"]);
        Assert.Equal(["2022/23", "2023/24", "2024/25", "2025/26"], use.Seasons.Select(s => s.Season.ToString()));
        Assert.Equal(60, use.Seasons.Sum(s => s.Amount), 1e-9);

        // 20 h between 10 January and 1 November 2023: 80 days in season to the end of March, 32 from October on.
        Assert.Equal(20.0 * 80 / 112, use.Seasons[0].Amount, 1e-9);
        var trend = UnitTrends.Of(assessment.Book.Units["a"], assessment.Lives, assessment.Jobs).Single(t => t.Measure.Id == "radius-3");
        Assert.True(trend.LookAgain!.EarliestBy <= trend.LookAgain.LatestBy);
        Assert.All(new[] { trend.LookAgain.EarliestBy, trend.LookAgain.By, trend.LookAgain.LatestBy }, d => Assert.True(assessment.Book.Shop.Season.IsActive(d!.Value)));
    }

    [Fact]
    public void The_readings_before_a_renewal_are_those_of_the_old_part()
    {
        var assessment = SmallBook.Assess();
        var trends = UnitTrends.Of(assessment.Book.Units["a"], assessment.Lives, assessment.Jobs);
        Assert.Equal([20.0], trends.Single(t => t.Measure.Id == "radius-1").Readings.Select(r => r.PartUse));
        Assert.Equal([20.0, 40, 60], trends.Single(t => t.Measure.Id == "radius-3").Readings.Select(r => r.PartUse));
    }

    [Fact]
    public void Three_readings_give_a_trend_with_a_date_and_one_gives_the_reason_why_not()
    {
        var assessment = SmallBook.Assess();
        var trends = UnitTrends.Of(assessment.Book.Units["a"], assessment.Lives, assessment.Jobs);
        var third = trends.Single(t => t.Measure.Id == "radius-3");

        // 0.42, 0.55, 0.66 mm at 20, 40, 60 h: 0.006 mm/h, so from 0.6633 mm at 60 h to 1.20 mm takes 89.4 h.
        Assert.True(third.Line!.Curve.IsStraight);
        Assert.Equal((1.20 - (0.42 + 0.55 + 0.66) / 3 - 20 * 0.006) / 0.006, third.Line.Remaining, 1e-6);
        Assert.True(third.Line.LookAgainWithin < third.Line.Remaining);
        Assert.NotNull(third.LookAgain!.By);
        var first = trends.Single(t => t.Measure.Id == "radius-1");
        Assert.Equal(WearTrendUnsaidReason.OneReading, Assert.IsType<WearTrendUnsaid>(first.Result).Reason);
    }

    [Fact]
    public void A_used_part_from_another_unit_keeps_its_hours_and_leaves_its_place_empty()
    {
        var lives = SmallBook.Assess(
            ("jobs/2025/0003/job.yaml", SmallBook.Job("a", "2025-11-01", "60 h", "complaint: x\nrenewed: [{ part: front, from: b }]\n")),
            ("jobs/2025/0004/job.yaml", SmallBook.Job("b", "2025-12-01", "30 h", "complaint: y\nrenewed: [{ part: front }]\n"))).Lives;
        Assert.Empty(lives.Ledger.Contradictions);
        Assert.Equal(LifeStart.New, lives.Ledger.InPlace("b", "front")!.Start);
    }

    [Fact]
    public void The_next_visit_is_due_at_the_use_that_the_last_finished_job_set()
    {
        var assessment = SmallBook.Assess();
        var due = ServiceAssessment.Of(assessment.Book.Units["a"], assessment.Lives, new DateOnly(2025, 12, 3));
        var visit = due.Single(d => d.Part is null);
        Assert.Equal(80, visit.At!.Value.Amount);
        Assert.Equal(20, visit.Left!.Value.Amount);
        Assert.Equal(DueState.NotYet, visit.State);
        var ring = due.Single(d => d.Part?.Id == "ring-34");
        Assert.Equal(0, ring.Left!.Value.Amount);
        Assert.Equal(DueState.Now, ring.State);
    }

    [Fact]
    public void Days_are_counted_from_the_newest_day_that_something_was_done()
    {
        Assert.Equal(new DateOnly(2025, 12, 3), BookDay.Newest(SmallBook.Assess().Book));
    }

    [Fact]
    public void The_shop_counts_failures_precautions_and_running_parts()
    {
        var lives = SmallBook.Assess().Lives;
        var rings = ShopLives.Of(lives.Book, LifeTally.Of(lives)).Single(k => k.Kind == Book.Records.PartKind.DogRing);

        // Unit a: ring 12 was good at 20 h and worn at 40 h, its successor runs (20 h), ring 34 runs (60 h). Unit b came used: not counted.
        Assert.Equal([new(20, null), new(20, 40), new(60, null)], rings.All.Sampling.Sample.Lives);
        Assert.Equal(2, rings.All.Sampling.LeftOut.Count);
        Assert.All(rings.All.Sampling.LeftOut, l => Assert.Equal(LeftOutReason.StartUnknown, l.Reason));
        Assert.IsType<LifeUnsaid>(rings.All.Estimate);
        Assert.Equal([1, 3], rings.ByGear.Select(g => g.Gear));
    }
}
