using System.Reflection;

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
    public void Engineering_uses_no_files_clock_or_console()
    {
        var used = Assembly.Load("Layshaft.Engineering").GetReferencedAssemblies().Select(r => r.Name!).ToArray();

        Assert.DoesNotContain("System.Console", used);
        Assert.DoesNotContain("System.Net.Http", used);
        Assert.DoesNotContain("YamlDotNet", used);
        Assert.DoesNotContain("SkiaSharp", used);
    }
}
