using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Layshaft.Cli.Tests;

public class DependencyTests
{
    private static readonly string[] Chain = ["Layshaft.Engineering", "Layshaft.Book", "Layshaft.Site", "layshaft"];

    [Fact]
    public void Dependencies_point_only_to_the_left()
    {
        foreach (var (name, place) in Chain.Select((n, i) => (n, i)))
        {
            var ours = Assembly.Load(name).GetReferencedAssemblies().Select(r => r.Name!).Where(Chain.Contains).ToArray();

            Assert.All(ours, r => Assert.True(Array.IndexOf(Chain, r) < place, $"{name} uses {r}."));
            Assert.True(place == 0 || ours.Length > 0, $"{name} uses none of the others: is it still the right assembly?");
        }
    }

    [Fact]
    public void Files_are_opened_for_reading_in_one_place_only()
    {
        var source = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "src"));
        var opening = new Regex(@"\bFile\.(OpenRead|OpenText|OpenHandle|ReadAll|ReadLines)|\bFileMode\.Open\b(?!.*FileAccess\.ReadWrite)");
        Assert.Equal(
            ["RegularFile.cs"],
            Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
                .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !f.Contains("Packaging", StringComparison.Ordinal))
                .Where(f => opening.IsMatch(File.ReadAllText(f))).Select(Path.GetFileName));
    }

    private static string Here([CallerFilePath] string path = "") => path;

    [Fact]
    public void Engineering_uses_no_files_clock_or_console()
    {
        var used = Assembly.Load("Layshaft.Engineering").GetReferencedAssemblies().Select(r => r.Name!).ToArray();

        Assert.DoesNotContain("System.Console", used);
        Assert.DoesNotContain("System.Net.Http", used);
        Assert.DoesNotContain("YamlDotNet", used);
        Assert.DoesNotContain("SkiaSharp", used);
    }
}
