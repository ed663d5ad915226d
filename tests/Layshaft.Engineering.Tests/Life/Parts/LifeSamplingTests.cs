using Layshaft.Engineering.Life;
using static Layshaft.Engineering.Life.FittingKind;

namespace Layshaft.Engineering.Tests.Life.Parts;

public class LifeSamplingTests
{
    [Fact]
    public void A_renewal_for_condition_lies_between_the_last_inspection_and_the_job()
    {
        var seen = Observed(
            new History().Add(FittedNew, "A", 0).Add(Renewed, "A", 40, reason: RenewalReason.Condition),
            Opened("A", 12), Opened("A", 25), Opened("A", 40));
        Assert.Equal(new ObservedLife(25, 40), seen);
    }

    [Fact]
    public void Without_an_inspection_before_it_the_failure_may_lie_anywhere_since_it_was_fitted() =>
        Assert.Equal(new ObservedLife(0, 40), Observed(new History().Add(FittedNew, "A", 0).Add(Renewed, "A", 40, reason: RenewalReason.Condition)));

    [Fact]
    public void A_renewal_without_a_recorded_reason_counts_as_a_failure() =>
        Assert.Equal(new ObservedLife(12, 40), Observed(new History().Add(FittedNew, "A", 0).Add(Renewed, "A", 40), Opened("A", 12)));

    [Fact]
    public void A_precaution_leaves_the_part_good_to_the_end() =>
        Assert.Equal(new ObservedLife(40, null), Observed(new History().Add(FittedNew, "A", 0).Add(Renewed, "A", 40, reason: RenewalReason.Precaution), Opened("A", 12)));

    [Fact]
    public void A_part_still_running_is_good_to_its_last_inspection_and_no_further() =>
        Assert.Equal(new ObservedLife(12, null), Observed(new History().Add(FittedNew, "A", 0).Add(StillRunning, "A", 30), Opened("A", 12)));

    [Fact]
    public void A_part_found_worn_and_left_in_failed_when_it_was_found() =>
        Assert.Equal(
            new ObservedLife(12, 20),
            Observed(
                new History().Add(FittedNew, "A", 0).Add(StillRunning, "A", 20).Add(Renewed, "A", 40, reason: RenewalReason.Condition),
                Opened("A", 12), Opened("A", 20), new Sighting("A", Use.Hours(20), true), Opened("A", 40)));

    [Fact]
    public void A_part_fitted_used_is_watched_from_what_it_had_run() =>
        Assert.Equal(
            new ObservedLife(32, 50, 20),
            Observed(new History().Add(FittedUsed, "A", 10, carried: 20).Add(Renewed, "A", 40, reason: RenewalReason.Condition), Opened("A", 22)));

    [Fact]
    public void Inspections_in_both_units_count_for_a_part_that_moved()
    {
        var life = new History()
            .Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 10, "K-1").Add(StillRunning, "B", 100, part: "other")
            .Add(FittedUsed, "B", 100, "K-1").Add(Removed, "B", 130, "K-1").Ledger.Lives.Single(l => l.Part.Serial == "K-1");
        Assert.Equal(new ObservedLife(40, null), LifeTotal.Of(life, [Opened("B", 118)]).Seen);
    }

    [Fact]
    public void What_cannot_be_counted_is_left_out_with_its_reason()
    {
        var lives = new History()
            .Add(StillRunning, "A", 10)
            .Add(FittedNew, "B", 5)
            .Add(FittedNew, "C", 5, "K-1").Add(FittedNew, "C", 9, "K-2")
            .Add(FittedNew, "D", 5)
            .Add(StillRunning, "A", 20)
            .Add(StillRunning, "D", 20).Ledger.Lives.Select(l => LifeTotal.Of(l, [])).ToArray();
        var sampling = LifeSampling.Of(lives, UseMeasure.Hours);
        Assert.Empty(sampling.Sample.Lives);
        Assert.Equal(
            [LeftOutReason.StartUnknown, LeftOutReason.NotRunYet, LeftOutReason.Doubtful, LeftOutReason.Doubtful, LeftOutReason.NotInspected],
            sampling.LeftOut.Select(life => life.Reason));
        Assert.Equal(LeftOutReason.OtherMeasure, Assert.Single(
            LifeSampling.Of(new History().Add(FittedNew, "A", 0).Add(StillRunning, "A", 3).Ledger.Lives.Select(l => LifeTotal.Of(l, [])), UseMeasure.Events).LeftOut).Reason);
    }

    private static Sighting Opened(string unit, double hours) => new(unit, Use.Hours(hours), false);

    private static ObservedLife? Observed(History history, params Sighting[] inspections) => LifeTotal.Of(history.Ledger.Lives[0], inspections).Seen;
}
