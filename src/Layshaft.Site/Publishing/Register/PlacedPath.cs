using System.Text;

namespace Layshaft.Site.Publishing.Register;

/// <summary>A path, as a text or by its place in a table: nearly all paths of a large site are in the table of the site that stands, and never needed as texts.</summary>
internal readonly struct PlacedPath
{
    private readonly string? _text;
    private readonly PathTable? _table;
    private readonly int _index;

    /// <summary>A path.</summary>
    /// <param name="text">The path.</param>
    internal PlacedPath(string text) => _text = text;

    /// <summary>A path of a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="index">Its place in it.</param>
    internal PlacedPath(PathTable table, int index) => (_table, _index) = (table, index);

    /// <summary>The path as a text.</summary>
    internal string Text => _text ?? _table!.TextOf(_index);

    /// <summary>How many bytes it has in UTF-8.</summary>
    internal int Bytes => _text is null ? _table![_index].Length : Encoding.UTF8.GetByteCount(_text);

    /// <summary>Its place in a table; negative when it is not there.</summary>
    /// <param name="table">The table.</param>
    internal int PlaceIn(PathTable table) => _table is null ? table.IndexOf(_text) : _table.PlaceIn(table, _index);

    /// <summary>Writes its bytes.</summary>
    /// <param name="bytes">Where to; as many as it has, or more.</param>
    /// <returns>How many it has.</returns>
    internal int CopyTo(Span<byte> bytes)
    {
        if (_text is not null)
        {
            return Encoding.UTF8.GetBytes(_text, bytes);
        }

        var path = _table![_index];
        path.CopyTo(bytes);
        return path.Length;
    }
}
