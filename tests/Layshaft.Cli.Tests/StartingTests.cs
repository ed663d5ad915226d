using CsCheck;
using Layshaft.Book.Problems;
using Layshaft.Book.Values;
using Layshaft.Book.Yaml;
using Layshaft.Cli.Starting;

namespace Layshaft.Cli.Tests;

public class StartingTests
{
    private const string Letters = " abcYnoe:#-&*!?{}[]'\"\\,%@`|>~0189=\n\té·";

    [Theory]
    [InlineData("", 2026, "0001")]
    [InlineData("2026/0615 2026/0636 2025/0541", 2026, "0637")]
    [InlineData("2025/0541", 2026, "0542")]
    [InlineData("2026/0636 2025/0541", 2025, "0542")]
    [InlineData("2026/a-9", 2026, "a-10")]
    [InlineData("2026/999", 2026, "1000")]
    [InlineData("2026/test 2026/7", 2026, "8")]
    [InlineData("2025/0001 2026/0001", 2025, "0002")]
    [InlineData("2025/0001 2026/0002", 2025, "0003")]
    public void The_next_number_follows_the_shops_own_counting(string existing, int year, string next) => Assert.Equal(
        next,
        JobNumber.After(existing.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(j => j.Split('/')).Select(p => (int.Parse(p[0], System.Globalization.CultureInfo.InvariantCulture), p[1])), year));

    [Fact]
    public void Any_text_comes_back_as_it_was_written() =>
        Gen.Int[0, Letters.Length - 1].Select(i => Letters[i]).Array[0, 14].Select(c => new string(c)).Sample(text =>
        {
            var problems = new ProblemList();
            var root = NodeReader.Read("a.yaml", $"v: {YamlWord.Of(text)}   # a remark\n", problems);
            Assert.Empty(problems.InOrder());
            Assert.Equal(text, Assert.IsType<ScalarNode>(Assert.IsType<MapNode>(root).Entries[0].Value).Text);
        });

    [Theory]
    [InlineData("0.5 mm", "0.50 mm")]
    [InlineData("4.7 thou", "4.7 thou")]
    [InlineData("0.125 in", "0.125 in")]
    [InlineData("175 N·m", "175 N·m")]
    [InlineData("128 lbf ft", "128 lbf·ft")]
    [InlineData("2.5°", "2.5°")]
    [InlineData("1 kgf·m", "9.80665 N·m")]
    [InlineData("-0.02 mm", "-0.02 mm")]
    public void A_quantity_keeps_its_unit_and_can_be_read_again(string written, string again)
    {
        var value = UnitWords.Measured.Parse(written).Value!;

        Assert.Equal(again, YamlWord.Of(value));
        Assert.Equal(value.InSi(), UnitWords.Measured.Parse(again).Value!.InSi(), 9);
    }
}
