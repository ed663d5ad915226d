using System.Text.Json;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public sealed class GearCommandTests : IDisposable
{
    private readonly DirectoryInfo _temp = Directory.CreateTempSubdirectory("layshaft-gear-");

    private static readonly string s_demo = Path.Combine(AppContext.BaseDirectory, "demo-data");

    [Fact]
    public void It_ranks_what_is_in_stock_with_its_reasons()
    {
        var (code, output, errors) = Run("--car", "saloon-44", "--venue", "brackwater");
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("drop gears", output, StringComparison.Ordinal);
        Assert.Contains("drop gears (driven/driver)", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" driving ", output, StringComparison.Ordinal);
        Assert.Matches(@"\d mph \(\d+ km/h\)", output); // the demo's shop has mph first
        Assert.Contains("The first 12 of 68 combinations in stock.", output, StringComparison.Ordinal);
        Assert.Contains("Fitted: 33/28 (1.179) with 41/10 (4.100).", output, StringComparison.Ordinal);
        Assert.Contains("Fit: keep what is fitted, 33/28 (1.179) with 41/10 (4.100).", output, StringComparison.Ordinal);
        Assert.Contains("a headwind", output, StringComparison.Ordinal);
        Assert.DoesNotContain("head wind", output, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d\.\d{3} s\b", output); // no time in thousandths
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
        Assert.Contains("Yours, 23/29 (0.793, overdrive) with 35/11 (3.182): ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_stands_for_its_car_and_its_fitted_gears()
    {
        var byUnit = Run("--unit", "s6-103", "--venue", "brackwater");
        Assert.Equal(0, byUnit.Code);
        Assert.Equal(Run("--car", "saloon-44", "--venue", "brackwater").Output, byUnit.Output);
        var other = Run("--unit", "s6-103", "--car", "saloon-8", "--venue", "brackwater").Output;
        Assert.StartsWith("Saloon, car 8 at Brackwater, Calvane S6 (S6-103)", other, StringComparison.Ordinal);
    }

    [Fact]
    public void The_day_has_its_temperature_and_wind()
    {
        var (code, output, errors) = Run("--unit", "s6-103", "--venue", "brackwater", "--temperature", "30 °C", "--wind", "36 km/h from 240°");
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("(as given for the day), wind 22 mph (36 km/h) from 240°.", output, StringComparison.Ordinal);
        Assert.Contains("headwind 22 mph (36 km/h) everywhere", Run("--unit", "s6-103", "--venue", "brackwater", "--wind", "36 km/h").Output, StringComparison.Ordinal);
        double TopSpeed(string[] day)
        {
            using var json = JsonDocument.Parse(Run(["--unit", "s6-103", "--venue", "brackwater", "--json", .. day]).Output);
            return json.RootElement.GetProperty("choices").EnumerateArray().Max(c => c.GetProperty("top_speed").GetProperty("value").GetDouble());
        }

        Assert.True(TopSpeed(["--wind", "36 km/h"]) < TopSpeed([]) - 3);
    }

    [Theory]
    [InlineData("--temperature", "warm", "--temperature: ")]
    [InlineData("--wind", "18", "--wind: ")]
    [InlineData("--wind", "18 km/h from west", "--wind: ")]
    [InlineData("--wind", "400 km/h", "wind")]
    public void A_day_that_cannot_be_is_refused(string option, string text, string message)
    {
        var (code, output, errors) = Run("--unit", "s6-103", "--venue", "brackwater", option, text);
        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(message, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_unit_or_car_it_asks_for_one()
    {
        var (code, _, errors) = Run("--venue", "brackwater");
        Assert.Equal(2, code);
        Assert.Contains("Neither --unit nor --car is given. Write one of them.", errors, StringComparison.Ordinal);
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
        var recommended = json.RootElement.GetProperty("recommended");
        Assert.Equal("33/28", recommended.GetProperty("drop_pair").GetString());
        Assert.Equal(0, choices.EnumerateArray().Single(c => c.GetProperty("drop_pair").GetProperty("driven").GetInt32() == 33 && c.GetProperty("drop_pair").GetProperty("driver").GetInt32() == 28 && c.GetProperty("final_drive").GetProperty("driven").GetInt32() == 41)
            .GetProperty("difference_to_recommended").GetProperty("value").GetDouble());
        Assert.Equal("headwind", json.RootElement.GetProperty("changes")[1].GetProperty("change").GetString());
        Assert.Empty(json.RootElement.GetProperty("limits_exceeded").EnumerateArray());
        Assert.Equal("km/h", choices[0].GetProperty("top_speed").GetProperty("unit").GetString());
        Assert.Equal("kg/m³", json.RootElement.GetProperty("air_density").GetProperty("unit").GetString());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("checked").ValueKind);
    }

    [Theory]
    [InlineData("7000 rpm", "The fitted gears must not be used here: they exceed the propshaft limit.", false)]
    [InlineData("5000 rpm", "68 exceed the propshaft limit of 5000 rpm", true)]
    public void Gears_past_a_limit_are_not_recommended(string limit, string words, bool isNone)
    {
        var book = DemoWith("cars/saloon-44.yaml", t => t.Replace("propshaft_limit: 8400 rpm", $"propshaft_limit: {limit}", StringComparison.Ordinal));
        string[] asked = ["gear", book, "--car", "saloon-44", "--venue", "brackwater"];
        using var output = new StringWriter();
        using var errors = new StringWriter();
        Assert.Equal(0, Entry.Run(asked, output, errors));
        Assert.Contains(words, output.ToString(), StringComparison.Ordinal);
        Assert.Equal(isNone, output.ToString().Contains("Fit: none.", StringComparison.Ordinal));
        using var json = new StringWriter();
        Assert.Equal(0, Entry.Run([.. asked, "--json"], json, errors));
        using var read = JsonDocument.Parse(json.ToString());
        var root = read.RootElement;
        Assert.Equal(isNone, root.GetProperty("recommended").ValueKind == JsonValueKind.Null);
        Assert.Equal("PropshaftSpeed", root.GetProperty("limits_exceeded")[0].GetProperty("limit").GetString());
        if (!isNone)
        {
            var chosen = root.GetProperty("choices").EnumerateArray().First(c => c.GetProperty("difference_to_recommended").GetProperty("expanded_uncertainty").GetDouble() == 0);
            Assert.True(chosen.GetProperty("usable").GetBoolean());
        }
    }

    [Fact]
    public void A_change_says_what_it_takes_and_where_the_gears_come_from()
    {
        var book = DemoWith("jobs/2026/0631/job.yaml", t => t.Replace("drop_pair: 27/21", "drop_pair: 25/24", StringComparison.Ordinal));
        using var output = new StringWriter();
        Assert.Equal(0, Entry.Run(["gear", book, "--unit", "h4-007", "--venue", "hollinscar"], output, new StringWriter()));
        Assert.Contains("Fit: 27/21 (1.286) with 34/9 (3.778).", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("To change: drop gears 27/21. 0.4 h with the gearbox in the car.", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("In the owner's kit: drop gears 27/21.", output.ToString(), StringComparison.Ordinal);
        Assert.Matches(@"Gain: 0\.\d\d ± 0\.\d\d s a lap", output.ToString());
        Assert.Contains("Searched: 9936 combinations of gear pairs, drop gears and final drives.", output.ToString(), StringComparison.Ordinal);

        using var json = new StringWriter();
        Assert.Equal(0, Entry.Run(["gear", book, "--unit", "h4-007", "--venue", "hollinscar", "--json"], json, new StringWriter()));
        using var read = JsonDocument.Parse(json.ToString());
        var pair = read.RootElement.GetProperty("change").GetProperty("pairs")[0];
        Assert.Equal(("27/21", "Kit"), (pair.GetProperty("pair").GetString(), pair.GetProperty("source").GetString()));
        Assert.Contains(read.RootElement.GetProperty("choices").EnumerateArray(), c => c.GetProperty("gear_pairs").ValueKind == JsonValueKind.Array);
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

    public void Dispose() => _temp.Delete(recursive: true);

    // The demo book with one file changed.
    private string DemoWith(string path, Func<string, string> change)
    {
        foreach (var file in Directory.EnumerateFiles(s_demo, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(_temp.FullName, Path.GetRelativePath(s_demo, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }

        var changed = Path.Combine(_temp.FullName, path);
        var before = File.ReadAllText(changed);
        File.WriteAllText(changed, change(before));
        Assert.NotEqual(before, File.ReadAllText(changed));
        return _temp.FullName;
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = Entry.Run(["gear", s_demo, .. arguments], output, errors);
        return (code, output.ToString(), errors.ToString());
    }
}
