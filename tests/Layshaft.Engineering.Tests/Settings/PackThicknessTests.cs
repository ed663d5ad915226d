using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Settings;

public sealed class PackThicknessTests
{
    [Fact]
    public void The_thickest_shim_is_taken_and_nothing_thicker()
    {
        Assert.Equal(20, PackThickness.Of([PackThickness.ThickestShim]).Millimeters);
        Assert.Throws<ArgumentOutOfRangeException>(() => PackThickness.Of([PackThickness.ThickestShim + Length.FromMicrometers(1)]));
    }
}
