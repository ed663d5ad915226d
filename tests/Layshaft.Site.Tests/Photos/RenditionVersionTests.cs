using System.Security.Cryptography;
using Layshaft.Site.Photos;
using static Layshaft.Site.Tests.Photos.RenditionPixels;

namespace Layshaft.Site.Tests.Photos;

/// <summary>Photos that are in a site already are made again only if the version says so: bytes and version change together.</summary>
public sealed class RenditionVersionTests
{
    [Fact]
    public void Other_bytes_need_another_version()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var size in Make(SyntheticPhoto.Jpeg(2000, 1500, 5), "a.jpg").Sizes)
        {
            hash.AppendData(size.Jpeg.Span);
        }

        var bytes = Convert.ToHexStringLower(hash.GetHashAndReset());
        Assert.True((PhotoRenditions.Version, bytes) == (1, "aa53c28cd9a40febfb455bde4b46edd0bb4fa44f15c575b225963322f5794636"), $"The bytes are {bytes} now: raise the version, and write both here.");
    }
}
