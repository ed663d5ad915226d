using System.Text;

namespace Layshaft.Site.Publishing.Register;

/// <summary>A few places, and which of very many paths want the same ones on a system that does not tell case apart.</summary>
internal sealed class TakenPaths
{
    private readonly Dictionary<string, List<string>> _places = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, List<string>>.AlternateLookup<ReadOnlySpan<char>> _bySpan;

    /// <summary>Some places.</summary>
    /// <param name="places">Paths of files or folders.</param>
    internal TakenPaths(IEnumerable<string> places)
    {
        foreach (var place in places)
        {
            if (!_places.TryGetValue(place, out var alike))
            {
                _places[place] = alike = [];
            }

            alike.Add(place);
        }

        _bySpan = _places.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>The places that a path or one of the folders above it wants, with what wants them and whether that is a folder.</summary>
    /// <param name="paths">The paths.</param>
    internal IEnumerable<(string Place, string Planned, bool IsFolder)> Met(PathTable paths)
    {
        for (var i = 0; _places.Count > 0 && i < paths.Count; i++)
        {
            foreach (var length in paths.NewFolders(i).Append(paths[i].Length))
            {
                foreach (var place in At(paths[i][..length]))
                {
                    yield return (place, paths.TextOf(i)[..length], length < paths[i].Length);
                }
            }
        }
    }

    private List<string> At(ReadOnlySpan<byte> path)
    {
        Span<char> text = stackalloc char[OutputPath.Longest];
        return path.Length <= text.Length && Encoding.UTF8.TryGetChars(path, text, out var length) && _bySpan.TryGetValue(text[..length], out var places) ? places : [];
    }
}
