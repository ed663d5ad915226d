using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class CorneringSpeedTests
{
    [Fact]
    public void Grip_and_downforce_carry_the_centripetal_force() => Gen.Select(Gen.Double[5, 120], Gen.Double[0.4, 2.5], Gen.Double[0, 3])
        .Sample((radius, grip, downforce) =>
        {
            Vehicle vehicle = Of(grip, downforce);
            double v = CorneringSpeed.Steady(vehicle, Length.FromMeters(radius), TestCars.SeaLevel).MetersPerSecond;
            double held = grip * ((vehicle.Spec.Mass.Kilograms * 9.80665) + (0.5 * TestCars.SeaLevel.DensityKgPerM3 * downforce * v * v));
            double asked = vehicle.Spec.Mass.Kilograms * v * v / radius;
            Assert.True(v < 150 ? Math.Abs(held - asked) < 1e-9 * asked : held >= asked);
        });

    [Fact]
    public void Without_downforce_it_is_the_textbooks_root_of_mu_g_r() => // any textbook of mechanics: flat curve, v² = µ·g·r
        Assert.Equal(Math.Sqrt(1.2 * 9.80665 * 40), CorneringSpeed.Steady(Of(1.2, 0), Length.FromMeters(40), TestCars.SeaLevel).MetersPerSecond, 1e-12);

    [Fact]
    public void A_radius_of_none_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CorneringSpeed.Steady(Of(1, 1), Length.Zero, TestCars.SeaLevel));

    private static Vehicle Of(double grip, double downforce) => Vehicle.Create(TestCars.Spec with { Grip = grip, DownforceArea = Area.FromSquareMeters(downforce) }).Require();
}
