using System.Security.Cryptography;
using System.Text;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Small plans, and folders as texts to compare.</summary>
internal static class Sites
{
    internal const string Manifest = "shop/layshaft-manifest.json";

    internal static PublishOptions Options { get; } = new() { Generator = "test", Parallelism = 1 };

    /// <summary>A plan of files whose content is their only input.</summary>
    internal static SitePlan Plan(params (string Path, string Content)[] files) => SitePlan.Of(files.Select(f =>
        PlannedOutput.OfText(f.Path, [new("content", f.Content)], () => f.Content)));

    /// <summary>
    /// Holds that a publish left no tree of its work but a spare, and in that nothing but files that the site's list names, as it
    /// names them.
    /// </summary>
    internal static void AssertNothingLeft(string folder)
    {
        var state = new StateFolder(folder);
        Assert.Empty(Directory.EnumerateDirectories(state.Root).Except([state.Spare, state.Kept]));
        Assert.False(Path.Exists(state.OutputMark));
        Assert.False(Path.Exists(Path.Combine(state.Spare, StateFolder.MarkName)));
        if (!Directory.Exists(state.Spare))
        {
            return;
        }

        var list = File.ReadAllBytes(StateFolder.Place(folder, Manifest));
        Assert.NotNull(SpareChanges.Read(state.SpareChanges, ContentHash.Of(SHA256.HashData(list))));
        var named = SiteManifest.Parse(list)!;
        foreach (var entry in SiteTree.Walk(state.Spare).Entries.Where(e => e.Kind != TreeKind.Folder))
        {
            var place = StateFolder.Place(state.Spare, entry.Path);
            Assert.Equal(TreeKind.File, entry.Kind);
            Assert.Equal(entry.Path == Manifest ? ContentHash.Of(SHA256.HashData(list)) : named.Find(entry.Path)?.Sha256, OldSite.HashOf(place));
        }
    }

    /// <summary>Everything in a folder, one line a file, with its content.</summary>
    internal static string Show(string folder, bool withManifest = false)
    {
        if (!Directory.Exists(folder))
        {
            return "(none)";
        }

        var text = new StringBuilder();
        foreach (var entry in SiteTree.Walk(folder).Entries.Where(e => withManifest || !e.Path.StartsWith("shop", StringComparison.Ordinal)))
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
