using Layshaft.Book.Problems;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Building.Slices;

/// <summary>What a publish keeps of the book as a whole, so that the next need read nothing but the jobs that changed.</summary>
/// <param name="Standing">Stands for all files but those of jobs, see <see cref="BookFingerprint"/>.</param>
/// <param name="Site">Stands for templates, texts and keys.</param>
/// <param name="Checked">What was wrong or worth knowing in the book without its jobs.</param>
/// <param name="Geared">The same in the figures of its cars and gearboxes.</param>
/// <param name="Readers">Whom the links of the site open for.</param>
/// <param name="Reference">Stands for the public pages, see <see cref="BookSlices.Public"/>.</param>
/// <param name="ReferenceFiles">How many files those have.</param>
/// <param name="Slices">Its slices, in order.</param>
internal sealed record CachedBook(
    string Standing,
    string Site,
    IReadOnlyList<Problem> Checked,
    IReadOnlyList<Problem> Geared,
    IReadOnlyList<LinkReader> Readers,
    ContentHash Reference,
    int ReferenceFiles,
    IReadOnlyList<SliceRecord> Slices)
{
    /// <summary>Reads it back.</summary>
    /// <param name="bytes">All bytes.</param>
    /// <param name="reader">Stands where it begins.</param>
    /// <exception cref="IOException">It is something else.</exception>
    public static CachedBook Read(byte[] bytes, BinaryReader reader)
    {
        var (standing, site, found, geared) = (reader.ReadString(), reader.ReadString(), ProblemBytes.Read(reader), ProblemBytes.Read(reader));
        var readers = new LinkReader[reader.ReadInt32()];
        for (var i = 0; i < readers.Length; i++)
        {
            readers[i] = LinkReader.Read(reader);
        }

        var (reference, referenceFiles) = (ContentHash.Read(reader.BaseStream), reader.ReadInt32());
        var slices = new SliceRecord[reader.ReadInt32()];
        for (var i = 0; i < slices.Length; i++)
        {
            slices[i] = SliceRecord.Read(bytes, reader);
        }

        return new CachedBook(standing, site, found, geared, readers, reference, referenceFiles, slices);
    }

    /// <summary>Writes it.</summary>
    /// <param name="writer">Where to.</param>
    public void Write(BinaryWriter writer)
    {
        writer.Write(Standing);
        writer.Write(Site);
        ProblemBytes.Write(writer, Checked);
        ProblemBytes.Write(writer, Geared);
        writer.Write(Readers.Count);
        foreach (var reader in Readers)
        {
            reader.Write(writer);
        }

        Reference.WriteTo(writer);
        writer.Write(ReferenceFiles);
        writer.Write(Slices.Count);
        foreach (var slice in Slices)
        {
            slice.Write(writer);
        }
    }
}
