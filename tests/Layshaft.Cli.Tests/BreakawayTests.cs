using System.Text.Json;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

/// <summary>Shims towards a breakaway torque, from a trial in the book.</summary>
public class BreakawayTests
{
    private static readonly string s_demo = Path.Combine(AppContext.BaseDirectory, "demo-data");

    [Fact]
    public void It_names_the_packs_and_how_sure_they_are()
    {
        var (code, output, errors) = Run("shim", s_demo, "--unit", "pd-041", "--setting", "breakaway");

        Assert.Equal((ExitCode.Fine, string.Empty), (code, errors));
        Assert.Contains("Plates O-I-O-I-O: 4 friction faces", output, StringComparison.Ordinal);
        Assert.Contains("0.10 mm of shim changes the breakaway by 5.6", output, StringComparison.Ordinal);
        Assert.Matches(@"Fit   .* inside the target", output);
        Assert.Contains("The spring is under load", output, StringComparison.Ordinal);
    }

    // 52.3 N·m at 0.60 mm and 4 × 0.10 × 0.047 m × 3000 N/mm = 56.4 N·m a millimetre.
    [Fact]
    public void Each_pack_gives_the_torque_of_its_thickness()
    {
        using var data = JsonDocument.Parse(Run("shim", s_demo, "--unit", "pd-041", "--setting", "breakaway", "--json").Output);

        Assert.Equal(5.64, data.RootElement.GetProperty("change_per_tenth_millimetre").GetProperty("value").GetDouble(), 1e-9);
        Assert.All(data.RootElement.GetProperty("packs").EnumerateArray(), pack => Assert.Equal(
            (157.0 / 3) + (56.4 * (pack.GetProperty("thickness").GetProperty("value").GetDouble() - 0.60)),
            pack.GetProperty("expected").GetProperty("value").GetDouble(),
            0.02));
    }

    [Fact]
    public void Without_an_instrument_no_pack_is_called_good()
    {
        var review = Layshaft.Book.Reading.BookReader.ReadFolder(s_demo).Book!;
        var unknown = review with
        {
            Jobs = [.. review.Jobs.Select(j => j with { Settings = [.. j.Settings.Select(s => s with { Instrument = null })] })],
        };
        var answer = Layshaft.Cli.Bench.BreakawayAnswer.Of(unknown, "pd-041", "breakaway")!.Value.Value!;

        var lines = string.Join('\n', answer.Lines(Layshaft.Cli.Bench.BenchFigures.Create()));
        Assert.Contains("error limit is not known", lines, StringComparison.Ordinal);
        Assert.DoesNotContain("inside the target", lines, StringComparison.Ordinal);
        Assert.DoesNotContain("±", lines, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trace_of_a_differential_is_refused()
    {
        var (code, _, errors) = Run("trace", Path.Combine(s_demo, "shop.yaml"), s_demo, "--unit", "pd-041");

        Assert.Equal(ExitCode.WrongUse, code);
        Assert.Contains("Name the gearbox of the same car.", errors, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using StringWriter output = new(), errors = new();
        return (Entry.Run(arguments, output, errors), output.ToString(), errors.ToString());
    }
}
