namespace Layshaft.Site.Notes;

/// <summary>Which addresses a note may link to.</summary>
internal static class NoteLinks
{
    private static readonly string[] Schemes = ["http", "https", "mailto", "tel"];

    /// <summary>Whether an address is <c>http</c>, <c>https</c>, <c>mailto</c>, <c>tel</c> or relative, as browsers read it.</summary>
    /// <param name="address">The address after entities and escapes of the Markdown were resolved.</param>
    /// <remarks>
    /// Browsers drop tabs, line ends and leading controls before they look for a scheme, and read a backslash as a slash
    /// (WHATWG URL, "basic URL parser"); so an address with any of these is refused, not repaired. The address is looked at
    /// once more with percent-escapes resolved, for whatever stands between us and the browser may resolve them.
    /// </remarks>
    internal static bool IsAllowed(string? address) =>
        address is not null && IsPlain(address) && IsPlain(Uri.UnescapeDataString(address));

    /// <summary>Whether the address leads to another site.</summary>
    internal static bool IsOutside(string address) => SchemeOf(address) is "http" or "https";

    /// <summary>An address of the web or of mail as somebody can type it; null for others.</summary>
    internal static string? Spelled(string address) => SchemeOf(address) switch
    {
        "http" or "https" => address,
        "mailto" => address["mailto:".Length..].Split('?')[0],
        _ => null,
    };

    private static bool IsPlain(string address)
    {
        if (address.Any(c => char.IsControl(c) || char.IsWhiteSpace(c) && c != ' ' || c == '\\')
            || address.StartsWith(' ') || address.StartsWith("//", StringComparison.Ordinal))
        {
            return false;
        }

        return SchemeOf(address) is not { } scheme || Schemes.Contains(scheme);
    }

    private static string? SchemeOf(string address)
    {
        var end = address.AsSpan().IndexOfAny(":/?#");
        return end >= 0 && address[end] == ':' ? address[..end].ToLowerInvariant() : null;
    }
}
