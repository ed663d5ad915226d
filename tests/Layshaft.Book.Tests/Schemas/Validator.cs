using System.Diagnostics;
using System.Text.Json.Nodes;
using Layshaft.Book.Schemas;

namespace Layshaft.Book.Tests.Schemas;

/// <summary>
/// What an independent validator (npm ajv, with npm yaml to read the files) says of everything that the schema tests ask:
/// one start of node for all of them.
/// </summary>
public sealed class Validator
{
    public Validator()
    {
        var asked = new JsonObject
        {
            ["schemas"] = new JsonObject(BookSchema.All.Select(s => KeyValuePair.Create(s.Kind, JsonNode.Parse(s.Text())))),
            ["files"] = new JsonArray([.. SchemaFile.All.Select(f => new JsonObject { ["name"] = f.Name, ["kind"] = f.Schema.Kind, ["text"] = f.Text })]),
            ["trees"] = new JsonArray([.. ChangedTree.All.Select(t => new JsonObject { ["kind"] = t.Kind, ["value"] = t.Json() })]),
            ["values"] = new JsonArray([.. ValueCase.All.Select(v => new JsonObject { ["schema"] = v.Schema(), ["texts"] = new JsonArray([.. ValueCase.Texts.Select(t => (JsonNode)t)]) })]),
        };
        Install();
        var answer = JsonNode.Parse(Run("node", ["validate.mjs"], asked.ToJsonString()))!.AsObject();
        Files = answer["files"]!.AsArray().ToDictionary(
            f => (string)f!["name"]!,
            f => (IReadOnlyList<(int, int, string)>)[.. f!["errors"]!.AsArray().Select(e => ((int)e!["line"]!, (int)e["column"]!, (string)e["keyword"]!))],
            StringComparer.Ordinal);
        Trees = [.. answer["trees"]!.AsArray().Select(t => (bool)t!)];
        Values = [.. answer["values"]!.AsArray().Select(v => (IReadOnlyList<bool>)[.. v!.AsArray().Select(t => (bool)t!)])];
    }

    /// <summary>The mistakes in each file, by name: line, column, keyword.</summary>
    internal IReadOnlyDictionary<string, IReadOnlyList<(int Line, int Column, string Keyword)>> Files { get; }

    /// <summary>Whether each changed file fits.</summary>
    internal IReadOnlyList<bool> Trees { get; }

    /// <summary>Whether each text fits, by kind of value.</summary>
    internal IReadOnlyList<IReadOnlyList<bool>> Values { get; }

    private static void Install()
    {
        if (!File.Exists(Path.Combine(SchemaFile.Here(), "node_modules", "yaml", "package.json")))
        {
            _ = OperatingSystem.IsWindows()
                ? Run("cmd", ["/c", "npm install --no-package-lock --no-audit --no-fund"], string.Empty)
                : Run("npm", ["install", "--no-package-lock", "--no-audit", "--no-fund"], string.Empty);
        }
    }

    private static string Run(string program, string[] arguments, string input)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = SchemaFile.Here(),
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new System.Text.UTF8Encoding(false),
            StandardOutputEncoding = System.Text.Encoding.UTF8,
        };
        try
        {
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEndAsync();
            process.StandardInput.Write(input);
            process.StandardInput.Close();
            process.WaitForExit();
            return process.ExitCode == 0 ? output.Result : throw new InvalidOperationException($"{program}: {errors.Result}");
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new InvalidOperationException($"These tests need node and npm (Debian, Ubuntu: sudo apt-get install nodejs npm); '{program}' could not be started.", missing);
        }
    }
}
