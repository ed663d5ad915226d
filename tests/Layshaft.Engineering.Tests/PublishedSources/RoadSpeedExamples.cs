using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Road speed against worked examples; each names its source and how it was come by.</summary>
public class RoadSpeedExamples
{
    private static readonly Gear s_direct = Gear.FromRatio("4", 1).Require();

    private static SpeedTable Table(double finalDrive, Length circumference, ToothPair? drop = null) => SpeedTable.For(
        Drivetrain.Create([s_direct], drop, FinalDrive.FromRatio(finalDrive).Require()).Require(),
        RollingTyre.FromMeasured(circumference).Require(),
        RotationalSpeed.FromRevolutionsPerMinute(7000)).Require();

    [Fact]
    public void The_inch_constant_is_1056_over_pi() // arithmetic, exact: mph = rpm × diameter(in) / (ratio × 336.135)
    {
        SpeedTable table = Table(1, Length.FromInches(Math.PI * 30));
        double mph = table.SpeedAt(1, RotationalSpeed.FromRevolutionsPerMinute(1000)).MilesPerHour;
        Assert.Equal(336.135, 1000 * 30 / mph, 5e-4);
    }

    [Fact]
    public void Sixty_five_mph_with_3_08_and_30_inch_is_2242_rpm_with_the_rounded_constant()
    {
        // docslib.org, "RPM = MPH × gear ratio × 336 / tire diameter" (read); 336 is a rounding of 336.135.
        double rpm = Table(3.08, Length.FromInches(Math.PI * 30)).EngineSpeedAt(1, Speed.FromMilesPerHour(65)).RevolutionsPerMinute;
        Assert.Equal(2243.14, rpm, 5e-3);
        Assert.InRange(rpm * 336 / (1056 / Math.PI), 2241.5, 2242.5);
    }

    [Fact]
    public void An_overall_ratio_of_3_59_gives_110_km_per_h_at_3000_rpm_on_a_0_7_m_wheel()
    {
        // community.cartalk.com, thread 53231 (read; the page truncates 3.5986).
        double rpmDirect = Table(1, Length.FromMeters(Math.PI * 0.7)).EngineSpeedAt(1, Speed.FromKilometersPerHour(110)).RevolutionsPerMinute;
        Assert.InRange(3000 / rpmDirect, 3.58, 3.60);
    }

    [Fact]
    public void Teeth_give_ratio_and_speed()
    {
        // askmehelpdesk.com, 404774: inputs read, the answer is our own arithmetic. 29/30 × 88/20, radius 0.315 m, 4000 rpm.
        Drivetrain train = Drivetrain.Create(
            [Gear.FromTeeth("4", new ToothPair(30, 29))], null, FinalDrive.FromTeeth(new ToothPair(20, 88))).Require();
        SpeedTable table = SpeedTable.For(
            train,
            RollingTyre.FromMeasured(Length.FromMeters(2 * Math.PI * 0.315)).Require(),
            RotationalSpeed.FromRevolutionsPerMinute(4000)).Require();
        Assert.Equal(4.2533, table.Rows[0].OverallRatio, 5e-5);
        Assert.Equal(111.68, table.Rows[0].SpeedAtLimit.KilometersPerHour, 5e-3);
    }

    [Fact]
    public void Eight_hundred_and_one_turns_a_mile_is_a_rolling_radius_of_12_59_inches() // Gillespie, ch. 2, from memory
    {
        RollingTyre tyre = RollingTyre.FromMeasured(Length.FromMiles(1.0 / 801)).Require();
        Assert.Equal(12.59, tyre.Radius.Inches, 5e-3);
    }

    [Fact]
    public void A_shift_from_1_24_to_0_75_at_40_mph_drops_1297_9_rpm() // university homework: inputs read, answer our own
    {
        Drivetrain train = Drivetrain.Create(
            [Gear.FromRatio("3", 1.24).Require(), Gear.FromRatio("4", 0.75).Require()],
            null,
            FinalDrive.FromRatio(3.94).Require()).Require();
        RollingTyre tyre = RollingTyre.FromMeasured(Length.FromInches(2 * Math.PI * 10)).Require();
        SpeedTable table = SpeedTable.For(train, tyre, RotationalSpeed.FromRevolutionsPerMinute(7000)).Require();
        Speed forty = Speed.FromMilesPerHour(40);
        double drop = (table.EngineSpeedAt(1, forty) - table.EngineSpeedAt(2, forty)).RevolutionsPerMinute;
        Assert.Equal(1297.9, drop, 5e-2);
        RotationalSpeed before = table.EngineSpeedAt(1, forty);
        Assert.Equal(drop, (before - table.EngineSpeedAfterUpshift(1, before)).RevolutionsPerMinute, 5e-7);
    }

    [Fact]
    public void A_25_28_drop_pair_is_an_overdrive_of_1_12() // ISO 1122-1: gear ratio = teeth of the wheel / teeth of the pinion; 28/25
    {
        var pair = new ToothPair(driver: 28, driven: 25);
        Assert.True(pair.IsOverdrive);
        Assert.Equal(1.12, 1 / pair.Ratio, 1e-12);
    }

    [Theory]
    [InlineData(3.6)]
    [InlineData(4.1)]
    public void Final_drives_of_3_6_to_4_1_with_drop_gears_reach_about_130_mph_at_the_limiter(double finalDrive)
    {
        // Common practice, no source: a light rear-drive car, small tyres, about 8200 rpm, drop gears either way.
        RollingTyre tyre = RollingTyre.FromSize(TyreSize.Parse("205/50R15").Require()).Require();
        double[] reached = new[] { new ToothPair(23, 30), new ToothPair(24, 29), new ToothPair(25, 28), new ToothPair(26, 26), new ToothPair(28, 25) }
            .Select(pair => SpeedTable.For(
                Drivetrain.Create([s_direct], pair, FinalDrive.FromRatio(finalDrive).Require()).Require(),
                tyre,
                RotationalSpeed.FromRevolutionsPerMinute(8200)).Require().Rows[0].SpeedAtLimit.MilesPerHour)
            .ToArray();
        Assert.Contains(reached, mph => mph is > 125 and < 137);
    }
}
