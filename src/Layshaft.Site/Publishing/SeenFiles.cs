using System.Buffers;
using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>
/// The files that a look at a folder saw, so that nobody need look once more. As bytes one behind the other: mostly nothing has changed and
/// nobody asks for them.
/// </summary>
internal sealed class SeenFiles
{
    private readonly ArrayBufferWriter<byte> _text = new();
    private readonly List<(int End, long Length, long Modified)> _files = [];
    private readonly List<SeenFiles> _more = [];

    /// <summary>Whether there was anything that is not a plain file or folder.</summary>
    internal bool HasLinks { get; private set; }

    /// <summary>How many folders the deepest folder lies in.</summary>
    internal int Depth { get; private set; }

    /// <summary>Notes a file.</summary>
    /// <param name="path">Its path, with forward slashes.</param>
    /// <param name="length">In bytes.</param>
    /// <param name="modified">Ticks (UTC) of the last change.</param>
    internal void Add(ReadOnlySpan<char> path, long length, long modified)
    {
        _text.Advance(Encoding.UTF8.GetBytes(path, _text.GetSpan(Encoding.UTF8.GetMaxByteCount(path.Length))));
        _files.Add((_text.WrittenCount, length, modified));
    }

    /// <summary>Notes a folder.</summary>
    /// <param name="path">Its path, with forward slashes.</param>
    internal void AddFolder(ReadOnlySpan<char> path) => Depth = Math.Max(Depth, path.Count('/'));

    /// <summary>Notes a link.</summary>
    internal void AddLink() => HasLinks = true;

    /// <summary>Adds what another saw; one at a time.</summary>
    /// <param name="other">The other, which sees no more.</param>
    internal void Add(SeenFiles other)
    {
        _more.Add(other);
        (HasLinks, Depth) = (HasLinks || other.HasLinks, Math.Max(Depth, other.Depth));
    }

    /// <summary>The files, in no order.</summary>
    internal IEnumerable<BookFile> All() => Own().Concat(_more.SelectMany(m => m.All()));

    private IEnumerable<BookFile> Own()
    {
        var start = 0;
        foreach (var (end, length, modified) in _files)
        {
            yield return new(Encoding.UTF8.GetString(_text.WrittenSpan[start..end]), length, modified);
            start = end;
        }
    }
}
