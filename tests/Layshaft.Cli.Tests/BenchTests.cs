using System.Globalization;
using System.Text.Json;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

/// <summary>The bench commands, as they are typed.</summary>
public class BenchTests
{
    private static readonly string[] Figures =
        ["shim", "--trial-pack", "0.50 mm, 0.10 mm", "--measured", "0.16 mm", "--target", "0.05 to 0.10 mm", "--stock", "0.10 mm x 6, 0.20 mm x 4"];

    private static readonly string[] SecondGear = ["measure", "--teeth", "19", "--module", "3 mm", "--shift", "0.572"];

    private static (int Exit, string Output, string Errors) Run(params string[] arguments)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture), errors = new(CultureInfo.InvariantCulture);
        var exit = Entry.Run(arguments, output, errors);
        return (exit, output.ToString().Replace('\u202F', ' ').Replace('\u00A0', ' '), errors.ToString());
    }

    private static JsonElement Data(params string[] arguments)
    {
        var (exit, output, errors) = Run([.. arguments, "--json"]);
        Assert.Equal((0, string.Empty), (exit, errors));
        return JsonDocument.Parse(output).RootElement;
    }

    private static double Mm(JsonElement figure)
    {
        Assert.Equal("mm", figure.GetProperty("unit").GetString());
        return figure.GetProperty("value").GetDouble();
    }

    private static string[] With(string[] arguments, string option, string value)
    {
        string[] changed = [.. arguments];
        changed[Array.IndexOf(changed, option) + 1] = value;
        return changed;
    }

    [Fact]
    public void A_pack_is_found_from_figures_with_the_fewest_shims()
    {
        // 0.60 mm gave 0.16 mm, so 0.66 to 0.71 mm give 0.10 to 0.05 mm: 0.50 + 0.20 mm.
        var answer = Data(Figures);

        Assert.Equal(0.66, Mm(answer.GetProperty("pack_from")), 5e-7);
        Assert.Equal(0.71, Mm(answer.GetProperty("pack_to")), 5e-7);
        var best = answer.GetProperty("packs")[0];
        Assert.Equal([0.5, 0.2], best.GetProperty("shims").EnumerateArray().Select(s => Mm(s.GetProperty("thickness"))));
        Assert.Equal(0.06, Mm(best.GetProperty("result")), 5e-7);
        Assert.Equal(3, answer.GetProperty("packs").GetArrayLength());
    }

    [Fact]
    public void Shims_marked_in_inches_are_named_by_their_mark()
    {
        // 0.010 in gave 0.008 in, so 0.014 to 0.015 in give 0.004 to 0.003 in.
        var (exit, output, errors) = Run("shim", "--trial-pack", "0.005 in, 5 thou", "--measured", "8 thou", "--target", "0.003 to 0.004 in", "--stock", "7 thou x 2, 2 thou x 4");

        Assert.Equal((0, string.Empty), (exit, errors));
        Assert.Contains("Fit   2 × 0.178 mm (0.007 in) = 0.356 mm", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_name_the_pack_its_result_and_the_manual()
    {
        var (exit, output, errors) = Run([.. Figures, "--error-limit", "0.003 mm"]);

        Assert.Equal((0, string.Empty), (exit, errors));
        Assert.Contains("Fit   0.500 mm + 0.200 mm = 0.700 mm, gives 0.060 ± 0.", output, StringComparison.Ordinal);
        Assert.Equal(2, output.Split('\n').Count(l => l.StartsWith("or ", StringComparison.Ordinal)));
        Assert.Contains("The maker's manual takes precedence.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_known_gauge_no_uncertainty_is_shown()
    {
        var (_, output, _) = Run(Figures);

        Assert.DoesNotContain("±", output, StringComparison.Ordinal);
        Assert.Contains("is not known", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stock_cannot_do_is_bought_or_ground()
    {
        var answer = Data("shim", "--trial-pack", "0.60 mm", "--measured", "0.16 mm", "--target", "0.05 to 0.10 mm", "--stock", "0.09 mm x 0, 0.75 mm x 1");

        Assert.False(answer.GetProperty("stock_suffices").GetBoolean());
        Assert.Equal(1, answer.GetProperty("purchase").GetProperty("shims").EnumerateArray().Sum(s => s.GetProperty("to_buy").GetInt32()));
        var ground = answer.GetProperty("grinding").GetProperty("shims").EnumerateArray().Single(s => s.GetProperty("ground_to").ValueKind == JsonValueKind.Object);
        Assert.Equal(0.685, Mm(ground.GetProperty("ground_to")), 5e-7);
    }

    [Theory]
    [InlineData("--trial-pack", "0.50", "has no unit")]
    [InlineData("--measured", "0,16 mm", "Write 0.16 mm.")]
    [InlineData("--target", "0.10 to 0.05 mm", "is above the second")]
    [InlineData("--target", "at most 0.10 mm", "needs two lengths")]
    [InlineData("--stock", "0.10 mm", "has no count")]
    [InlineData("--stock", "0.10 mm x -2", "is out of range")]
    [InlineData("--trial-pack", "0.01 µm", "")]
    [InlineData("--trial-pack", "30 mm", "is out of range")]
    public void A_wrong_figure_is_told_with_what_to_write(string option, string value, string told)
    {
        var (exit, output, errors) = Run(With(Figures, option, value));

        Assert.Equal(2, exit);
        Assert.Equal(string.Empty, output);
        Assert.Contains(told, errors, StringComparison.Ordinal);
        Assert.EndsWith(".", errors.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Unit_without_setting_is_refused() => Assert.Equal(2, Run("shim", "--unit", "t6-014").Exit);

    [Fact]
    public void A_gear_says_what_it_measures_new()
    {
        // z = 19, m = 3 mm, x = 0.572, k = 3: W = m cos α ((k - 1/2)π + z inv α) + 2 x m sin α (ISO 21771:2007) = 24.113 mm.
        var answer = Data([.. SecondGear, "--span", "3"]);

        Assert.Equal(3 * Math.Cos(Math.PI / 9) * ((2.5 * Math.PI) + (19 * (Math.Tan(Math.PI / 9) - (Math.PI / 9)))) + (2 * 0.572 * 3 * Math.Sin(Math.PI / 9)), Mm(answer.GetProperty("new_size")), 5e-4);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("tooth_thickness_lost").ValueKind);
    }

    [Fact]
    public void A_reading_says_how_much_of_the_tooth_is_gone()
    {
        var answer = Data([.. SecondGear, "--span", "3", "--new", "24.113 mm", "--reading", "24.013 mm", "--error-limit", "0.004 mm"]);

        // ΔW/cos α = 0.1/cos 20°.
        Assert.Equal(0.1 / Math.Cos(Math.PI / 9), Mm(answer.GetProperty("tooth_thickness_lost")), 5e-5);
        Assert.InRange(answer.GetProperty("tooth_thickness_lost").GetProperty("expanded_uncertainty").GetDouble(), 0.004, 0.006);
    }

    [Fact]
    public void A_size_over_pins_gets_smaller_as_teeth_wear()
    {
        var fresh = Data([.. SecondGear, "--pin", "5.5 mm"]);
        var size = Mm(fresh.GetProperty("new_size"));
        var worn = Data([.. SecondGear, "--pin", "5.5 mm", "--reading", string.Create(CultureInfo.InvariantCulture, $"{size - 0.1:0.0000} mm")]);

        Assert.InRange(Mm(worn.GetProperty("tooth_thickness_lost")), 0.03, 0.12);
    }

    [Theory]
    [InlineData("--span", "9", "cannot be spanned")]
    [InlineData("--pin", "1 mm", "too thin")]
    [InlineData("--pin", "30 mm", "too thick")]
    [InlineData("--pressure-angle", "45°", "10° to 35°")]
    [InlineData("--reading", "24.01", "has no unit")]
    public void A_gear_that_cannot_be_measured_so_is_told_how_else(string option, string value, string told)
    {
        var (exit, output, errors) = Run([.. SecondGear, option, value]);

        Assert.Equal(2, exit);
        Assert.Equal(string.Empty, output);
        Assert.Contains(told, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_negative_profile_shift_can_be_given() => Assert.Equal(-0.054, Data("measure", "--teeth", "25", "--module", "3 mm", "--shift", "-0.054").GetProperty("profile_shift").GetDouble());
}
