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
    private const string Mark = "layshaft stamp 2";

    /// <summary>Reads a stamp; null when there is none that can be used.</summary>
    public static SiteStamp? Read(string path)
    {
        try
        {
            using var reader = new BinaryReader(new MemoryStream(RegularFile.ReadAll(path)), Encoding.UTF8);
            if (reader.ReadString() != Mark)
            {
                return null;
            }

            var (inputs, site) = (Number(reader), Number(reader));
            var fresh = new (string, string)[Count(reader)];
            for (var i = 0; i < fresh.Length; i++)
            {
                fresh[i] = (reader.ReadString(), reader.ReadString());
            }

            var words = new string[Count(reader)];
            for (var i = 0; i < words.Length; i++)
            {
                words[i] = reader.ReadString();
            }

            return new SiteStamp(inputs, site, fresh, words);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The stamp as bytes.</summary>
    public byte[] ToBytes()
    {
        var stream = new MemoryStream();
        using (var writer = new BinaryWriter(stream, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write(Mark);
            foreach (var number in new[] { Inputs, Site })
            {
                writer.Write(number.High);
                writer.Write(number.Low);
            }

            writer.Write(Fresh.Count);
            foreach (var (path, hash) in Fresh)
            {
                writer.Write(path);
                writer.Write(hash);
            }

            writer.Write(Words.Count);
            foreach (var word in Words)
            {
                writer.Write(word);
            }
        }

        return stream.ToArray();
    }

    private static QuickHash Number(BinaryReader reader) => new(reader.ReadUInt64(), reader.ReadUInt64());

    private static int Count(BinaryReader reader) =>
        reader.ReadInt32() is >= 0 and < 1_000_000 and var count ? count : throw new FormatException();
}
