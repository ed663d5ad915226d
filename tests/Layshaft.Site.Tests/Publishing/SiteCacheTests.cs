using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The cache comes back as it was written, or not at all.</summary>
public sealed class SiteCacheTests : IDisposable
{
    private static readonly ContentHash List = new(0, 3, 0, 4);

    private static readonly SiteRegister Written = new(
        PathTable.Of(["a.html", "d/b.html", "d/c.html"], out _),
        [
            new() { Sha256 = new(0, 1, 0, 2), Size = 7, Modified = 638_000_000_000_000_000, Group = 1 },
            new() { Sha256 = new(0, 5, 0, 6), Size = 0, Modified = 1 },
            new() { Sha256 = new(0, 5, 0, 6), Size = long.MaxValue, Group = 2 },
        ],
        HashColumn.Of(3, i => i == 1 ? null : new(0, 3, 0, ulong.MaxValue - (ulong)i)),
        [new(0, 10, 0, 11), new(0, 12, 0, 13)]);

    private readonly TempFolder _temp = new();

    private string File => _temp.At(".layshaft-site/cache");

    private SiteRegister Read() => SiteCache.Beside(_temp.At("site")).Register;

    private void Write(ContentHash list, bool always = true)
    {
        new StateFolder(_temp.At("site")).Create();
        SiteCache.Beside(_temp.At("site")).Save(new DiskWork(), Written, list, always);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void It_comes_back_as_it_was_written()
    {
        Write(List);
        var read = Read();
        Assert.Equal(Rows(Written), Rows(read));
        Assert.Equal([new(0, 10, 0, 11), null, new ContentHash(0, 12, 0, 13)], Enumerable.Range(0, 3).Select(read.MarkOf));
        Assert.Equal((List, System.IO.File.GetLastWriteTimeUtc(File).Ticks), (read.List, read.Noted));
        Assert.Equal([new(0, 3, 0, ulong.MaxValue), null, new ContentHash(0, 3, 0, ulong.MaxValue - 2)], Enumerable.Range(0, 3).Select(i => read.Keys[i]));
        Assert.Null(read.Find("d"));
        Assert.Equal(7, read.Find("a.html")!.Value.Size);
    }

    [Fact]
    public void It_is_written_anew_only_when_it_says_something_else()
    {
        Write(List);
        var long_ago = DateTime.UtcNow.AddDays(-1);
        System.IO.File.SetLastWriteTimeUtc(File, long_ago);
        Write(List, always: false);
        Assert.Equal(long_ago, System.IO.File.GetLastWriteTimeUtc(File));
        Write(new(0, 0, 0, 1), always: false);
        Assert.Equal(new ContentHash(0, 0, 0, 1), Read().List);
    }

    [Fact]
    public void One_that_is_damaged_anywhere_or_cut_short_is_the_register_of_nothing()
    {
        Write(List);
        var bytes = System.IO.File.ReadAllBytes(File);
        for (var i = 0; i < bytes.Length; i++)
        {
            var damaged = bytes.ToArray();
            damaged[i] ^= 1;
            System.IO.File.WriteAllBytes(File, damaged);
            Assert.Same(SiteRegister.None, Read());
            System.IO.File.WriteAllBytes(File, bytes[..i]);
            Assert.Same(SiteRegister.None, Read());
        }

        Assert.Same(SiteRegister.None, SiteCache.Beside(_temp.At("none")).Register);
    }

    [Fact]
    public void Of_a_site_with_another_list_only_files_with_the_same_bytes_are_known()
    {
        var manifest = new SiteManifest([new("a.html", 7, new(0, 1, 0, 2)), new("d/c.html", 7, new(0, 5, 0, 6)), new("e.html", 7, new(0, 1, 0, 2))]);
        var register = SiteRegister.Of(manifest, List, Written);
        Assert.Equal([Written[0], new() { Sha256 = new(0, 5, 0, 6), Size = 7 }, new() { Sha256 = new(0, 1, 0, 2), Size = 7 }], Rows(register).Select(r => r.Row));
        Assert.Equal([Written.Keys[0], null, null], Enumerable.Range(0, 3).Select(i => register.Keys[i]));
        Assert.Equal((List, new ContentHash(0, 10, 0, 11)), (register.List, register.MarkOf(0)));
        Assert.Equal(manifest.Entries, Rows(register).Select(r => new ManifestEntry(r.Path, r.Row.Size, r.Row.Sha256)));
    }

    private static IEnumerable<(string Path, RegisterRow Row)> Rows(SiteRegister register) =>
        Enumerable.Range(0, register.Count).Select(i => (register.Paths.TextOf(i), register[i]));
}
