using CsCheck;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests.Hostile;

/// <summary>A slip of one key in a good file is told in the words of the bench, never in the parser's.</summary>
public class ParserWordsTests
{
    private const string Typed = " :;,.-#'\"[]{}|>&*!%@`\t\n=?\\/0aZé\u00A0\u201C\uFF1A~$^()_+<";

    private static readonly string[] s_parserWords =
    [
        "block mapping", "scalar", "while parsing", "while scanning", "flow", "anchor", "token", "simple key", "mapping", "block sequence", "sequence entries", "indicator", "directive", "document start",
        "document end", "node content", "YamlDotNet", "Exception", "object",
    ];

    private static readonly (string Path, string Text)[] s_demo = [.. OwnBooks.Texts("demo-data").Select(f => (f.Key, f.Value))];

    [Fact]
    public void A_slip_of_one_key_in_the_demo_is_never_told_in_the_parsers_words() => Fuzz.Sample(
        "slips in the demo",
        Gen.Select(Gen.Int[0, s_demo.Length - 1], Gen.Int[0, 1_000_000], Gen.Int[0, 3], Gen.Int[0, Typed.Length - 1], (file, where, how, key) =>
            (s_demo[file].Path, Text: Slip(s_demo[file].Text, where % (s_demo[file].Text.Length - 1), how, Typed[key]))),
        slip =>
        {
            var problems = new ProblemList();
            if (NodeReader.Read(slip.Path, slip.Text, problems) is { } root)
            {
                Read(slip.Path.Split('/')[0], root, new Shapes.Reading(slip.Path, problems));
            }

            // What the file itself says may be quoted, a corner named after an anchor for one.
            string[] words = [.. s_parserWords.Where(w => !slip.Text.Contains(w, StringComparison.OrdinalIgnoreCase))];
            Assert.All(problems.InOrder(), p => Assert.DoesNotContain(words, w => $"{p.Message} {p.Remedy}".Contains(w, StringComparison.OrdinalIgnoreCase)));
        },
        600);

    private static string Slip(string text, int at, int how, char key) => how switch
    {
        0 => text.Remove(at, 1),
        1 => text.Insert(at, key.ToString()),
        2 => text.Remove(at, 1).Insert(at, key.ToString()),
        _ => $"{text[..at]}{text[at + 1]}{text[at]}{text[(at + 2)..]}",
    };

    private static bool Read(string folder, Node root, Shapes.Reading reading) => folder switch
    {
        "shop.yaml" => Shop.Shape.TryRead(root, reading, out _),
        "customers" => Customer.Shape.TryRead(root, reading, out _),
        "gearboxes" => Gearbox.Shape.TryRead(root, reading, out _),
        "cars" => Car.Shape.TryRead(root, reading, out _),
        "venues" => Venue.Shape.TryRead(root, reading, out _),
        "units" => Unit.Shape.TryRead(root, reading, out _),
        _ => Job.Shape.TryRead(root, reading, out _),
    };
}
