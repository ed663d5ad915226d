using CsCheck;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Tests.Measurement;

public class GradePolicyTests
{
    private static readonly GradePolicy Policy = new(0.5, 0.8, CloseCall.MeasureAgain);

    [Theory]
    [InlineData(Conformity.Inside, -0.1, Grade.Reuse, GradeReason.WithinAllowance)]
    [InlineData(Conformity.Inside, 0.49, Grade.Reuse, GradeReason.WithinAllowance)]
    [InlineData(Conformity.Inside, 0.5, Grade.Watch, GradeReason.AllowanceWatched)]
    [InlineData(Conformity.Inside, 0.8, Grade.Renew, GradeReason.AllowanceUsed)]
    [InlineData(Conformity.TooCloseToCall, 0.79, Grade.Renew, GradeReason.TooCloseToCall)]
    [InlineData(Conformity.Outside, 1.2, Grade.Renew, GradeReason.OutsideLimit)]
    public void Grades_follow_the_policy(Conformity conformity, double share, Grade expected, GradeReason reason)
    {
        var grade = Policy.Grade(conformity, share);

        Assert.Equal(expected, grade.Standing);
        Assert.Equal(reason, grade.Reason);
    }

    [Theory]
    [InlineData(CloseCall.MeasureAgain, Grade.Renew, true)]
    [InlineData(CloseCall.Renew, Grade.Renew, false)]
    [InlineData(CloseCall.Watch, Grade.Watch, false)]
    public void A_close_call_is_treated_as_the_shop_states(CloseCall treatment, Grade expected, bool again)
    {
        var grade = new GradePolicy(0.5, null, treatment).Grade(Conformity.TooCloseToCall, 0.99);

        Assert.Equal(expected, grade.Standing);
        Assert.Equal(again, grade.MeasureAgain);
    }

    [Fact]
    public void Without_a_renewal_share_only_the_limit_renews() =>
        Assert.Equal(Grade.Watch, new GradePolicy(0.5, null, CloseCall.Renew).Grade(Conformity.Inside, 0.99).Standing);

    [Fact]
    public void More_wear_never_gets_a_better_grade() =>
        Gen.Select(Gen.Double[-0.5, 1.5], Gen.Double[0, 1], Gen.Double[0, 0.2], Gen.Enum<CloseCall>()).Sample(
            (share, step, uncertainty, treatment) =>
            {
                var policy = new GradePolicy(0.4, 0.9, treatment);
                Grade At(double s) => policy.Grade(LimitDecision.Of(s, uncertainty, 1, LimitSense.Upper).Conformity, s).Standing;
                Assert.True(At(share + step) >= At(share));
            });

    [Fact]
    public void Overruling_keeps_both_grades_and_needs_a_reason()
    {
        var grade = Policy.Grade(Conformity.Outside, 1.2).Overruled(Grade.Watch, " customer's spare is on its way ");

        Assert.Equal(Grade.Renew, grade.Calculated);
        Assert.Equal(Grade.Watch, grade.Standing);
        Assert.Equal("customer's spare is on its way", grade.Overruling!.Reason);
        Assert.Throws<ArgumentException>(() => grade.Overruled(Grade.Reuse, "  "));
    }

    [Fact]
    public void The_worst_feature_decides_and_an_overruled_one_counts_as_it_stands()
    {
        var renew = Policy.Grade(Conformity.Outside, 1.2);
        var watch = Policy.Grade(Conformity.Inside, 0.6);

        Assert.Same(renew, PartGrade.Worst([watch, renew]));
        Assert.Same(watch, PartGrade.Worst([renew.Overruled(Grade.Reuse, "dressed and re-measured"), watch]));
        Assert.Throws<ArgumentException>(() => PartGrade.Worst([]));
    }

    [Theory]
    [InlineData(0, 0.8)]
    [InlineData(0.5, 0.5)]
    [InlineData(0.5, 1.1)]
    [InlineData(double.NaN, 0.8)]
    [InlineData(0.5, double.NaN)]
    public void Shares_out_of_order_are_refused(double watch, double renew) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new GradePolicy(watch, renew, CloseCall.Renew));

    [Fact]
    public void A_part_at_a_threshold_has_reached_it_whatever_binary_makes_of_the_decimals()
    {
        // Three fifths of 0.30 mm: 7.85 mm new, 7.67 mm measured; the quotient falls a hair short of 0.6.
        var share = (7.67 - 7.85) / (7.55 - 7.85);

        Assert.Equal(Grade.Watch, new GradePolicy(0.6, 1, CloseCall.MeasureAgain).Grade(Conformity.Inside, share).Standing);
        Assert.Equal(Grade.Reuse, new GradePolicy(0.6, 1, CloseCall.MeasureAgain).Grade(Conformity.Inside, 0.599).Standing);
    }
}
