using System.Collections.Frozen;
using System.Globalization;

namespace Layshaft.Site.Wording;

/// <summary>The words that pages show, by key. Immutable; threads share it.</summary>
/// <remarks>
/// A sentence has places in braces, <c>{name}</c>. One that depends on a number has the forms <c>one</c> and <c>other</c>
/// (and <c>zero</c>, if the language says it differently), chosen by the value named <c>count</c>.
/// </remarks>
public sealed class Texts
{
    internal const string DecimalMarkKey = "figures.decimal_mark";

    private readonly FrozenDictionary<string, Sentence> _sentences;

    internal Texts(IReadOnlyDictionary<string, Sentence> sentences, string language, string fingerprint)
    {
        _sentences = sentences.ToFrozenDictionary(StringComparer.Ordinal);
        Language = language;
        Fingerprint = fingerprint;
    }

    /// <summary>The language's tag (BCP 47), for a page's <c>lang</c> attribute.</summary>
    public string Language { get; }

    /// <summary>Whether the language writes a comma before the decimals: the text <c>figures.decimal_mark</c>.</summary>
    public bool DecimalComma => _sentences.TryGetValue(DecimalMarkKey, out var mark) && mark.Other.Source == ",";

    /// <summary>SHA-256 over all sentences, in lower-case hexadecimal: pages with other words are other pages.</summary>
    public string Fingerprint { get; }

    /// <summary>All keys, in order.</summary>
    public IReadOnlyList<string> Keys => [.. _sentences.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Whether there is a sentence of this key.</summary>
    /// <param name="key">The key.</param>
    public bool Has(string key) => _sentences.ContainsKey(key);

    /// <summary>The sentence of a key with its places filled.</summary>
    /// <param name="key">The key.</param>
    /// <param name="values">What to put in each place: text or a whole number.</param>
    /// <exception cref="KeyNotFoundException">There is no such key.</exception>
    /// <exception cref="ArgumentException">A place has no value, a value has no place in any form, or a value is neither text nor a whole number.</exception>
    public string Say(string key, params (string Name, object Value)[] values)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(values);
        if (!_sentences.TryGetValue(key, out var sentence) && !(RenamedKeys.NewNames.TryGetValue(key, out var now) && _sentences.TryGetValue(now, out sentence)))
        {
            throw new KeyNotFoundException($"There is no text '{key}'.");
        }

        foreach (var (name, _) in values)
        {
            if (!sentence.Places.Contains(name) && !(name == Sentence.CountName && sentence.HasForms))
            {
                throw new ArgumentException($"The text '{key}' has no place '{{{name}}}'.", nameof(values));
            }
        }

        return sentence.FormFor(Count(key, sentence, values)).Fill(name => ValueOf(key, name, values));
    }

    private static long Count(string key, Sentence sentence, (string Name, object Value)[] values)
    {
        if (!sentence.HasForms)
        {
            return 0;
        }

        foreach (var (name, value) in values)
        {
            if (name == Sentence.CountName && value is int or long)
            {
                return Convert.ToInt64(value, CultureInfo.InvariantCulture);
            }
        }

        throw new ArgumentException($"The text '{key}' needs a whole number named 'count'.", nameof(values));
    }

    private static string ValueOf(string key, string name, (string Name, object Value)[] values)
    {
        foreach (var (given, value) in values)
        {
            if (given == name)
            {
                return value switch
                {
                    string text => text,
                    int or long => Convert.ToString(value, CultureInfo.InvariantCulture)!,
                    _ => throw new ArgumentException(
                        $"The text '{key}' takes text or a whole number for '{{{name}}}'. Format the value first.", nameof(values)),
                };
            }
        }

        throw new ArgumentException($"The text '{key}' needs a value for '{{{name}}}'.", nameof(values));
    }
}
