using System.Buffers;
using System.Text;

namespace Layshaft.Site.Wording;

/// <summary>Words with places: <c>{count} events</c>, kept as literal and place in turn.</summary>
internal sealed class PlacedText
{
    private static readonly SearchValues<char> NameCharacters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789_");

    // Even entries are literal words, odd ones the names of places.
    private readonly string[] _pieces;

    private PlacedText(string source, string[] pieces)
    {
        Source = source;
        _pieces = pieces;
    }

    internal string Source { get; }

    internal IEnumerable<string> Places => _pieces.Where((_, i) => i % 2 == 1);

    /// <summary>The words, or null with what is wrong.</summary>
    internal static PlacedText? Parse(string source, out string? wrong)
    {
        var pieces = new List<string>();
        var rest = source.AsSpan();
        wrong = null;
        while (true)
        {
            var brace = rest.IndexOfAny('{', '}');
            if (brace < 0)
            {
                pieces.Add(rest.ToString());
                return new(source, [.. pieces]);
            }

            var end = rest[brace..].IndexOf('}') + brace;
            if (rest[brace] == '}' || end < brace || !IsName(rest[(brace + 1)..end]))
            {
                wrong = "This place is not valid. Write lower-case letters, digits and '_' in braces, such as {owner}.";
                return null;
            }

            pieces.Add(rest[..brace].ToString());
            pieces.Add(rest[(brace + 1)..end].ToString());
            rest = rest[(end + 1)..];
        }
    }

    internal string Fill(Func<string, string> value)
    {
        if (_pieces.Length == 1)
        {
            return _pieces[0];
        }

        var filled = new StringBuilder();
        for (var i = 0; i < _pieces.Length; i++)
        {
            filled.Append(i % 2 == 0 ? _pieces[i] : value(_pieces[i]));
        }

        return filled.ToString();
    }

    private static bool IsName(ReadOnlySpan<char> name) =>
        name.Length > 0 && char.IsAsciiLetterLower(name[0])
        && !name.ContainsAnyExcept(NameCharacters);
}
