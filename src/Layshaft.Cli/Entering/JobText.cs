using Layshaft.Book.Problems;
using Layshaft.Book.Yaml;

namespace Layshaft.Cli.Entering;

/// <summary>The text of a job file, in which one value after the other is written; all else in it stays as it is, to the byte.</summary>
/// <param name="Path">The file, from the book's folder.</param>
/// <param name="Text">Its text.</param>
internal sealed record JobText(string Path, string Text)
{
    /// <summary>The readings of a value, as they are written; null if there is none.</summary>
    /// <param name="keys">The field, then the names below it: inspection, the part, its measure.</param>
    public IReadOnlyList<string>? ReadingsOf(params string[] keys) => Find(keys) switch
    {
        { Value: ListNode list } when list.Items.All(i => i is ScalarNode) => [.. list.Items.Select(i => ((ScalarNode)i).Text)],
        { Value: ScalarNode { IsNothing: false } one } => [one.Text],
        { Value: ScalarNode or ListNode } => [],
        _ => null,
    };

    /// <summary>Whether something is written that is not an empty place for this value: readings in another form, or a measurement under 'findings'.</summary>
    /// <param name="keys">The field, then the names below it.</param>
    public bool Has(params string[] keys)
    {
        if (Root() is not { } root)
        {
            return true;
        }

        if (Find(keys) is { } entry)
        {
            return !IsEmpty(entry.Value) && ReadingsOf(keys) is null;
        }

        var (list, name, inner) = keys[0] == "built" ? ("settings", "setting", "built") : ("findings", "part", "measurements");
        return root.Entries.FirstOrDefault(e => e.Key == list)?.Value is ListNode items
            && items.Items.OfType<MapNode>().Any(i => TextOf(i, name) == keys[1] && i.Entries.FirstOrDefault(e => e.Key == inner)?.Value is { } value
                && (inner == "built" ? !IsEmpty(value) : value is ListNode measurements && measurements.Items.OfType<MapNode>().Any(m => keys.Length < 3 || TextOf(m, "measure") == keys[2])));
    }

    private static string? TextOf(MapNode map, string key) => (map.Entries.FirstOrDefault(e => e.Key == key)?.Value as ScalarNode)?.Text;

    /// <summary>The same text with a value written; null if that cannot be done without touching something else.</summary>
    /// <param name="value">The value, such as [0.52, 0.53].</param>
    /// <param name="before">Names below the field that come before it, nearest first, for its place.</param>
    /// <param name="keys">The field, then the names below it.</param>
    public JobText? With(string value, IReadOnlyList<string> before, params string[] keys)
    {
        if (Root() is not { } root)
        {
            return null;
        }

        var made = Find(keys) is { } entry ? Replaced(entry, value) : Added(root, value, before, keys);
        return made is not null && Read(made) is { } after && Differences(root, after).All(d => d == string.Join('/', keys) || d.StartsWith(string.Join('/', keys) + "/", StringComparison.Ordinal))
            ? this with { Text = made }
            : null;
    }

    private string? Replaced(MapEntry entry, string value) => ValueSpan.Of(Text, entry) is { } span
        ? string.Concat(Text.AsSpan(0, span.Start), Text[span.Start - 1] == ':' ? " " : "", value, Text.AsSpan(span.End))
        : null;

    private string? Added(MapNode root, string value, IReadOnlyList<string> before, string[] keys)
    {
        var field = root.Entries.FirstOrDefault(e => e.Key == keys[0]);
        if (field is null)
        {
            // A new field at the end of the file.
            return $"{Text}{(Text.EndsWith('\n') || Text.Length == 0 ? "" : LineEnd)}{LineEnd}{keys[0]}:{LineEnd}  {Below(keys, value)}{LineEnd}";
        }

        if (field.Value is MapNode map && keys.Length == 3 && map.Entries.FirstOrDefault(e => e.Key == keys[1]) is { } part)
        {
            return part.Value is MapNode measures ? Into(measures, $"{keys[2]}: {value}", []) : IsEmpty(part.Value) ? Replaced(part, $"{{{keys[2]}: {value}}}") : null;
        }

        return field.Value switch
        {
            MapNode lines => Into(lines, Below(keys, value), before),
            ScalarNode { IsNothing: true } => InsertLine(field.KeyLine, $"  {Below(keys, value)}"),
            _ => null,
        };
    }

    private static bool IsEmpty(Node node) => node is ScalarNode { IsNothing: true } or ListNode { Items.Count: 0 };

    private static string Below(string[] keys, string value) => keys.Length == 2 ? $"{keys[1]}: {value}" : $"{keys[1]}: {{{keys[2]}: {value}}}";

    // Among lines, or inside of braces.
    private string? Into(MapNode map, string line, IReadOnlyList<string> before)
    {
        if (ValueSpan.IndexOf(Text, map.Line, map.Column) is var start && Text[start] == '{')
        {
            return map.Entries.Count > 0 && ValueSpan.Of(Text, map.Entries[^1]) is { } last ? Text.Insert(last.End, $", {line}") : Text.Insert(start + 1, line);
        }

        var follows = before.Select(b => map.Entries.FirstOrDefault(e => e.Key == b)).FirstOrDefault(e => e is not null);
        var at = follows is null ? map.Entries[0].KeyLine - 1 : LastLine(follows.Value);
        return InsertLine(Math.Max(at, follows?.KeyLine ?? at), new string(' ', map.Entries[0].KeyColumn - 1) + line);
    }

    private static int LastLine(Node node) => node switch
    {
        MapNode map => map.Entries.Max(e => Math.Max(e.KeyLine, LastLine(e.Value))),
        ListNode list => list.Items.Select(LastLine).Append(list.Line).Max(),
        _ => node.Line,
    };

    private string InsertLine(int below, string line)
    {
        var at = 0;
        for (var i = 0; i < below; i++)
        {
            at = Text.IndexOf('\n', at) + 1;
            if (at == 0)
            {
                return $"{Text}{LineEnd}{line}{LineEnd}";
            }
        }

        return Text.Insert(at, line + LineEnd);
    }

    private string LineEnd => Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    private MapEntry? Find(string[] keys)
    {
        MapEntry? found = null;
        Node? node = Root();
        foreach (var key in keys)
        {
            found = (node as MapNode)?.Entries.FirstOrDefault(e => e.Key == key);
            node = found?.Value;
        }

        return found;
    }

    private MapNode? Root() => Read(Text);

    private MapNode? Read(string text)
    {
        var problems = new ProblemList();
        var node = NodeReader.Read(Path, text, problems);
        return problems.HasStops ? null : node as MapNode;
    }

    // The names of all values that are not the same in both.
    private static IEnumerable<string> Differences(Node one, Node other)
    {
        var (before, after) = (Values(one, "").ToHashSet(), Values(other, "").ToHashSet());
        before.SymmetricExceptWith(after);
        return before.Select(v => v.Name);
    }

    private static IEnumerable<(string Name, string Text)> Values(Node node, string name) => node switch
    {
        MapNode { Entries.Count: > 0 } map => map.Entries.SelectMany(e => Values(e.Value, name.Length == 0 ? e.Key : $"{name}/{e.Key}")),
        ListNode { Items.Count: > 0 } list => list.Items.SelectMany((item, i) => Values(item, $"{name}/{i}")),
        ScalarNode { IsNothing: false } one => [(name, one.Text)],
        _ => [],
    };
}
