using System.Text;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Small plans, and folders as texts to compare.</summary>
internal static class Sites
{
    internal const string Manifest = "shop/layshaft-manifest.json";

    internal static PublishOptions Options { get; } = new() { Parallelism = 1 };

    /// <summary>A plan of files whose content is their only input.</summary>
    internal static SitePlan Plan(params (string Path, string Content)[] files) => SitePlan.Of(files.Select(f =>
        Text(f.Path, [new("content", f.Content)], () => f.Content)));

    /// <summary>An output of text.</summary>
    internal static PlannedOutput Text(string path, IReadOnlyList<PlanInput> inputs, Func<string> text) =>
        Output(path, inputs, stream => stream.Write(Encoding.UTF8.GetBytes(text())));

    /// <summary>An output.</summary>
    internal static PlannedOutput Output(string path, IReadOnlyList<PlanInput> inputs, Action<Stream> write, OutputGroup? group = null, int turn = 0) => new(
        path,
        PlannedOutput.KeyOf("test", inputs),
        (_, stream) =>
        {
            write(stream);
            return false;
        })
    { Group = group, Turn = turn };

    /// <summary>Finishes what was cut off, as the next command does.</summary>
    internal static void OpenAgain(string folder, FaultyFileWork? files = null) => new Publisher(Options, files ?? new()).Open(folder)?.Dispose();

    /// <summary>Checks that nothing of a publish's work is left, in the site or beside it.</summary>
    internal static void AssertNothingLeft(string folder)
    {
        var state = new StateFolder(folder);
        Assert.Empty(Directory.EnumerateDirectories(state.Root).Except([state.Kept]));
        Assert.False(Path.Exists(state.NextManifest) || Path.Exists(state.NextChanges));
        Assert.False(new Publisher(Options).IsCutOff(folder));
    }

    /// <summary>Everything in a folder, one line a file, with its content.</summary>
    internal static string Show(string folder, bool withManifest = false)
    {
        if (!Directory.Exists(folder))
        {
            return "(none)";
        }

        var text = new StringBuilder();
        foreach (var entry in SiteTree.Walk(folder).Where(e => withManifest || !e.Path.StartsWith("shop", StringComparison.Ordinal)))
        {
            var place = StateFolder.Place(folder, entry.Path);
            text.Append(entry.Path).Append(entry.Kind switch
            {
                TreeKind.Folder => "/",
                TreeKind.Link => " -> " + new FileInfo(place).LinkTarget,
                _ => " = " + File.ReadAllText(place),
            }).Append('\n');
        }

        return text.ToString();
    }
}
