using Layshaft.Engineering.Life;
using static Layshaft.Engineering.Life.FittingKind;

namespace Layshaft.Engineering.Tests.Life.Parts;

public class LifeSamplingTests
{
    [Fact]
    public void Renewed_for_condition_is_a_failure_and_all_else_is_still_good()
    {
        var lives = new History()
            .Add(FittedNew, "A", 0).Add(Renewed, "A", 10, reason: RenewalReason.Condition)
            .Add(Renewed, "A", 22, reason: RenewalReason.Precaution)
            .Add(Renewed, "A", 36)
            .Add(StillRunning, "A", 40).Ledger.Lives.Select(LifeTotal.Of).ToArray();
        var sampling = LifeSampling.Of(lives, UseMeasure.Hours);
        Assert.Empty(sampling.LeftOut);
        Assert.Equal(
            [new(4, false), new(10, true), new(12, false), new(14, true)],
            sampling.Sample.Lives);
        Assert.Equal(1, LifeSampling.Of(lives, UseMeasure.Hours, unrecordedIsFailure: false).Sample.Failures);
    }

    [Fact]
    public void What_cannot_be_counted_is_left_out_with_its_reason()
    {
        var lives = new History()
            .Add(StillRunning, "A", 10)
            .Add(FittedNew, "B", 5)
            .Add(FittedNew, "C", 5, "K-1").Add(FittedNew, "C", 9, "K-2")
            .Add(StillRunning, "A", 20).Ledger.Lives.Select(LifeTotal.Of).ToArray();
        var sampling = LifeSampling.Of(lives, UseMeasure.Hours);
        Assert.Empty(sampling.Sample.Lives);
        Assert.Equal(
            [LeftOutReason.StartUnknown, LeftOutReason.NotRunYet, LeftOutReason.Doubtful, LeftOutReason.Doubtful],
            sampling.LeftOut.Select(life => life.Reason));
        Assert.Equal(LeftOutReason.OtherMeasure, Assert.Single(
            LifeSampling.Of(new History().Add(FittedNew, "A", 0).Add(StillRunning, "A", 3).Ledger.Lives.Select(LifeTotal.Of), UseMeasure.Events).LeftOut).Reason);
    }
}
