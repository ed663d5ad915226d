using System.Collections.Concurrent;
using System.Text;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>
/// What is known of the parts of the book from the publish before. Losing it costs time and nothing else. For many threads
/// at once.
/// </summary>
public sealed class PartMemory
{
    private readonly string _path;
    private readonly Dictionary<ContentHash, PartRecord> _known = [];
    private readonly Dictionary<string, JobLinks> _links = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<ContentHash, PartRecord> _seen = new();

    private PartMemory(string path) => _path = path;

    /// <summary>The memory that is kept beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static PartMemory Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var memory = new PartMemory(new StateFolder(OutputFolder.RealPath(output)).Parts);
        try
        {
            memory.Read(File.ReadAllBytes(memory._path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException)
        {
            memory._known.Clear();
            memory._links.Clear();
        }

        return memory;
    }

    /// <summary>What ties a job to the book, if a file with this content is known; null otherwise.</summary>
    internal JobLinks? LinksOf(ContentHash content) => _links.GetValueOrDefault(content.ToString());

    /// <summary>What is known of a part; null when it has to be read.</summary>
    internal PartRecord? Recall(ContentHash mark) => _known.GetValueOrDefault(mark);

    /// <summary>Notes a part for the next publish.</summary>
    internal void Note(PartRecord part)
    {
        if (part.Mark is { } mark)
        {
            _seen[mark] = part;
        }
    }

    /// <summary>Keeps what was noted for the next publish, and forgets what was not.</summary>
    public void Save()
    {
        try
        {
            if (_seen.Count != _known.Count || _seen.Any(s => _known.GetValueOrDefault(s.Key) != s.Value))
            {
                HashedFile.Write(new DiskWork(), _path, WriteTo);
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

        for (var left = reader.ReadInt32(); left > 0; left--)
        {
            var part = PartRecord.Read(bytes, reader);
            _known[part.Mark!.Value] = part;
            foreach (var job in part.Rest.Jobs)
            {
                _links[job.Content] = job.Links;
            }
        }
    }

    private void WriteTo(Stream stream)
    {
        using var writer = new BinaryWriter(stream, Encoding.UTF8, leaveOpen: true);
        writer.Write(ProgramMark.Value);
        writer.Write(_seen.Count);
        foreach (var part in _seen.OrderBy(s => s.Key.First).ThenBy(s => s.Key.Second).Select(s => s.Value))
        {
            part.Write(writer);
        }
    }
}
