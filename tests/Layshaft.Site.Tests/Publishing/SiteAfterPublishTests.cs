using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>What a publish says that a look at the site would see is what a look sees.</summary>
public sealed class SiteAfterPublishTests : IDisposable
{
    private readonly TempFolder _temp = new();

    private string Out => _temp.At("reports");

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_look_sees_what_a_publish_left()
    {
        AssertSeen(Publish(("a.html", "a"), ("d/b.html", "b"), ("d/e/c.html", "c"), ("d-e.html", "d")));
        AssertSeen(Publish(("a.html", "A"), ("d/b.html", "b"), ("d/e/c.html", "c")));
        AssertSeen(Publish(("a.html", "A"), ("d/b.html", "b"), ("d/e/c.html", "c")));
        File.Delete(_temp.At("reports/d/b.html"));
        AssertSeen(Publish(("a.html", "A"), ("d/b.html", "b"), ("f/g.html", "g")));
    }

    [Fact]
    public void It_counts_what_is_not_ours_unless_that_is_young_or_a_link()
    {
        Publish(("a.html", "a"), ("d/b.html", "b"));
        _temp.Write("reports/d/notes.txt", "n");
        _temp.Write("reports/own/deep/x.txt", "x");
        Directory.CreateDirectory(_temp.At("reports/empty"));
        Assert.Null(Publish(("a.html", "A"), ("d/b.html", "b")).Site);
        foreach (var file in new[] { "reports/d/notes.txt", "reports/own/deep/x.txt" })
        {
            File.SetLastWriteTimeUtc(_temp.At(file), DateTime.UtcNow.AddHours(-1));
        }

        AssertSeen(Publish(("a.html", "B"), ("d/b.html", "b")));
        File.CreateSymbolicLink(_temp.At("reports/own/link"), "nowhere");
        Assert.Null(Publish(("a.html", "C"), ("d/b.html", "b")).Site);
    }

    [Fact]
    public void What_is_done_to_the_site_afterwards_shows()
    {
        var result = Publish(("a.html", "a"), ("d/b.html", "b"));
        _temp.Write("reports/d/notes.txt", "n");
        Assert.NotEqual(Look().Value, result.Site!.Number);
    }

    private PublishResult Publish(params (string Path, string Content)[] files) => new Publisher(Sites.Options).Publish(Sites.Plan(files), Out);

    private TreeDigest Look() => TreeDigest.Of(Out, null, hidden: true, (DateTime.UtcNow - TimeSpan.FromMinutes(1)).Ticks);

    private void AssertSeen(PublishResult result)
    {
        var look = Look();
        Assert.Equal(look.Value, result.Site!.Number);

        // All of ours were made just now.
        var young = look.Fresh.Where(f => result.ForeignFiles.Count == 0 || !f.EndsWith(".txt", StringComparison.Ordinal));
        Assert.Equal(young.Select(f => (f, OldSite.HashOf(f).ToString())), result.Site.Fresh.OrderBy(f => f.Path, StringComparer.Ordinal));
    }
}
