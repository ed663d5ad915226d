using System.Collections;

namespace Layshaft.Site.Publishing.Register;

/// <summary>Some paths of a table as texts, each made when it is asked for.</summary>
/// <param name="table">The table.</param>
/// <param name="indices">Which.</param>
internal sealed class PathTexts(PathTable table, int[] indices) : IReadOnlyList<string>
{
    public int Count => indices.Length;

    public string this[int index] => table.TextOf(indices[index]);

    public IEnumerator<string> GetEnumerator() => indices.Select(table.TextOf).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
