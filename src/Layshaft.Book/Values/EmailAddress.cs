namespace Layshaft.Book.Values;

/// <summary>Email addresses as a mail program takes them: one plain address, with no name around it (RFC 5322, 3.4.1, without quoted local parts).</summary>
public static class EmailAddress
{
    /// <summary>What to write.</summary>
    public const string Words = "one email address, such as jo@example.com";

    private const string NotInAddresses = "<>,;:\"()[]\\?&%#";

    /// <summary>Whether a mail can be addressed with a text, also as a link on a page.</summary>
    /// <param name="text">What is written.</param>
    public static bool IsUsable(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Trim().Split('@') is [{ Length: > 0 and <= 64 } local, { Length: > 0 and <= 255 } domain]
            && local.Split('.').All(IsPart) && domain.Split('.') is [_, _, ..] labels && labels.All(l => IsPart(l) && l[0] != '-' && l[^1] != '-' && l.All(c => char.IsLetterOrDigit(c) || c == '-'));
    }

    private static bool IsPart(string part) =>
        part.Length > 0 && !part.Any(c => char.IsControl(c) || char.IsWhiteSpace(c) || char.IsSurrogate(c) || NotInAddresses.Contains(c, StringComparison.Ordinal));
}
