using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Values;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Layshaft.Book.Yaml;

/// <summary>
/// Reads one YAML document into nodes, from the parser's events. YAML's own conversions are not used: a value stays
/// the text that was written until a shape reads it. Anchors, aliases, merge keys, tags and second documents are
/// refused, so that nothing can multiply and no key can change the meaning of another.
/// </summary>
public sealed class NodeReader
{
    /// <summary>How many levels below its root a file may have.</summary>
    internal const int DeepestNesting = 24;
    private const int MostNodes = 50_000;

    private readonly string file;
    private readonly string text;
    private readonly ProblemList problems;
    private int nodes;
    private int reached;

    private NodeReader(string file, string text, ProblemList problems)
    {
        this.file = file;
        this.text = text;
        this.problems = problems;
    }

    /// <summary>The document's root, or null when the file can't be read as YAML; the reasons are in the problems.</summary>
    /// <param name="file">Path for messages.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static Node? Read(string file, string text, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(problems);
        return new NodeReader(file, text, problems).Document();
    }

    private Node? Document()
    {
        try
        {
            using var reader = new StringReader(text);
            var parser = new Parser(reader);
            parser.Consume<StreamStart>();
            if (!parser.TryConsume<DocumentStart>(out _))
            {
                problems.Add("empty-file", Place.WholeFile(file), "This file is empty.", "Fill it in, or remove it.");
                return null;
            }

            var root = Value(parser, 0);
            parser.Consume<DocumentEnd>();
            if (parser.Current is DocumentStart second || (parser.MoveNext() && parser.Current is DocumentStart))
            {
                problems.Add("second-document", At(parser.Current!.Start), "A second document begins here ('---').", "Keep one document per file.");
            }

            return root;
        }
        catch (Refused)
        {
            return null;
        }
        catch (YamlException bad)
        {
            problems.Add(YamlMistake.Explain(file, text, bad));
            return null;
        }
        catch (Exception bad) when (bad is ArgumentException or InvalidOperationException or IndexOutOfRangeException or OverflowException)
        {
            // The parser has faults of its own: some broken texts make it reach beyond its buffer.
            problems.Add(YamlMistake.Explain(file, text, reached));
            return null;
        }
    }

    private Node Value(Parser parser, int depth)
    {
        reached = Line(parser.Current!.Start);
        if (depth > DeepestNesting)
        {
            throw Refuse("too-deep", parser.Current!.Start, $"This is nested more than {DeepestNesting} levels deep.", "Check the indentation.");
        }

        if (++nodes > MostNodes)
        {
            throw Refuse("too-many-values", parser.Current!.Start, "This file contains too many values.", "Split the file.");
        }

        if (parser.TryConsume<AnchorAlias>(out var alias))
        {
            throw Refuse("alias", alias.Start, $"'*{Short(alias.Value.Value)}' is a YAML alias, which a book may not use.", "Write the value in full. If '*' is part of the text, put the text in quotes.");
        }

        if (parser.Current is NodeEvent node)
        {
            RefuseAnchorOrTag(node);
        }

        if (parser.TryConsume<Scalar>(out var scalar))
        {
            RefuseHidden(scalar);
            var plain = scalar.Style == ScalarStyle.Plain;
            return new ScalarNode(SharedTexts.Of(scalar.Value), plain, Line(scalar.Start), Column(scalar.Start), plain && FollowedBy(scalar.End, " #"));
        }

        return parser.TryConsume<SequenceStart>(out var list) ? List(parser, list, depth) : Map(parser, depth);
    }

    private ListNode List(Parser parser, SequenceStart start, int depth)
    {
        var items = new List<Node>();
        while (!parser.TryConsume<SequenceEnd>(out _))
        {
            items.Add(Value(parser, depth + 1));
        }

        return new ListNode(items, Line(start.Start), Column(start.Start));
    }

    private MapNode Map(Parser parser, int depth)
    {
        var start = parser.Consume<MappingStart>();
        var entries = new List<MapEntry>();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        (int Index, bool Plain) before = (-1, false);
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            if (parser.Current is not Scalar)
            {
                throw Refuse("bad-key", parser.Current!.Start, "A key must be a word.", "Write 'key: value'.");
            }

            RefuseAnchorOrTag((NodeEvent)parser.Current);
            var key = parser.Consume<Scalar>();
            RefuseHidden(key);
            var first = parser.Current is Scalar own ? (Index(own.Start), own.Style == ScalarStyle.Plain) : (-1, false);
            var value = Value(parser, depth + 1);
            if (value is ScalarNode { IsNothing: true } && start.Style == MappingStyle.Flow && !HasColon(key))
            {
                if (ReportWithoutColon(key, before) is { } meant && seen.TryAdd(meant.Key, meant.KeyLine))
                {
                    entries.Add(meant);
                }

                before = (-1, true);
                continue;
            }

            before = first;
            if (key.Value == "<<")
            {
                throw Refuse("merge-key", key.Start, "'<<' is a YAML merge key, which a book may not use.", "Write the keys in full.");
            }

            if (!seen.TryAdd(key.Value, Line(key.Start)))
            {
                problems.Add(
                    "duplicate-key",
                    At(key.Start),
                    $"'{Short(key.Value)}' is written twice (first on line {seen[key.Value]}).",
                    "Remove one of them.");
                continue;
            }

            entries.Add(new MapEntry(SharedTexts.Of(key.Value), Line(key.Start), Column(key.Start), value));
        }

        return new MapNode(entries, Line(start.Start), Column(start.Start));
    }

    // In braces each comma begins a field, also one that was meant as part of a text or a number. Gives the field that was meant, if it is clear.
    private MapEntry? ReportWithoutColon(Scalar key, (int Index, bool Plain) before)
    {
        var place = At(key.Start);
        var meant = before.Index < 0 ? key.Value : text[before.Index..Index(key.End)].ReplaceLineEndings(" ");
        if (FieldSlip.Explain(key.Value, place) is { } slip)
        {
            problems.Add(slip);
            var sign = key.Value.IndexOfAny([':', '=', '\uFF1A']);
            return new MapEntry(key.Value[..sign].Trim(), place.Line, place.Column, new ScalarNode(LookAlike.Replace(key.Value[(sign + 1)..]).Trim(), true, place.Line, place.Column + sign + 1));
        }
        else if (key.Value.Split(' ', 2) is [var name, { Length: > 0 } value] && name.Contains('_'))
        {
            // Only a field's name is written with a low line.
            problems.Add("no-colon", place, $"There is no colon after '{Short(name)}'.", $"Write '{Short(name)}: {Short(value)}'.");
            return new MapEntry(name, place.Line, place.Column, new ScalarNode(value, true, place.Line, place.Column + name.Length + 1));
        }
        else if (before is { Index: >= 0, Plain: true })
        {
            var (number, unit) = QuantityParts.Split(meant);
            problems.Add(
                "comma-in-text",
                place,
                $"In braces, a comma ends the value, so '{Short(key.Value)}' is a field without a value.",
                Figure.WithoutComma(number, unit.Length > 0 ? $" {unit}" : unit) ?? $"Put the whole text in quotes: \"{Short(LookAlike.Replace(meant).Trim('"'))}\".");
        }
        else if (before is not { Index: < 0, Plain: true })
        {
            problems.Add("no-colon", place, $"'{Short(key.Value)}' has no value.", $"Write '{Short(key.Value)}: …', or delete it.");
        }

        return null;
    }

    private bool HasColon(Scalar key)
    {
        var rest = text.AsSpan(Math.Min(Index(key.End), text.Length)).TrimStart();
        return rest is [':', ..];
    }

    private bool FollowedBy(Mark mark, string what) => Index(mark) is var at && at <= text.Length && text.AsSpan(at).StartsWith(what);

    private void RefuseAnchorOrTag(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
        {
            throw Refuse("anchor", node.Start, $"'&{Short(node.Anchor.Value)}' marks a value for reuse in YAML, which a book may not do.", "Remove the mark. If '&' is part of the text, put the text in quotes.");
        }

        if (!node.Tag.IsEmpty && !node.Tag.IsNonSpecific)
        {
            throw Refuse("tag", node.Start, $"'{Short(node.Tag.Value)}' is a YAML tag, which a book may not use.", "Remove it. If '!' is part of the text, put the text in quotes.");
        }
    }

    // Escapes in double quotes could bring in what may not stand in a file itself.
    private void RefuseHidden(Scalar scalar)
    {
        if (YamlText.HiddenIn(scalar.Value) is { } hidden)
        {
            problems.Add("hidden-character", At(scalar.Start), $"An escape sequence in this text is an invisible character (U+{hidden:X4}).", "Remove it.");
        }
    }

    private static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;

    private Refused Refuse(string code, Mark mark, string message, string remedy)
    {
        problems.Add(code, At(mark), message, remedy);
        return new Refused();
    }

    private Place At(Mark mark) => new(file, Line(mark), Column(mark));

    private static int Index(Mark mark) => checked((int)mark.Index);

    private static int Line(Mark mark) => checked((int)mark.Line);

    private static int Column(Mark mark) => checked((int)mark.Column);

    // Only leaves this class as a null root: the reading of one file stops at what was refused.
    private sealed class Refused : Exception;
}
