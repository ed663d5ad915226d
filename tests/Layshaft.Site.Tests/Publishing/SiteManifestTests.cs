using System.Text;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The list of our files decides what may be removed: only a sound and whole one counts.</summary>
public class SiteManifestTests
{
    private const string Hash = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static readonly string s_list = $"{{\n\"format\": 1,\n\"files\": [\n{{\"path\": \"a/b.html\", \"size\": 3, \"sha256\": \"{Hash}\"}},\n{{\"path\": \"a/c.html\", \"size\": 0, \"sha256\": \"{Hash}\"}}\n]\n}}\n";

    [Fact]
    public void A_list_comes_back_as_it_was_written()
    {
        var manifest = Parse(s_list)!;
        Assert.Equal(["a/b.html", "a/c.html"], manifest.Files.Select(e => e.Path));
        Assert.Equal((3, Hash), (manifest.Files.Find("a/b.html")!.Size, manifest.Files.Find("a/b.html")!.Sha256.ToString()));
        Assert.Null(manifest.Files.Find("a"));
        Assert.Equal(s_list, Encoding.UTF8.GetString(Bytes(manifest)));
        Assert.Equal(ContentHash.Of(System.Security.Cryptography.SHA256.HashData(Bytes(manifest))), SiteManifest.Write(Stream.Null, manifest.Files, manifest.Links));
        Assert.Empty(SiteManifest.Parse(Bytes(Manifest()))!.Files);
    }

    private static SiteManifest Manifest(params Trace[] files) => new(new(files), LinkHistory.None);

    private static byte[] Bytes(SiteManifest manifest)
    {
        using var stream = new MemoryStream();
        SiteManifest.Write(stream, manifest.Files, manifest.Links);
        return stream.ToArray();
    }

    [Fact]
    public void A_long_list_comes_back_as_it_was_written()
    {
        var manifest = Manifest([.. Enumerable.Range(0, 2000).Select(i => new Trace($"pages/{i:d4}.html", i == 7 ? long.MaxValue : i, ContentHash.Parse(Hash)!.Value))]);
        Assert.Equal(manifest.Files, SiteManifest.Parse(Bytes(manifest))!.Files);
    }

    // Longer than what is read at once, with texts that JSON has to escape.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3000)]
    public void Links_come_back_as_they_were_written_with_the_files_and_without_them(int count)
    {
        LinkReader[] readers = [.. Enumerable.Range(0, count).Select(i => new LinkReader($"customers/key-{i:d4}", string.Empty, $"unit-{i:d4}", "someone", $"Näme \"{i}\"\n\\ <b>", null, default))];
        var links = LinkHistory.None.Next([.. readers, new("customers/gone", string.Empty, "unit", "other", "Other", null, default)], _ => false).History.Next(readers, _ => false).History;
        var bytes = Bytes(new SiteManifest(new([new Trace("a.html", 1, ContentHash.Parse(Hash)!.Value)]), links));
        Assert.Equal(count + 1, links.Links.Count);
        Assert.Equal(links.Links, SiteManifest.Parse(bytes)!.Links.Links);
        Assert.Single(SiteManifest.Parse(bytes)!.Files);
    }

    [Theory]
    [InlineData("\"name\": \"A\", ", "")]
    [InlineData("\"open\": true", "\"open\": 1")]
    [InlineData("\"links\": [", "\"links\": {")]
    [InlineData("customers/b", "customers/a")]
    public void A_list_with_a_damaged_link_counts_as_none(string from, string to)
    {
        LinkReader[] readers = [new("customers/a", string.Empty, "u", "a", "A", null, default), new("customers/b", string.Empty, "u", "b", "B", null, default)];
        var text = Encoding.UTF8.GetString(Bytes(new SiteManifest(new([]), LinkHistory.None.Next(readers, _ => false).History)));
        Assert.NotNull(Parse(text));
        Assert.Null(Parse(text.Replace(from, to, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_list_that_was_cut_short_counts_as_none()
    {
        // What is left out at the end is a line end, or more.
        for (var length = 0; length < s_list.Length - 1; length++)
        {
            Assert.Null(Parse(s_list[..length]));
        }
    }

    [Theory]
    [InlineData("\"format\": 1", "\"format\": 2")]
    [InlineData("\"format\": 1", "\"format\": \"1\"")]
    [InlineData("\"format\": 1,", "")]
    [InlineData("\"files\": [", "\"other\": [")]
    [InlineData("a/b.html", "../b.html")]
    [InlineData("a/b.html", "/etc/b.html")]
    [InlineData("a/b.html", "a/c.html")]
    [InlineData("\"size\": 3", "\"size\": -3")]
    [InlineData("\"size\": 3", "\"size\": 3.5")]
    [InlineData("\"size\": 3, ", "")]
    [InlineData("\"path\": \"a/b.html\", ", "")]
    [InlineData("ba7816bf", "ba7816b")]
    [InlineData("ba7816bf", "ba7816bg")]
    [InlineData("]\n}\n", "]\n}\n{}")]
    [InlineData("{\n\"format\"", "[\n\"format\"")]
    public void A_list_that_is_not_sound_counts_as_none(string from, string to) => Assert.Null(Parse(s_list.Replace(from, to, StringComparison.Ordinal)));

    private static SiteManifest? Parse(string text) => SiteManifest.Parse(Encoding.UTF8.GetBytes(text));
}
