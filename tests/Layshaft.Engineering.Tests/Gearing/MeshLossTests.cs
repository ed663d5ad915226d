using Layshaft.Engineering.Gearing;

namespace Layshaft.Engineering.Tests.Gearing;

public class MeshLossTests
{
    private static readonly VehicleSpec s_meshes = TestCars.Spec with { MeshEfficiency = 0.985, AxleEfficiency = 0.95 };

    [Theory]
    [InlineData(25, 25, 0.985)]
    [InlineData(50, 50, 0.9925)]
    [InlineData(20, 40, 0.985938)] // 12.5·(1/20 + 1/40) = 0.9375 of the loss
    public void The_loss_of_a_pair_goes_with_the_sum_of_one_over_its_teeth(int driver, int driven, double efficiency) =>
        Assert.Equal(efficiency, MeshLoss.Of(new ToothPair(driver, driven), 0.985), 1e-6);

    [Fact]
    public void Every_mesh_of_the_power_flow_counts_once()
    {
        FinalDrive axle = FinalDrive.FromRatio(4).Require();
        Gear twoMeshes = Gear.FromTeeth("1", new ToothPair(20, 30), new ToothPair(18, 36));
        Gear unknown = Gear.FromRatio("2", 1.5).Require();
        Drivetrain without = Drivetrain.Create([twoMeshes, unknown], null, axle).Require();
        double first = MeshLoss.Of(new ToothPair(20, 30), 0.985) * MeshLoss.Of(new ToothPair(18, 36), 0.985) * 0.95;
        Assert.Equal(first, MeshLoss.Efficiency(s_meshes, without, 1), 1e-12);
        Assert.Equal(0.985 * 0.95, MeshLoss.Efficiency(s_meshes, without, 2), 1e-12);
        Drivetrain with = without.With(new ToothPair(23, 29), axle);
        Assert.Equal(first * MeshLoss.Of(new ToothPair(23, 29), 0.985), MeshLoss.Efficiency(s_meshes, with, 1), 1e-12);
        Assert.Equal(TestCars.Spec.DrivelineEfficiency, MeshLoss.Efficiency(TestCars.Spec, with, 1));
    }

    [Fact]
    public void A_drop_pair_is_weighed_against_the_axle()
    {
        // The same overall reduction without a drop pair, with fine and with coarse drop gears.
        ToothPair fine = new(36, 45), coarse = new(16, 20);
        var stock = new GearingStock([fine, coarse], [FinalDrive.FromTeeth(new ToothPair(10, 36))]);
        double[] Times(VehicleSpec spec) => [.. GearingRanking.Rank(new RankingQuestion(TestCars.Car(spec: spec), TestCars.Circuit, stock) { Changes = [] })
            .Require().Candidates.OrderByDescending(c => c.DropPair!.Driver).Select(c => c.StraightsTime.Seconds)];
        double[] weighed = Times(s_meshes), alike = Times(TestCars.Spec);
        Assert.True(weighed[0] < weighed[1] - 0.02);
        Assert.Equal(alike[0], alike[1], 1e-9);
        double direct = GearingRanking.Rank(new RankingQuestion(
            TestCars.Car(spec: s_meshes), TestCars.Circuit, new GearingStock([null], [FinalDrive.FromRatio(4.5).Require()]))
        { Changes = [] }).Require().Best!.StraightsTime.Seconds;
        Assert.True(direct < weighed[0] - 0.02);
    }
}
