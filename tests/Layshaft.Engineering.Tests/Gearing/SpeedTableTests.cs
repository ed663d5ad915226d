using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class SpeedTableTests
{
    private static readonly Gear[] s_gears =
    [
        Gear.FromRatio("1", 2.5).Require(), Gear.FromRatio("2", 1.7).Require(), Gear.FromRatio("3", 1.3).Require(), Gear.FromRatio("4", 1).Require(),
    ];

    private static readonly RotationalSpeed s_limit = RotationalSpeed.FromRevolutionsPerMinute(8000);

    private static SpeedTable Table(ToothPair? drop, double circumferenceM = 1.9) => SpeedTable.For(
        Drivetrain.Create(s_gears, drop, FinalDrive.FromRatio(3.9).Require()).Require(),
        RollingTyre.FromMeasured(Length.FromMeters(circumferenceM)).Require(),
        s_limit).Require();

    [Fact]
    public void Rows_carry_speed_step_and_engine_speed_after_the_upshift()
    {
        SpeedTable table = Table(null);
        Assert.Equal(["1", "2", "3", "4"], table.Rows.Select(row => row.Name));
        Assert.Equal(8000.0 / 60 * 1.9 / (2.5 * 3.9), table.Rows[0].SpeedAtLimit.MetersPerSecond, 5e-13);
        Assert.Equal(table.Rows[0].SpeedAtLimit.MetersPerSecond / 8, table.Rows[0].SpeedPer1000Rpm.MetersPerSecond, 5e-13);
        Assert.Equal(8000 * 1.7 / 2.5, table.Rows[0].EngineSpeedAfterUpshift!.Value.RevolutionsPerMinute, 5e-10);
        Assert.Equal(2.5 / 1.7, table.Rows[0].StepToNext!.Value, 5e-13);
        Assert.Null(table.Rows[3].StepToNext);
    }

    [Fact]
    public void A_downshift_above_the_over_rev_speed_takes_the_engine_past_its_limit()
    {
        SpeedTable table = Table(new ToothPair(25, 28));
        foreach (SpeedTableRow row in table.Rows)
        {
            Assert.Equal(8000, table.EngineSpeedAt(row.Number, row.OverRevAbove).RevolutionsPerMinute, 5e-10);
            Assert.True(table.EngineSpeedAt(row.Number, row.OverRevAbove * 1.01) > s_limit);
        }
    }

    [Fact]
    public void More_driver_teeth_never_lower_the_speed_at_an_engine_speed() => Gen.Select(
            Gen.Int[15, 60], Gen.Int[15, 60], Gen.Int[1, 4], Gen.Double[500, 9000])
        .Sample((driver, driven, gear, rpm) =>
            Table(new ToothPair(driver + 1, driven)).SpeedAt(gear, RotationalSpeed.FromRevolutionsPerMinute(rpm))
            >= Table(new ToothPair(driver, driven)).SpeedAt(gear, RotationalSpeed.FromRevolutionsPerMinute(rpm)));

    [Fact]
    public void Speed_goes_with_the_circumference() => Gen.Select(Gen.Double[1, 2], Gen.Int[1, 4]).Sample((circumference, gear) =>
        Math.Abs((Table(null, 1.5 * circumference).SpeedAt(gear, s_limit) / Table(null, circumference).SpeedAt(gear, s_limit)) - 1.5) < 1e-12);

    [Fact]
    public void A_limit_of_zero_is_a_fault() => Assert.Equal(
        GearingFaultKind.OutOfRange,
        SpeedTable.For(Drivetrain.Create(s_gears, null, FinalDrive.FromRatio(4).Require()).Require(), RollingTyre.FromMeasured(Length.FromMeters(2)).Require(), RotationalSpeed.Zero)
            .Faults[0].Kind);
}
