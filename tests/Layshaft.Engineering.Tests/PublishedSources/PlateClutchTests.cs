using Layshaft.Engineering.Settings.Differentials;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Torque of multi-plate clutches with uniform wear. The figures are those of two exercises on axial clutches in Budynas and
/// Nisbett, <i>Shigley's Mechanical Engineering Design</i>, 8th edition, chapter 16 (from memory).
/// </summary>
public class PlateClutchTests
{
    [Fact]
    public void A_pack_of_six_faces_carries_the_torque_of_the_textbook()
    {
        // 6.5 in and 4 in, μ = 0.24, 1885 lbf on six planes of sliding: 7125 lbf·in.
        var pack = new PlatePack(Length.FromInches(6.5), Length.FromInches(4), 0.24, 6);

        Assert.Equal(7125, pack.BreakawayAt(Force.FromPoundsForce(1885)).PoundForceInches, 1.0);
        Assert.Equal(1885, pack.PreloadFor(Torque.FromPoundForceInches(7125)).PoundsForce, 0.5);
    }

    [Fact]
    public void One_face_carries_the_torque_of_the_textbook()
    {
        // 250 mm and 175 mm, μ = 0.30, 4 kN: 127.5 N·m.
        var pack = new PlatePack(Length.FromMillimeters(250), Length.FromMillimeters(175), 0.30, 1);

        Assert.Equal(127.5, pack.BreakawayAt(Force.FromKilonewtons(4)).NewtonMeters, 1e-9);
    }

    // Modelica Standard Library, Rotational.Components.Clutch: cgeo = N·(r_o + r_i)/2 for a uniform rate of wear.
    [Fact]
    public void The_mean_radius_is_that_of_the_open_library() =>
        Assert.Equal((0.055 + 0.039) / 2, new PlatePack(Length.FromMillimeters(110), Length.FromMillimeters(78), 0.1, 4).MeanRadius.Meters, 1e-12);
}
