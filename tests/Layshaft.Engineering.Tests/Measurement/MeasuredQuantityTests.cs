using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Tests.Measurement;

public class MeasuredQuantityTests
{
    private static readonly Instrument Micrometer = new()
    {
        ErrorLimit = Length.FromMicrometers(4),
        Resolution = Length.FromMicrometers(1),
    };

    [Fact]
    public void A_length_keeps_the_unit_of_its_first_reading()
    {
        var result = MeasuredQuantity.From([Length.FromMillimeters(19.95), Length.FromMicrometers(19952)], Micrometer);

        Assert.Equal(LengthUnit.Millimeter, result.Unit);
        Assert.Equal(19.951, result.Value.As(LengthUnit.Millimeter), 1e-9);
        Assert.Equal(result.Number.ExpandedUncertainty * 1000, result.ExpandedUncertainty.As(LengthUnit.Micrometer), 1e-9);
    }

    [Fact]
    public void Torque_and_hardness_are_measured_the_same_way()
    {
        var torque = MeasuredQuantity.From(
            [Torque.FromNewtonMeters(100)], new Instrument { RelativeErrorLimit = 0.04 });
        var hardness = MeasuredQuantity.From(
            new IQuantity[] { Scalar.FromAmount(59.5), Scalar.FromAmount(60.5) }, new Instrument { ErrorLimit = Scalar.FromAmount(1.5) });

        Assert.Equal(4 / Math.Sqrt(3), torque.StandardUncertainty.As(TorqueUnit.NewtonMeter), 1e-12);
        Assert.Equal(60, hardness.Value.As(ScalarUnit.Amount), 1e-12);
    }

    [Fact]
    public void Mixed_kinds_are_refused_with_a_clear_message()
    {
        var error = Assert.Throws<ArgumentException>(
            () => MeasuredQuantity.From(new IQuantity[] { Length.FromMillimeters(1), Torque.FromNewtonMeters(1) }, Micrometer));

        Assert.Contains("same kind", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => MeasuredQuantity.From([Torque.FromNewtonMeters(1)], Micrometer));
    }

    [Fact]
    public void A_negative_limit_of_error_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => MeasuredQuantity.From([Length.FromMillimeters(1)], new Instrument { ErrorLimit = Length.FromMicrometers(-1) }));

    [Fact]
    public void A_result_converts_with_its_uncertainty()
    {
        var inches = MeasuredQuantity.From([Length.FromMillimeters(25.4)], Micrometer).In(LengthUnit.Inch);

        Assert.Equal(1, inches.Number.Value, 1e-12);
        Assert.Equal(Math.Sqrt((16 / 3.0) + (1 / 12.0)) / 25400, inches.Number.StandardUncertainty, 1e-15);
    }
}
