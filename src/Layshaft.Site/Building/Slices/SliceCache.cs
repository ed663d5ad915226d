using System.Text;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Slices;

/// <summary>
/// What is known of the book and its slices from the publish before. Losing it costs time and nothing else. For many threads at once, but for
/// noting and saving.
/// </summary>
public sealed class SliceCache
{
    private readonly Dictionary<ContentHash, SliceRecord> _known = [];
    private readonly Dictionary<ContentHash, JobLinks> _links = [];
    private CachedBook? _next;

    private SliceCache(CachedBook? book)
    {
        Book = book;
        foreach (var slice in book?.Slices ?? [])
        {
            if (slice.Mark is { } mark)
            {
                _known[mark] = slice;
            }

            foreach (var job in slice.Rest.Jobs)
            {
                _links[job.Content] = job.Links;
            }
        }
    }

    /// <summary>What is known where nothing was kept.</summary>
    internal static SliceCache Empty() => new(null);

    /// <summary>Reads what was kept; what another build of the program kept is passed over.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="IOException">It is something else.</exception>
    internal static SliceCache Read(BinaryReader reader)
    {
        var isOurs = reader.ReadString() == ProgramFingerprint.Value;
        var bytes = reader.ReadBytes(reader.ReadInt32());
        using var own = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
        return new(isOurs && bytes.Length > 0 ? CachedBook.Read(bytes, own) : null);
    }

    /// <summary>The book as it was kept; null where it was not.</summary>
    internal CachedBook? Book { get; }

    /// <summary>What ties a job to the book, if a file with this content is known; null otherwise.</summary>
    internal JobLinks? LinksOf(ContentHash content) => _links.GetValueOrDefault(content);

    /// <summary>What is known of a slice; null when it has to be read.</summary>
    internal SliceRecord? Recall(ContentHash mark) => _known.GetValueOrDefault(mark);

    /// <summary>Notes the book for the next publish.</summary>
    internal void Note(CachedBook book) => _next = book;

    /// <summary>Writes the book as it was noted, for the next publish.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        using var bytes = new MemoryStream();
        using (var own = new BinaryWriter(bytes, Encoding.UTF8, leaveOpen: true))
        {
            (_next ?? Book)?.Write(own);
        }

        writer.Write(ProgramFingerprint.Value);
        writer.Write((int)bytes.Length);
        writer.Write(bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
    }
}
