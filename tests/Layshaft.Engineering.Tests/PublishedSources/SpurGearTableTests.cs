using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;
using static Layshaft.Engineering.Tests.Measurement.Gears.Gear;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Involute tables and the worked tables of "Elements of Metric Gear Technology" (SDP/SI D785, T-pages), each with its status.
/// </summary>
public class SpurGearTableTests
{
    [Theory]
    [InlineData(14.5, 0.0055448, 5e-8)]
    [InlineData(20, 0.0149044, 5e-8)]
    [InlineData(25, 0.0299753, 5e-8)]
    [InlineData(30, 0.0537515, 5e-8)]
    public void Involute_function_is_that_of_the_printed_table(double degrees, double expected, double tolerance)
    {
        // Machinery's Handbook, table of involute functions. From memory.
        Assert.Equal(expected, Involute.Function(Angle.FromDegrees(degrees)), tolerance);
        Assert.Equal(degrees, Involute.Inverse(expected).Degrees, 1e-3);
    }

    [Fact]
    public void Standard_pair_of_table_4_1()
    {
        // SDP table 4-1: m3, 20°, z 12/24. From memory.
        var pair = GearPair.AtShiftedDistance(Of(12, 3), Of(24, 3));

        Near(54, pair.CentreDistance);
        Near(36, pair.Driver.PitchDiameter);
        Near(72, pair.Driven.PitchDiameter);
        Near(33.829, pair.Driver.BaseDiameter);
        Near(67.658, pair.Driven.BaseDiameter);
        Near(42, pair.Driver.TipDiameter);
        Near(78, pair.Driven.TipDiameter);
        Near(28.5, pair.Driver.RootDiameter);
        Near(64.5, pair.Driven.RootDiameter);
    }

    [Fact]
    public void Shifted_pair_of_table_4_3()
    {
        // SDP table 4-3: m3, 20°, z 12/24, x 0.6/0.36. From memory.
        var pair = GearPair.AtShiftedDistance(Of(12, 3, 0.6), Of(24, 3, 0.36)).WithFullTipClearance();

        Assert.Equal(0.034316, Involute.Function(pair.WorkingPressureAngle), 5e-7);
        Assert.Equal(26.0886, pair.WorkingPressureAngle.Degrees, 5e-5);
        Assert.Equal(0.83329, pair.CentreDistanceFactor, 5e-6);
        Near(56.4999, pair.CentreDistance, 5e-5);
        Near(44.840, pair.Driver.TipDiameter);
        Near(79.400, pair.Driven.TipDiameter);
        Near(32.100, pair.Driver.RootDiameter);
        Near(66.660, pair.Driven.RootDiameter);
        Near(6.370, (pair.Driver.TipDiameter - pair.Driver.RootDiameter) / 2);
        Near(37.667, pair.DriverWorkingDiameter);
        Near(75.333, pair.DrivenWorkingDiameter);
        Near(0, pair.CircumferentialBacklash, 1e-9);
    }

    [Fact]
    public void Shifted_pair_on_56_5_mm_of_a_public_worked_table()
    {
        // Read: bolsover.com, "Profile Shifted External Spur Gears", worked table: m3, 20°, z 12/24, a 56.5, x 0.6/0.36.
        var sum = new FixedCentreDistance(Mm(56.5), Mm(3), Angle.FromDegrees(20)).ForSum(36)!;
        var pair = new GearPair(Of(12, 3, 0.6), Of(24, 3, 0.36), Mm(56.5)).WithFullTipClearance();

        Assert.Equal(0.960, sum.ShiftSum, 5e-4);
        Assert.Equal(26.0888, sum.WorkingPressureAngle.Degrees, 1e-4);
        Assert.Equal(0.83333, sum.CentreDistanceFactor, 5e-6);
        Near(44.840, pair.Driver.TipDiameter);
        Near(79.400, pair.Driven.TipDiameter);
        Assert.Equal(1.202, pair.ContactRatio, 5e-4);
    }

    [Fact]
    public void Chordal_thickness_of_table_10_1()
    {
        // SDP table 10-1 (T-81): m10, 20°, z12, x +0.3, addendum 13. Read.
        var gear = Of(12, 10, 0.3);
        var chord = ChordalThickness.Of(gear);

        Near(17.8918, gear.ToothThickness, 5e-5);
        Assert.Equal(8.54270, chord.HalfToothAngle.Degrees, 5e-6);
        Near(17.8256, chord.Thickness, 5e-5);
        Near(13.6657, chord.Height, 5e-5);
    }

    [Fact]
    public void A_rack_tooth_of_table_10_2_is_4_7124_thick() =>
        Near(4.7124, Of(1000, 3).ToothThickness, 5e-5); // SDP table 10-2: m3, 20°. Read. Half a pitch, whatever the tooth number.

    [Fact]
    public void Span_of_z24_x04_takes_four_teeth_and_is_32_8266()
    {
        // SDP span table: m3, 20°, z24, x +0.4: k 3.78787 → 4, W 32.8266. From memory.
        var gear = Of(24, 3, 0.4);

        Assert.Equal(3.78787, BaseTangentSpan.IdealTeethSpanned(gear), 5e-6);
        Assert.Equal(4, BaseTangentSpan.BestTeethSpanned(gear));
        Near(32.8266, BaseTangentSpan.Over(gear, 4), 5e-5);
    }

    [Fact]
    public void Pins_of_z20_are_1_7245_ideally_and_read_22_2941_over_1_7()
    {
        // SDP over-pin tables: m1, 20°, z20, x 0; pin 1.7. From memory.
        var gear = Of(20, 1);

        Assert.Equal(0.0636354, SizeOverPins.HalfSpaceAngle(gear).Radians, 5e-8);
        Near(1.7245, SizeOverPins.IdealPin(gear), 1e-4);
        Assert.Equal(24.1350, SizeOverPins.PinCentrePressureAngle(gear, Mm(1.7)).Degrees, 5e-5);
        Assert.Equal(0.0268197, Involute.Function(SizeOverPins.PinCentrePressureAngle(gear, Mm(1.7))), 5e-8);
        Near(22.2941, SizeOverPins.Over(gear, Mm(1.7)), 5e-5);
    }

    private static void Near(double expectedMm, Length actual, double toleranceMm = 5e-4) =>
        Assert.Equal(expectedMm, actual.Millimeters, toleranceMm);
}
