using Layshaft.Book.Yaml;

namespace Layshaft.Book.Places;

/// <summary>
/// Which fields a record has, how far below its first line each value stands, and in which column. Most records of a book are
/// laid out like one before, so equal ones are one object; the table of those met before is of fixed size, and layouts that
/// meet in one slot take turns in it.
/// </summary>
internal sealed class FieldPlaces
{
    private const int Slots = 8192;

    private static readonly FieldPlaces?[] Met = new FieldPlaces?[Slots];

    private readonly string[] keys;
    private readonly (int Below, int Column)[] places;

    private FieldPlaces(MapNode map)
    {
        keys = [.. map.Entries.Select(e => e.Key)];
        places = [.. map.Entries.Select(e => (e.Value.Line - map.Line, e.Value.Column))];
    }

    /// <summary>The places of a group's fields.</summary>
    public static FieldPlaces Of(MapNode map)
    {
        ref var slot = ref Met[Hash(map) & (Slots - 1)];
        var held = slot;
        return held is not null && held.IsOf(map) ? held : slot = new FieldPlaces(map);
    }

    /// <summary>Lines below the record's first, and the column; null for a field that is not written.</summary>
    public (int Below, int Column)? Of(string key)
    {
        var at = Array.IndexOf(keys, key);
        return at >= 0 ? places[at] : null;
    }

    private static int Hash(MapNode map)
    {
        var hash = default(HashCode);
        foreach (var entry in map.Entries)
        {
            hash.Add(entry.Key, StringComparer.Ordinal);
            hash.Add(entry.Value.Line - map.Line);
            hash.Add(entry.Value.Column);
        }

        return hash.ToHashCode();
    }

    private bool IsOf(MapNode map)
    {
        if (keys.Length != map.Entries.Count)
        {
            return false;
        }

        for (var i = 0; i < keys.Length; i++)
        {
            var entry = map.Entries[i];
            if (places[i] != (entry.Value.Line - map.Line, entry.Value.Column) || keys[i] != entry.Key)
            {
                return false;
            }
        }

        return true;
    }
}
