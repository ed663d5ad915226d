using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>What a book and its site looked like after a publish, and what that publish had to say.</summary>
/// <param name="Inputs">The number of everything that the site is made from, see <see cref="TreeDigest"/>.</param>
/// <param name="Site">The number of the site itself.</param>
/// <param name="Fresh">Files whose times are too young to be trusted, with the hash of their content.</param>
/// <param name="Words">What the publish had to say.</param>
internal sealed record SiteStamp(QuickHash Inputs, QuickHash Site, IReadOnlyList<(string Path, string Sha256)> Fresh, IReadOnlyList<string> Words)
{
    private const string Format = "layshaft stamp 3";

    /// <summary>Reads a stamp; null when there is none that can be used.</summary>
    public static SiteStamp? Read(string path)
    {
        try
        {
            using var reader = new BinaryReader(new MemoryStream(RegularFile.ReadAll(path)), Encoding.UTF8);
            if (reader.ReadString() != Format)
            {
                return null;
            }

            var (inputs, site) = (new QuickHash(reader.ReadUInt64(), reader.ReadUInt64()), new QuickHash(reader.ReadUInt64(), reader.ReadUInt64()));
            var fresh = reader.ReadTexts().Zip(reader.ReadTexts());
            return new SiteStamp(inputs, site, [.. fresh], reader.ReadTexts());
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            return null;
        }
    }

    /// <summary>Writes the stamp.</summary>
    /// <param name="to">Where to.</param>
    public void Write(Stream to)
    {
        using var writer = new BinaryWriter(to, Encoding.UTF8, leaveOpen: true);
        writer.Write(Format);
        foreach (var number in new[] { Inputs.High, Inputs.Low, Site.High, Site.Low })
        {
            writer.Write(number);
        }

        writer.WriteTexts([.. Fresh.Select(f => f.Path)]);
        writer.WriteTexts([.. Fresh.Select(f => f.Sha256)]);
        writer.WriteTexts(Words);
    }
}
