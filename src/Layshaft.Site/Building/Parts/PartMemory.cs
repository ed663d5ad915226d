using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>
/// What is known of the book and its parts from the publish before. Losing it costs time and nothing else. For many threads at once, but for
/// noting and saving.
/// </summary>
public sealed class PartMemory
{
    private readonly string _path;
    private readonly Dictionary<ContentHash, PartRecord> _known = [];
    private readonly Dictionary<ContentHash, JobLinks> _links = [];
    private KeptBook? _next;

    private PartMemory(string path) => _path = path;

    /// <summary>The memory that is kept beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static PartMemory Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var memory = new PartMemory(new StateFolder(OutputFolder.RealPath(output)).Parts);
        try
        {
            memory.Read(RegularFile.ReadAll(memory._path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException)
        {
            memory.Book = null;
            memory._known.Clear();
            memory._links.Clear();
        }

        return memory;
    }

    /// <summary>The book as it was kept; null where it was not.</summary>
    internal KeptBook? Book { get; private set; }

    /// <summary>What ties a job to the book, if a file with this content is known; null otherwise.</summary>
    internal JobLinks? LinksOf(ContentHash content) => _links.GetValueOrDefault(content);

    /// <summary>What is known of a part; null when it has to be read.</summary>
    internal PartRecord? Recall(ContentHash mark) => _known.GetValueOrDefault(mark);

    /// <summary>Notes the book for the next publish.</summary>
    internal void Note(KeptBook book) => _next = book;

    /// <summary>Keeps what was noted for the next publish.</summary>
    /// <param name="files">What is known of the book's files now, see <see cref="FileMemory.Whole"/>.</param>
    public void Save(ContentHash? files)
    {
        try
        {
            if (_next is { } next && next with { Files = files } is var book && !book.IsAs(Book))
            {
                HashedFile.Write(new DiskWork(), _path, stream => Write(book, stream));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next publish reads all parts again.
        }
    }

    private void Read(byte[] bytes)
    {
        if (!HashedFile.IsWhole(bytes))
        {
            return;
        }

        using var reader = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
        reader.BaseStream.Position = ContentHash.Bytes;
        if (reader.ReadString() != ProgramMark.Value)
        {
            return;
        }

        Book = KeptBook.Read(bytes, reader);
        foreach (var part in Book.Parts)
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

    private static void Write(KeptBook book, Stream stream)
    {
        using var writer = new BinaryWriter(stream, Encoding.UTF8, leaveOpen: true);
        writer.Write(ProgramMark.Value);
        book.Write(writer);
    }
}
