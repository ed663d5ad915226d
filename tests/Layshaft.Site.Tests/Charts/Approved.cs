using System.Runtime.CompilerServices;
using Layshaft.Site.Html;

namespace Layshaft.Site.Tests.Charts;

/// <summary>
/// Compares a drawing with the approved one that is kept beside the tests, as a file that any browser opens.
/// Run the tests with LAYSHAFT_APPROVE=1 to keep the new drawings, then look at each before committing it.
/// </summary>
internal static class Approved
{
    public static void Matches(string name, RawHtml drawing, [CallerFilePath] string testFile = "")
    {
        var path = Path.Combine(Path.GetDirectoryName(testFile)!, "Approved", name + ".svg");
        var drawn = drawing.Markup + "\n";
        if (Environment.GetEnvironmentVariable("LAYSHAFT_APPROVE") == "1")
        {
            File.WriteAllText(path, drawn);
        }

        Assert.True(File.Exists(path), $"There is no approved drawing {path}.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), drawn);
    }
}
