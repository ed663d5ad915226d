using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

/// <summary>Checks that what the guides refer to exists: links, paths, types, commands and options.</summary>
public sealed partial class GuideReferenceTests
{
    // Options of other programs that the guides mention outside a full command.
    private static readonly string[] ForeignOptions = ["--global", "--tool-path", "--photo-width", "--help"];

    private static readonly string Root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", ".."));

    private static readonly Dictionary<string, string> Commands = Names(Help()).ToDictionary(n => n, n => Help(n));

    public static TheoryData<string> Guides =>
        new([
            .. Directory.EnumerateFiles(Root, "*.md").Concat(Directory.EnumerateFiles(Path.Combine(Root, "docs"), "*.md"))
                .Select(p => Path.GetRelativePath(Root, p).Replace('\\', '/')).Order(StringComparer.Ordinal),
        ]);

    [Theory, MemberData(nameof(Guides))]
    public void Relative_links_lead_to_a_file_and_a_heading(string guide)
    {
        foreach (var target in Link().Matches(Text(guide)).Select(m => m.Groups[1].Value).Where(t => !t.Contains("://", StringComparison.Ordinal)))
        {
            var (file, anchor) = target.Split('#') is [var f, var a] ? (f, a) : (target, "");
            var path = file.Length == 0 ? guide : Path.Combine(Path.GetDirectoryName(guide)!, file);

            Assert.True(Exists(path), $"{guide} links to {target}, and there is no such file.");
            Assert.True(anchor.Length == 0 || Headings(Text(path)).Contains(anchor), $"{guide} links to {target}, and there is no such heading.");
        }
    }

    [Theory, MemberData(nameof(Guides))]
    public void Paths_of_the_repository_exist(string guide)
    {
        var paths = Code(guide).SelectMany(c => RepositoryPath().Matches(c).Select(m => m.Value.TrimEnd('.')));
        Assert.All(paths.Where(p => !Placeholder().IsMatch(p)), p => Assert.True(Exists(p), $"{guide} names {p}, which does not exist."));
    }

    [Theory, MemberData(nameof(Guides))]
    public void Commands_and_options_exist(string guide)
    {
        foreach (var code in Code(guide))
        {
            var call = Call().Match(code);
            if (call.Success && call.Groups["command"].Value is var name && !name.StartsWith('-'))
            {
                Assert.True(Commands.ContainsKey(name), $"{guide} names the command {name}, which does not exist: {code}");
                Assert.All(Option().Matches(call.Value), o => Assert.True(Has(Commands[name], o.Value), $"{guide}: {name} has no {o.Value}."));
            }
            else if (code.StartsWith("--", StringComparison.Ordinal))
            {
                Assert.All(Option().Matches(code), o => Assert.True(ForeignOptions.Contains(o.Value) || Commands.Values.Any(h => Has(h, o.Value)), $"{guide}: no command has {o.Value}."));
            }
        }
    }

    [Fact]
    public void The_readme_names_every_command()
    {
        Assert.NotEmpty(Commands);
        Assert.All(Commands.Keys, c => Assert.Contains($"`layshaft {c} ", Text("README.md"), StringComparison.Ordinal));
    }

    [Fact]
    public void Types_that_the_developers_guide_names_exist()
    {
        var sources = string.Join('\n', new[] { "src", "tests" }.SelectMany(f => Directory.EnumerateFiles(Path.Combine(Root, f), "*.cs", SearchOption.AllDirectories)).Select(File.ReadAllText));
        var types = Code("DEVELOPERS.md").Where(c => TypeName().IsMatch(c)).Select(c => c.Split('.')[0]).Distinct().ToArray();

        Assert.True(types.Length > 20, "The guide should name types in code spans.");
        Assert.All(types, t => Assert.True(Regex.IsMatch(sources, $@"\b{t}\b"), $"DEVELOPERS.md names {t}, which is in no source."));
    }

    [Fact]
    public void The_readme_opens_with_one_short_paragraph()
    {
        var first = Text("README.md").Split("\n\n")[1];

        Assert.InRange(first.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Length, 30, 90);
    }

    private static string Help(params string[] command)
    {
        using var output = new StringWriter();
        Assert.Equal(0, Entry.Run([.. command, "--help"], output, TextWriter.Null));
        return output.ToString();
    }

    private static IEnumerable<string> Names(string help) =>
        CommandName().Matches(help[help.IndexOf("Commands:", StringComparison.Ordinal)..]).Select(m => m.Groups[1].Value);

    private static bool Has(string help, string option) => Regex.IsMatch(help, $"(?<![a-z-]){option}(?![a-z-])");

    // The code spans of a guide and the lines of its code blocks.
    private static IEnumerable<string> Code(string guide)
    {
        var text = Text(guide);
        return Block().Matches(text).SelectMany(b => b.Groups[1].Value.Split('\n'))
            .Concat(Span().Matches(Block().Replace(text, "")).Select(m => m.Groups[1].Value))
            .Select(c => c.Trim());
    }

    private static HashSet<string> Headings(string text) =>
        [.. Heading().Matches(Block().Replace(text, "")).Select(m => NotInAnchor().Replace(m.Groups[1].Value.ToLowerInvariant(), "").Replace(' ', '-'))];

    private static bool Exists(string path) => File.Exists(Path.Combine(Root, path)) || Directory.Exists(Path.Combine(Root, path));

    private static string Text(string path) => File.ReadAllText(Path.Combine(Root, path)).ReplaceLineEndings("\n");

    private static string Here([CallerFilePath] string path = "") => path;

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^```[a-z]*\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"`([^`\n]+)`")]
    private static partial Regex Span();

    [GeneratedRegex(@"^#+ (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\w\- ]")]
    private static partial Regex NotInAnchor();

    [GeneratedRegex(@"(?<![\w/.-])(?:src|tests|docs|site-templates|demo-data)/[\w/.-]*(?![*\w])")]
    private static partial Regex RepositoryPath();

    // A name in capitals, such as LANGUAGE.yaml.
    [GeneratedRegex(@"/[A-Z]+(?:\.[a-z]+)?$")]
    private static partial Regex Placeholder();

    [GeneratedRegex(@"(?:^layshaft |src/Layshaft\.Cli -c Release -- )(?<command>[a-z-]+)[^#>|]*")]
    private static partial Regex Call();

    [GeneratedRegex(@"(?<![\w-])--[a-z][a-z-]*")]
    private static partial Regex Option();

    [GeneratedRegex(@"^(?:[A-Z][a-z0-9]+){1,6}(?:\.[A-Z]\w*)?$")]
    private static partial Regex TypeName();

    [GeneratedRegex(@"^  ([a-z][a-z-]*) ", RegexOptions.Multiline)]
    private static partial Regex CommandName();
}
