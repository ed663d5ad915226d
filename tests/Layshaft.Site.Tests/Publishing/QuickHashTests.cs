using CsCheck;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

public class QuickHashTests
{
    private static readonly Gen<(string Text, long Size, long Time)> Looks = Gen.Select(Gen.String[Gen.Char['a', 'c'], 0, 20], Gen.Long[-2, 3], Gen.Long[0, 3]);

    [Fact]
    public void Looks_have_the_same_number_exactly_when_they_saw_the_same() => Gen.Select(Looks, Looks).Sample(
        (one, other) => (QuickHash.Of(one.Text, one.Size, one.Time) == QuickHash.Of(other.Text, other.Size, other.Time)) == (one == other));

    [Theory]
    [InlineData("", "\0")]
    [InlineData("shop", "shop\0")]
    [InlineData("abcdwxyz", "wxyzabcd")]
    [InlineData("/jobs/1", "/jobs/2")]
    public void Texts_that_look_alike_to_a_careless_sum_have_different_halves(string one, string other)
    {
        var (first, second) = (QuickHash.Of(one), QuickHash.Of(other));
        Assert.NotEqual(first.High, second.High);
        Assert.NotEqual(first.Low, second.Low);
    }

    [Fact]
    public void The_number_of_a_tree_does_not_depend_on_the_order_of_its_files()
    {
        QuickHash[] files = [QuickHash.Of("/a", 1, 2), QuickHash.Of("/b", long.MaxValue, 5), QuickHash.Of("/c", -1)];
        Assert.Equal(files[0] + files[1] + files[2], files[2] + (files[1] + files[0]));
    }
}
