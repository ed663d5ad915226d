using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Driving;

public sealed class LowGearsTests
{
    private static GearWear[] Wear(params double[] byGear) => [.. byGear.Select((w, i) => new GearWear(i + 1, w, null))];

    [Fact]
    public void Wear_that_falls_from_the_low_gears_to_the_high_ones_is_read() => Assert.True(LowGears.AreWorst(Wear(0.76, 0.99, 0.63, 0.35, 0.11, 0.08)));

    [Theory]
    [InlineData(0.5, 0.5, 0.4, 0.4, 0.35, 0.35)] // falls, but by too little
    [InlineData(0.9, 0.1, 0.3, 0.2, 0.1, 0.05)] // second is hardly worn
    [InlineData(0.08, 0.11, 0.35, 0.63, 0.76, 0.99)] // rises
    [InlineData(0.8, 0.9, 0.2, 0.7, 0.1, 0.75)] // no order
    public void Anything_else_is_not(double first, double second, double third, double fourth, double fifth, double sixth) =>
        Assert.False(LowGears.AreWorst(Wear(first, second, third, fourth, fifth, sixth)));

    [Fact]
    public void Three_gears_are_too_few() => Assert.False(LowGears.AreWorst(Wear(0.9, 0.6, 0.1)));

    [Fact]
    public void Reverse_is_left_aside() => Assert.True(LowGears.AreWorst([new(GearWear.Reverse, 0.01, null), .. Wear(0.9, 0.8, 0.3, 0.2)]));
}
