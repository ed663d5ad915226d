using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Things by their path.</summary>
public class PathIndexTests
{
    private static PathIndex<Trace> Files(params string[] paths) => new(paths.Select(p => new Trace(p, 0, default)));

    [Fact]
    public void They_are_in_ordinal_order_and_found_by_path()
    {
        var files = Files("b", "a/x", "a-b/c", "a/ä/y");
        Assert.Equal(["a-b/c", "a/x", "a/ä/y", "b"], files.Select(f => f.Path));
        Assert.Equal((2, -1, -1), (files.IndexOf("a/ä/y"), files.IndexOf("a"), files.IndexOf("A/x")));
        Assert.Equal("b", files.Find("b")!.Path);
        Assert.False(files.HasTwins);
    }

    [Fact]
    public void Folders_are_given_once_those_above_first()
    {
        var files = Files("a", "a-b/c/d", "ab/c/d", "ab/c/e", "ab/cd/e", "ab/f");
        Assert.Equal(["a-b", "a-b/c", "ab", "ab/c", "ab/cd"], files.Folders);
        Assert.True(files.HasFolder("ab/cd"));
        Assert.False(files.HasFolder("a"));
        Assert.Empty(Files().Folders);
    }

    [Fact]
    public void Twins_are_seen() => Assert.True(Files("a", "b", "a").HasTwins);
}
