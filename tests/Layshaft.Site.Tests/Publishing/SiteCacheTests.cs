using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The cache comes back as it was written, or not at all.</summary>
public sealed class SiteCacheTests : IDisposable
{
    private static readonly ContentHash List = new(0, 3, 0, 4);

    private static readonly SiteTraces Written = new(
        new(
        [
            new("a.html", 7, new(0, 1, 0, 2)) { Modified = 638_000_000_000_000_000, Group = "one", Key = new(0, 3, 0, 7) },
            new("d/b.html", 0, new(0, 5, 0, 6)) { Modified = 1 },
            new("d/c.html", long.MaxValue, new(0, 5, 0, 6)) { Group = "two", Key = new(0, 3, 0, ulong.MaxValue) },
            new("d/d.html", 1, new(0, 5, 0, 7)) { Group = "two", Key = new(0, 3, 0, ulong.MaxValue) },
            new("d/e.html", 1, new(0, 5, 0, 7)) { Group = "one", Key = new(0, 3, 0, ulong.MaxValue) },
        ]),
        LinkHistory.Of([new("customers/a", "u", "second", "Grün", true), new("customers/b", "u", "third", "B", false)]))
    { Manifest = List };

    private readonly TempFolder _temp = new();

    private string File => _temp.At(".layshaft-site/cache");

    private SiteTraces Read() => new TraceStore(_temp.At("site")).Traces;

    private void Write()
    {
        new StateFolder(_temp.At("site")).Create();
        new TraceStore(_temp.At("site")).Save(new DiskWork(), Written);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void It_comes_back_as_it_was_written()
    {
        Write();
        var read = Read();
        Assert.Equal(Written.Files, read.Files);
        Assert.Equal(Written.Links.Links, read.Links.Links);
        Assert.Equal((List, System.IO.File.GetLastWriteTimeUtc(File).Ticks), (read.Manifest, read.Noted));
        Assert.Null(read.Files.Find("d"));
        Assert.Equal(7, read.Files.Find("a.html")!.Size);
    }

    [Fact]
    public void One_that_is_damaged_anywhere_or_cut_short_is_the_cache_of_nothing()
    {
        Write();
        var bytes = System.IO.File.ReadAllBytes(File);
        for (var i = 0; i < bytes.Length; i++)
        {
            var damaged = bytes.ToArray();
            damaged[i] ^= 1;
            System.IO.File.WriteAllBytes(File, damaged);
            Assert.Same(SiteTraces.None, Read());
            System.IO.File.WriteAllBytes(File, bytes[..i]);
            Assert.Same(SiteTraces.None, Read());
        }

        Assert.Same(SiteTraces.None, new TraceStore(_temp.At("none")).Traces);
    }

    [Fact]
    public void Of_a_site_with_another_manifest_only_files_with_the_same_bytes_are_known()
    {
        Trace[] listed = [new("a.html", 7, new(0, 1, 0, 2)), new("d/c.html", 7, new(0, 5, 0, 6)), new("e.html", 7, new(0, 1, 0, 2))];
        var traces = Written.For(new SiteManifest(new(listed), LinkHistory.None), new(0, 0, 0, 9));
        Assert.Equal([Written.Files[0], listed[1], listed[2]], traces.Files);
        Assert.Equal((new ContentHash(0, 0, 0, 9), LinkHistory.None), (traces.Manifest, traces.Links));
    }
}
