using System.Text.Json;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public class GearCommandTests
{
    private static readonly string s_demo = Path.Combine(AppContext.BaseDirectory, "demo-data");

    [Fact]
    public void It_ranks_what_is_in_stock_with_its_reasons()
    {
        var (code, output, errors) = Run("--car", "prototype-27", "--venue", "thornhollow");
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("drop gears", output, StringComparison.Ordinal);
        Assert.Contains("drop gears (driven/driver)", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" driving ", output, StringComparison.Ordinal);
        Assert.Matches(@"\d mph \(\d+ km/h\)", output); // the demo's shop has mph first
        Assert.Contains("The best 12 of 68 choices in stock.", output, StringComparison.Ordinal);
        Assert.Contains("With a tow:", output, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", output, StringComparison.Ordinal);
    }

    [Fact]
    public void It_checks_a_pair_in_stock()
    {
        var (code, output, _) = Run("--car", "prototype-27", "--venue", "thornhollow", "--pair", "23/29", "--final", "35/11");
        Assert.Equal(0, code);
        var line = Assert.Single(output.Split('\n'), l => l.StartsWith("yours: ", StringComparison.Ordinal));
        Assert.Contains("23/29 (0.793, overdrive)", line, StringComparison.Ordinal);
        Assert.Contains("35/11 (3.182)", line, StringComparison.Ordinal);
    }

    [Fact]
    public void It_checks_gears_that_are_not_in_stock()
    {
        var (code, output, _) = Run("--car", "prototype-27", "--venue", "thornhollow", "--final", "41/11");
        Assert.Equal(0, code);
        Assert.Contains("not in stock", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_every_choice_with_units()
    {
        var (code, output, _) = Run("--car", "saloon-44", "--venue", "brackwater", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(output);
        var choices = json.RootElement.GetProperty("choices");
        Assert.Equal(17 * 4, choices.GetArrayLength());
        Assert.Equal(0, choices[0].GetProperty("loss_to_best").GetProperty("value").GetDouble());
        Assert.Equal("km/h", choices[0].GetProperty("top_speed").GetProperty("unit").GetString());
        Assert.Equal("kg/m³", json.RootElement.GetProperty("air_density").GetProperty("unit").GetString());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("checked").ValueKind);
    }

    [Theory]
    [InlineData("saloon-4", "brackwater", null, null, "The book has no car 'saloon-4'. Did you mean 'saloon-44'?")]
    [InlineData("saloon-44", "brakwater", null, null, "The book has no venue 'brakwater'. Did you mean 'brackwater'?")]
    [InlineData("saloon-44", "brackwater", "29-23", null, "--pair: '29-23' is not a pair of gears. Write driven/driver, such as 29/23.")]
    [InlineData("saloon-44", "brackwater", null, "3.73", "--final: '3.73' is not a pair of gears. Write driven/driver, such as 35/11.")]
    [InlineData("saloon-44", "brackwater", "23 driving 29", null, "--pair: '23 driving 29' is not a pair of gears. Write driven/driver: 29/23.")]
    [InlineData("saloon-44", "brackwater", null, "11/41", "--final: '11/41' is a crown wheel smaller than its pinion. Did you mean 41/11? Write crown wheel/pinion (driven/driver).")]
    [InlineData("saloon-44", "brackwater", "2/300", null, "--pair: A gear with 2 teeth is not possible.")]
    public void A_mistake_ends_with_2_and_says_what_to_write(string car, string venue, string? pair, string? final, string message)
    {
        string[] asked = ["--car", car, "--venue", venue, .. pair is null ? Array.Empty<string>() : ["--pair", pair], .. final is null ? Array.Empty<string>() : ["--final", final]];
        var (code, output, errors) = Run(asked);
        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(message, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_ends_with_2()
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        Assert.Equal(2, Entry.Run(["gear", Path.Combine(s_demo, "nowhere"), "--car", "a", "--venue", "b"], output, errors));
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = Entry.Run(["gear", s_demo, .. arguments], output, errors);
        return (code, output.ToString(), errors.ToString());
    }
}
