using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>A walk that goes side by side finds all there is, in order of path.</summary>
public sealed class SiteTreeTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Everything_is_found_in_ordinal_order_whatever_the_names_and_however_deep()
    {
        // A point and a dash stand before the slash, digits and letters behind it: a folder's files and its neighbours interlock.
        string[] names = ["a", "a-", "a-b", "a.b", "a0", "aa", "b"];
        var expected = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var path in names.SelectMany(one => names.SelectMany(two => names.SelectMany(three => new[] { $"{one}/{two}/{three}/x", $"{one}/{two}/f{three}", $"{one}/f{three}", $"f{three}" }))))
        {
            _temp.Write(path, "12");
            expected.Add(path);
            expected.UnionWith(OutputPath.FoldersAbove(path));
        }

        var tree = SiteTree.Walk(_temp.Path + Path.DirectorySeparatorChar);
        Assert.Equal(expected, tree.Select(e => e.Path));
        Assert.All(tree, e => Assert.Equal(Directory.Exists(_temp.At(e.Path)) ? TreeKind.Folder : TreeKind.File, e.Kind));
        var file = tree.Find("a-/a.b/b/x")!;
        Assert.Equal((2, File.GetLastWriteTimeUtc(_temp.At("a-/a.b/b/x")).Ticks), (file.Size, file.Modified));
    }

    [Fact]
    public void Links_are_seen_and_not_followed()
    {
        _temp.Write("one/two/x", "1");
        Directory.CreateSymbolicLink(_temp.At("link"), _temp.At("one"));
        Directory.CreateSymbolicLink(_temp.At("one/link"), _temp.At("one"));
        Directory.CreateSymbolicLink(_temp.At("one/two/link"), _temp.At("one"));
        Assert.Equal(
            [("link", TreeKind.Link), ("one", TreeKind.Folder), ("one/link", TreeKind.Link),
                ("one/two", TreeKind.Folder), ("one/two/link", TreeKind.Link), ("one/two/x", TreeKind.File)],
            SiteTree.Walk(_temp.Path).Select(e => (e.Path, e.Kind)));
        Assert.Empty(SiteTree.Walk(_temp.At("none")));
    }
}
