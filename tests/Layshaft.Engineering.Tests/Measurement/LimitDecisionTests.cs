using CsCheck;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Tests.Measurement;

public class LimitDecisionTests
{
    [Theory]
    [InlineData(0.14, Conformity.Inside)]
    [InlineData(0.18, Conformity.Inside)]
    [InlineData(0.19, Conformity.TooCloseToCall)]
    [InlineData(0.20, Conformity.TooCloseToCall)]
    [InlineData(0.21, Conformity.TooCloseToCall)]
    [InlineData(0.22, Conformity.Outside)]
    [InlineData(0.30, Conformity.Outside)]
    public void An_upper_limit_has_a_guard_band_on_both_sides(double value, Conformity expected) =>
        Assert.Equal(expected, LimitDecision.Of(value, 0.02, 0.20, LimitSense.Upper).Conformity);

    [Theory]
    [InlineData(2.46, Conformity.Inside)]
    [InlineData(2.41, Conformity.TooCloseToCall)]
    [InlineData(2.39, Conformity.TooCloseToCall)]
    [InlineData(2.38, Conformity.Outside)]
    public void A_lower_limit_is_its_mirror(double value, Conformity expected) =>
        Assert.Equal(expected, LimitDecision.Of(value, 0.02, 2.40, LimitSense.Lower).Conformity);

    [Fact]
    public void A_limit_itself_is_allowed_when_there_is_no_uncertainty() =>
        Assert.Equal(Conformity.Inside, LimitDecision.Of(0.2, 0, 0.2, LimitSense.Upper).Conformity);

    [Fact]
    public void A_value_that_moves_to_the_bad_side_never_looks_better() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0, 3], Gen.Double[-5, 5], Gen.Double[0, 4], Gen.Bool).Sample(
            (value, uncertainty, limit, step, upper) =>
            {
                var sense = upper ? LimitSense.Upper : LimitSense.Lower;
                var before = LimitDecision.Of(value, uncertainty, limit, sense).Conformity;
                var after = LimitDecision.Of(upper ? value + step : value - step, uncertainty, limit, sense).Conformity;
                Assert.True(after >= before, $"{before} became {after}");
            });

    [Fact]
    public void More_uncertainty_only_moves_a_decision_towards_too_close() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0, 3], Gen.Double[-5, 5], Gen.Double[0, 4]).Sample(
            (value, uncertainty, limit, more) =>
            {
                var before = LimitDecision.Of(value, uncertainty, limit, LimitSense.Upper).Conformity;
                var after = LimitDecision.Of(value, uncertainty + more, limit, LimitSense.Upper).Conformity;
                Assert.True(after == before || after == Conformity.TooCloseToCall, $"{before} became {after}");
            });

    [Fact]
    public void Upper_and_lower_mirror_each_other() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0, 3], Gen.Double[-5, 5]).Sample((value, uncertainty, limit) =>
            Assert.Equal(
                LimitDecision.Of(value, uncertainty, limit, LimitSense.Upper),
                LimitDecision.Of(-value, uncertainty, -limit, LimitSense.Lower)));

    [Theory]
    [InlineData(0.181, Conformity.Inside)] // Half a step of 0.01 cannot be read: 0.005 more than the guard band allows.
    [InlineData(0.185, Conformity.Inside)]
    [InlineData(0.186, Conformity.TooCloseToCall)]
    [InlineData(0.20, Conformity.TooCloseToCall)]
    [InlineData(0.214, Conformity.TooCloseToCall)]
    [InlineData(0.215, Conformity.Outside)]
    public void A_shortfall_below_half_a_step_of_the_gauge_is_not_flagged(double value, Conformity expected) =>
        Assert.Equal(expected, LimitDecision.Of(value, 0.02, 0.20, LimitSense.Upper, resolution: 0.01).Conformity);

    [Fact]
    public void Negative_uncertainty_and_numbers_that_are_none_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LimitDecision.Of(1, -0.1, 2, LimitSense.Upper));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimitDecision.Of(double.NaN, 0.1, 2, LimitSense.Upper));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimitDecision.ConformanceProbability(1, 0, 2, LimitSense.Upper));
    }
}
