namespace Layshaft.Engineering.Tests.PublishedSources;

internal static class Near
{
    /// <summary>Asserts a relative difference, with the value's name in the message.</summary>
    public static void Relative(double expected, double? actual, double tolerance, string what)
    {
        Assert.True(actual is not null, what + ": no value");
        var scale = expected == 0 ? 1 : Math.Abs(expected);
        Assert.True(
            Math.Abs(actual!.Value - expected) <= tolerance * scale,
            FormattableString.Invariant($"{what}: expected {expected:R}, got {actual:R}, relative difference {Math.Abs(actual.Value - expected) / scale:E2}"));
    }
}
