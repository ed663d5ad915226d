using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using Layshaft.Book.Problems;
using Layshaft.Book.Yaml;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>Something unique that was planted in a book.</summary>
/// <param name="Text">What stands in the book.</param>
/// <param name="File">The file's template name.</param>
/// <param name="Path">The field, such as <c>jobs.findings[].sentence</c>.</param>
internal sealed record Planted(string Text, string File, string Path);

/// <summary>Puts unique words and amounts into the templates of <see cref="PlantedBook"/>.</summary>
internal sealed partial class Planting
{
    private readonly Dictionary<string, Planted> named = new(StringComparer.Ordinal);
    private readonly Dictionary<int, Planted> all = [];
    private readonly HashSet<string> fields = new(StringComparer.Ordinal);
    private readonly HashSet<string> planted = new(StringComparer.Ordinal);

    private Planting()
    {
    }

    /// <summary>The book's text files, by their names.</summary>
    public Dictionary<string, string> Files { get; } = new(StringComparer.Ordinal);

    /// <summary>Everything that was planted, by its number.</summary>
    public IReadOnlyDictionary<int, Planted> All => all;

    /// <summary>Every field that the book fills.</summary>
    public IReadOnlySet<string> Fields => fields;

    /// <summary>Every field that holds something planted.</summary>
    public IReadOnlySet<string> PlantedFields => planted;

    public static Planting Of(IReadOnlyDictionary<string, string> templates)
    {
        var planting = new Planting();
        foreach (var (name, text) in templates)
        {
            planting.Files[planting.NameOf(name)] = name.EndsWith(".yaml", StringComparison.Ordinal)
                ? planting.Yaml(NodeReader.Read(name, text, new ProblemList())!, name, Kind(name))
                : NamedMarks().Replace(text, m => planting.named.TryGetValue(m.Value, out var word) ? word.Text : m.Value);
        }

        foreach (var folder in templates.Keys.Where(n => n.StartsWith("jobs/", StringComparison.Ordinal)).Select(n => n[..n.LastIndexOf('/')]))
        {
            planting.Files[$"{folder}/{planting.Named($"{folder}/W:n.md", folder, "jobs.notes").Text}"] = $"# {planting.New(folder, "jobs.notes[text]").Text}\n";
            planting.Files[$"{folder}/{planting.Named($"{folder}/W:i.md", folder, "jobs.internal_notes").Text}"] = $"{planting.New(folder, "jobs.internal_notes[text]").Text}\n";
        }

        return planting;
    }

    /// <summary>The numbers of what was planted and stands in a text.</summary>
    public static IEnumerable<int> In(string text) =>
        Words().Matches(text).Select(m => m.Groups[1].Value).Concat(Amounts().Matches(Thousands().Replace(Paths().Replace(text, string.Empty), "$1$2")).Select(m => m.Groups[1].Value))
            .Select(n => int.Parse(n, CultureInfo.InvariantCulture));

    /// <summary>A word of its own in a name such as <c>units/W:a.yaml</c>.</summary>
    public string NameOf(string name)
    {
        var slash = name.LastIndexOf('/') + 1;
        var (folder, file) = (name[..slash], name[slash..]);
        return !file.StartsWith("W:", StringComparison.Ordinal) ? name
            : file.EndsWith(".yaml", StringComparison.Ordinal) ? $"{folder}{Named(file[..^5], name, $"{Kind(name)}.*").Text}.yaml"
            : $"{folder}{Named(name, name, $"{Kind(name)}.file").Text}";
    }

    /// <summary>Plants a word that has no name.</summary>
    public Planted New(string file, string path, bool plain = false)
    {
        // Every second word has signs that a page must escape.
        var number = all.Count + 1;
        var word = string.Create(CultureInfo.InvariantCulture, $"plantedw{number:0000}{(plain || number % 2 == 0 ? "zq" : "<ö&zq")}");
        return all[number] = new Planted(word, file, path);
    }

    private Planted Named(string mark, string file, string path)
    {
        if (!named.TryGetValue(mark, out var word))
        {
            word = New(file, path, plain: true);
            var ending = Path.GetExtension(mark);
            named[mark] = word = all[all.Count] = word with { Text = word.Text + ending };
        }
        else if (path.EndsWith(".id", StringComparison.Ordinal) || path.EndsWith(".file", StringComparison.Ordinal) || path.EndsWith(".*", StringComparison.Ordinal))
        {
            // The file or field that gives the name tells whose it is, not those that refer to it.
            var number = all.First(p => p.Value == word).Key;
            named[mark] = word = all[number] = word with { File = file, Path = path };
        }

        return word;
    }

    private string Yaml(Node node, string file, string path)
    {
        switch (node)
        {
            case MapNode map when path is "jobs.inspection" or "jobs.built":
                return $"{{ {string.Join(", ", map.Entries.Select(e => $"{JsonSerializer.Serialize(Value(e.Key, file, path), Relaxed)}: {Yaml(e.Value, file, path)}"))} }}";
            case MapNode map:
                var entries = map.Entries.Where(e => e.Value is not ScalarNode { IsNothing: true });
                return $"{{ {string.Join(", ", entries.Select(e => $"{e.Key}: {Yaml(e.Value, file, $"{path}.{e.Key}")}"))} }}";
            case ListNode list:
                return $"[ {string.Join(", ", list.Items.Select(i => Yaml(i, file, $"{path}[{Flag(i)}]")))} ]";
            default:
                var mark = ((ScalarNode)node).Text;
                var value = Value(mark, file, path);
                fields.Add(Whole(path));
                if (value != mark)
                {
                    planted.Add(Whole(path));
                }

                return JsonSerializer.Serialize(value, Relaxed);
        }
    }

    private string Value(string mark, string file, string path) => mark switch
    {
        "W" => New(file, path).Text,
        "M" => (all[all.Count + 1] = new Planted(string.Create(CultureInfo.InvariantCulture, $"{all.Count + 1 + 1000}.37"), file, path)).Text,
        _ when mark.StartsWith("W:", StringComparison.Ordinal) => Named(mark.Contains('.', StringComparison.Ordinal) ? $"{file[..(file.LastIndexOf('/') + 1)]}{mark}" : mark, file, path).Text,
        _ => mark,
    };

    /// <summary>A field without what its picture says of itself.</summary>
    public static string Whole(string path) => path.Replace("[private]", "[]", StringComparison.Ordinal).Replace("[internal]", "[]", StringComparison.Ordinal);

    // A picture that not everybody may see is a field of its own.
    private static string Flag(Node item) => item is MapNode map
        ? map.Entries.FirstOrDefault(e => e.Key is "private" or "internal" && e.Value is ScalarNode { Text: "yes" })?.Key ?? string.Empty
        : string.Empty;

    private static string Kind(string file) => file.IndexOf('/', StringComparison.Ordinal) is var slash and > 0 ? file[..slash] : "shop";

    private static readonly JsonSerializerOptions Relaxed = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    [GeneratedRegex("w([0-9]{4})(?:zq|<ö&zq)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Words();

    // The coordinates of a drawing's line can look like an amount.
    [GeneratedRegex(" d=\"[MLHVZCA0-9 .-]*\"")]
    private static partial Regex Paths();

    [GeneratedRegex("W:[a-z]+")]
    private static partial Regex NamedMarks();

    [GeneratedRegex("1([0-9]{3})[.]37")]
    private static partial Regex Amounts();

    [GeneratedRegex("([0-9])[,'\u00A0\u2009\u202F ]([0-9]{3})")]
    private static partial Regex Thousands();
}
