using System.Text;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>
/// What is known of the book and its parts from the publish before. Losing it costs time and nothing else. For many threads at once, but for
/// noting and saving.
/// </summary>
public sealed class PartMemory
{
    private readonly Dictionary<ContentHash, PartRecord> _known = [];
    private readonly Dictionary<ContentHash, JobLinks> _links = [];
    private KeptBook? _next;

    private PartMemory(KeptBook? book)
    {
        Book = book;
        foreach (var part in book?.Parts ?? [])
        {
            if (part.Mark is { } mark)
            {
                _known[mark] = part;
            }

            foreach (var job in part.Rest.Jobs)
            {
                _links[job.Content] = job.Links;
            }
        }
    }

    /// <summary>What is known where nothing was kept.</summary>
    internal static PartMemory Empty() => new(null);

    /// <summary>Reads what was kept; what another build of the program kept is passed over.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="IOException">It is something else.</exception>
    internal static PartMemory Read(BinaryReader reader)
    {
        var isOurs = reader.ReadString() == ProgramMark.Value;
        var bytes = reader.ReadBytes(reader.ReadInt32());
        using var own = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
        return new(isOurs && bytes.Length > 0 ? KeptBook.Read(bytes, own) : null);
    }

    /// <summary>The book as it was kept; null where it was not.</summary>
    internal KeptBook? Book { get; }

    /// <summary>What ties a job to the book, if a file with this content is known; null otherwise.</summary>
    internal JobLinks? LinksOf(ContentHash content) => _links.GetValueOrDefault(content);

    /// <summary>What is known of a part; null when it has to be read.</summary>
    internal PartRecord? Recall(ContentHash mark) => _known.GetValueOrDefault(mark);

    /// <summary>Notes the book for the next publish.</summary>
    internal void Note(KeptBook book) => _next = book;

    /// <summary>Writes the book as it was noted, for the next publish.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        using var bytes = new MemoryStream();
        using (var own = new BinaryWriter(bytes, Encoding.UTF8, leaveOpen: true))
        {
            (_next ?? Book)?.Write(own);
        }

        writer.Write(ProgramMark.Value);
        writer.Write((int)bytes.Length);
        writer.Write(bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
    }
}
