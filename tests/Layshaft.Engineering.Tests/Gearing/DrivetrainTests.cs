using Layshaft.Engineering.Gearing;

namespace Layshaft.Engineering.Tests.Gearing;

public class DrivetrainTests
{
    private static readonly Gear[] s_gears =
    [
        Gear.FromTeeth("1", new ToothPair(17, 24), new ToothPair(15, 31)),
        Gear.FromTeeth("2", new ToothPair(17, 24), new ToothPair(19, 27)),
        Gear.FromRatio("3", 1).Require(),
    ];

    private static readonly FinalDrive s_final = FinalDrive.FromTeeth(new ToothPair(driver: 10, driven: 41));

    [Theory]
    [InlineData(DropPairPlace.GearboxOutput)]
    [InlineData(DropPairPlace.GearboxInput)]
    [InlineData(DropPairPlace.Axle)]
    public void The_overall_ratio_is_gear_times_drop_pair_times_final_drive_wherever_the_pair_sits(DropPairPlace place)
    {
        Drivetrain train = Drivetrain.Create(s_gears, new ToothPair(25, 28), s_final, place).Require();
        double gear = 24.0 / 17 * 31 / 15;
        double drop = 28.0 / 25;
        Assert.Equal(gear * drop * 4.1, train.OverallRatio(1), 5e-13);
        Assert.Equal(place == DropPairPlace.Axle ? gear : gear * drop, train.RatioToPropshaft(1), 5e-13);
        Assert.Equal(place == DropPairPlace.GearboxInput ? gear * drop : gear, train.RatioToMainshaft(1), 5e-13);
    }

    [Fact]
    public void Steps_multiply_to_the_spread()
    {
        Drivetrain train = Drivetrain.Create(s_gears, null, s_final).Require();
        Assert.Equal(train.Spread, train.Steps.Aggregate(1.0, (product, step) => product * step), 5e-13);
        Assert.Equal(1, train.DropRatio);
    }

    [Fact]
    public void Gears_that_do_not_fall_are_a_fault_that_names_the_gear()
    {
        GearingFault fault = Assert.Single(Drivetrain.Create([s_gears[1], s_gears[0]], null, s_final).Faults);
        Assert.Equal(GearingFaultKind.GearsNotFalling, fault.Kind);
        Assert.Contains("gear 1", fault.Message, StringComparison.Ordinal);
        Assert.Equal(GearingFaultKind.NoGears, Assert.Single(Drivetrain.Create([], null, s_final).Faults).Kind);
    }

    [Fact]
    public void A_ratio_that_is_no_ratio_is_a_fault()
    {
        Assert.All(
            [0, -1, double.NaN, double.PositiveInfinity],
            bad =>
            {
                Assert.Equal(GearingFaultKind.OutOfRange, Gear.FromRatio("1", bad).Faults[0].Kind);
                Assert.Equal(GearingFaultKind.OutOfRange, FinalDrive.FromRatio(bad).Faults[0].Kind);
            });
        Assert.Throws<ArgumentOutOfRangeException>(() => Drivetrain.Create(s_gears, null, s_final).Require().OverallRatio(4));
    }
}
