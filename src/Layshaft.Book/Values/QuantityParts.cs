using System.Text.RegularExpressions;

namespace Layshaft.Book.Values;

/// <summary>Takes a written quantity apart.</summary>
public static partial class QuantityParts
{
    /// <summary>Splits "0.12 mm" into number and unit; either may be empty.</summary>
    public static (string Number, string Unit) Split(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.Trim();
        var end = 0;
        while (end < trimmed.Length && (char.IsAsciiDigit(trimmed[end]) || trimmed[end] is '.' or ',' or ':' or '_' or '-' or '+' or '\u2212'))
        {
            end++;
        }

        return (trimmed[..end], trimmed[end..].Trim(' ', '\u00A0', '\u202F'));
    }

    /// <summary>A fraction of a unit, such as 1/32 in.</summary>
    [GeneratedRegex(@"^\s*(?:(?<whole>[0-9]{1,4})[ -])?(?<over>[0-9]{1,4})/(?<under>[0-9]{1,4}) *(?<unit>[^0-9/ ]+)\s*\z", RegexOptions.None, 1000)]
    internal static partial Regex Fraction();
}
