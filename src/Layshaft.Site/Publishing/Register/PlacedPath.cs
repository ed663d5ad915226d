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

    /// <summary>Its place in a table; negative when it is not there.</summary>
    /// <param name="table">The table.</param>
    internal int PlaceIn(PathTable table) => _table is null ? table.IndexOf(_text) : _table.PlaceIn(table, _index);
}
