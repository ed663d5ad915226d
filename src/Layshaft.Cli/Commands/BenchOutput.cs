using System.Text.Json.Nodes;
using Layshaft.Cli.Bench;

namespace Layshaft.Cli.Commands;

/// <summary>Writes the answer of a bench command, or what to write instead.</summary>
internal static class BenchOutput
{
    public static int Answer(IEnumerable<string> lines, Func<JsonObject> json, bool asJson, TextWriter output)
    {
        if (asJson)
        {
            output.WriteLine(JsonFigure.Text(json()));
            return ExitCode.Fine;
        }

        foreach (var line in lines)
        {
            output.WriteLine(line);
        }

        return ExitCode.Fine;
    }

    public static int Wrong(string wrong, string? remedy, TextWriter errors)
    {
        errors.WriteLine(string.IsNullOrEmpty(remedy) ? wrong : $"{wrong} {remedy}");
        return ExitCode.WrongUse;
    }
}
