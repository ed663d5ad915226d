using Layshaft.Site.Templates;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Layshaft.Site.Wording;

/// <summary>
/// Reads one texts file: a mapping of key to sentence, or of key to the forms <c>one</c>, <c>other</c>, <c>zero</c>.
/// Anchors, tags, lists and repeated keys are refused.
/// </summary>
internal sealed class TextsFile
{
    private readonly ICollection<TemplateProblem> _problems;

    private TextsFile(string name, ICollection<TemplateProblem> problems) => (Name, _problems) = (name, problems);

    /// <summary>The file's name from the templates' folder, as in <c>texts/en.yaml</c>.</summary>
    internal string Name { get; }

    internal SortedDictionary<string, Sentence> Sentences { get; } = new(StringComparer.Ordinal);

    /// <summary>Where each key stands: line and column, from 1.</summary>
    internal Dictionary<string, (int Line, int Column)> Places { get; } = new(StringComparer.Ordinal);

    /// <summary>The old names of keys that this file uses; its sentences are under the new ones.</summary>
    internal SortedSet<string> Renamed { get; } = new(StringComparer.Ordinal);

    internal static TextsFile Read(string name, string text, ICollection<TemplateProblem> problems)
    {
        var file = new TextsFile(name, problems);
        try
        {
            file.ReadStream(new Parser(new StringReader(text)));
        }
        catch (YamlException e)
        {
            file.Problem(e.Start, $"This is not YAML: {e.Message}");
        }

        file.Rename();
        return file;
    }

    // A file that has both names means the new one.
    private void Rename()
    {
        foreach (var (old, now) in RenamedKeys.NewNames.Where(n => Sentences.ContainsKey(n.Key)))
        {
            Renamed.Add(old);
            Sentences.TryAdd(now, Sentences[old]);
            Places.TryAdd(now, Places[old]);
            Sentences.Remove(old);
        }
    }

    private void ReadStream(Parser parser)
    {
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _) || !parser.TryConsume<MappingStart>(out _))
        {
            Problem(parser.Current?.Start ?? Mark.Empty, "A texts file must be a list of 'key: text' lines.");
            return;
        }

        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var key = parser.Consume<Scalar>();
            var sentence = ReadSentence(parser);
            if (!Places.TryAdd(key.Value, ((int)key.Start.Line, (int)key.Start.Column)))
            {
                Problem(key.Start, $"'{key.Value}' is written twice. Remove one of them.");
            }
            else if (sentence is not null)
            {
                Sentences.Add(key.Value, sentence);
            }
        }

        parser.Consume<DocumentEnd>();
        if (parser.TryConsume<DocumentStart>(out var second))
        {
            Problem(second.Start, "A texts file has one document. Remove the '---'.");
        }
    }

    private Sentence? ReadSentence(Parser parser)
    {
        if (parser.Accept<Scalar>(out _))
        {
            return ReadWords(parser) is { } words ? new(words) : null;
        }

        if (parser.TryConsume<MappingStart>(out var start))
        {
            return ReadForms(parser, start);
        }

        Problem(parser.Current!.Start, "The text is missing. Write a text, or the forms 'one:' and 'other:'.");
        parser.SkipThisAndNestedEvents();
        return null;
    }

    private Sentence? ReadForms(Parser parser, MappingStart start)
    {
        var forms = new Dictionary<string, PlacedText>(StringComparer.Ordinal);
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var form = parser.Consume<Scalar>();
            if (form.Value is not ("one" or "other" or "zero"))
            {
                Problem(form.Start, $"'{form.Value}' is not a form. Write 'zero', 'one' or 'other'.");
                parser.SkipThisAndNestedEvents();
            }
            else if (ReadWords(parser) is { } words && !forms.TryAdd(form.Value, words))
            {
                Problem(form.Start, $"'{form.Value}' is written twice. Remove one of them.");
            }
        }

        if (forms.TryGetValue("other", out var other))
        {
            return new(other, forms.GetValueOrDefault("one"), forms.GetValueOrDefault("zero"));
        }

        Problem(start.Start, "The form 'other:' is missing. Add it; it is used for every other count.");
        return null;
    }

    private PlacedText? ReadWords(Parser parser)
    {
        if (!parser.TryConsume<Scalar>(out var scalar))
        {
            Problem(parser.Current!.Start, "The text is missing. Write a text.");
            parser.SkipThisAndNestedEvents();
            return null;
        }

        if (!scalar.Anchor.IsEmpty || !scalar.Tag.IsEmpty)
        {
            Problem(scalar.Start, "This is a YAML anchor or tag, which a texts file may not use. Remove it.");
            return null;
        }

        if (string.IsNullOrWhiteSpace(scalar.Value))
        {
            Problem(scalar.Start, "The text is empty. Write a text.");
            return null;
        }

        var words = PlacedText.Parse(scalar.Value, out var wrong);
        if (wrong is not null)
        {
            Problem(scalar.Start, wrong);
        }

        return words;
    }

    private void Problem(Mark at, string message) => _problems.Add(new(Name, (int)at.Line, (int)at.Column, message));
}
