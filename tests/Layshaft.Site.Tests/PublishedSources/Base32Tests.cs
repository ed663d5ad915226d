using System.Text;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.PublishedSources;

/// <summary>Base 32 against the test vectors of RFC 4648, clause 10 (from memory), in lower case without padding.</summary>
public sealed class Base32Tests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("f", "MY")]
    [InlineData("fo", "MZXQ")]
    [InlineData("foo", "MZXW6")]
    [InlineData("foob", "MZXW6YQ")]
    [InlineData("fooba", "MZXW6YTB")]
    [InlineData("foobar", "MZXW6YTBOI")]
    public void The_vectors_of_the_standard(string text, string encoded) =>
        Assert.Equal(encoded, Base32.Encode(Encoding.ASCII.GetBytes(text)).ToUpperInvariant());
}
