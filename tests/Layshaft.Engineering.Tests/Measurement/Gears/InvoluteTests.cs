using CsCheck;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Measurement.Gears;

public class InvoluteTests
{
    [Fact]
    public void The_inverse_undoes_the_function_from_almost_0_to_almost_90_degrees() =>
        Gen.Double[1e-4, 89.9].Sample(degrees =>
            Assert.Equal(degrees, Involute.Inverse(Involute.Function(Angle.FromDegrees(degrees))).Degrees, 1e-9));

    [Fact]
    public void The_function_undoes_the_inverse_over_twenty_powers_of_ten() =>
        Gen.Double[-17, 3].Sample(power =>
        {
            var value = Math.Pow(10, power);
            Assert.Equal(1, Involute.Function(Involute.Inverse(value)) / value, 1e-8);
        });

    [Fact]
    public void Series_and_difference_meet_without_a_step()
    {
        var below = Involute.Function(Angle.FromRadians(0.05 * (1 - 1e-12)));
        var above = Involute.Function(Angle.FromRadians(0.05));

        Assert.Equal(1, above / below, 1e-10);
    }

    [Fact]
    public void Nought_is_its_own_inverse_and_impossible_values_are_refused()
    {
        Assert.Equal(0, Involute.Inverse(0).Radians);
        Assert.Throws<ArgumentOutOfRangeException>(() => Involute.Inverse(-1e-12));
        Assert.Throws<ArgumentOutOfRangeException>(() => Involute.Inverse(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Involute.Inverse(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => Involute.Function(Angle.FromDegrees(90)));
    }
}
