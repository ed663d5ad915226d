using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>What a publish knows from the one before of the site, of the book's files and of its slices. Losing it costs time and nothing else.</summary>
/// <param name="output">The site's folder.</param>
public sealed class SiteCache(string output) : TraceStore(output)
{
    private FileCache? _files;
    private SliceCache? _slices;

    /// <summary>What is known of the book's texts and images.</summary>
    public FileCache Files => Read()._files!;

    /// <summary>What is known of the slices of the book.</summary>
    public SliceCache Slices => Read()._slices!;

    private SiteCache Read()
    {
        _ = Traces;
        return this;
    }

    private protected override void ReadMore(BinaryReader? reader)
    {
        _files = reader is null ? new() : FileCache.Read(reader);
        _slices = new(reader is null ? null : SliceCacheFormat.Read(reader));
    }

    private protected override void WriteMore(BinaryWriter writer)
    {
        Files.Write(writer);
        SliceCacheFormat.Write(writer, Slices.Next);
    }
}
