namespace Layshaft.Book.Values;

/// <summary>Takes a written quantity apart.</summary>
public static class QuantityParts
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
}
