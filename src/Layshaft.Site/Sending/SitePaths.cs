namespace Layshaft.Site.Sending;

/// <summary>Finds what a relative address on a page stands for.</summary>
internal static class SitePaths
{
    /// <summary>Whether an address leads out of the site, or is none that a file could be behind.</summary>
    public static bool IsOutside(string address) =>
        address.StartsWith("//", StringComparison.Ordinal) || (address.IndexOf(':', StringComparison.Ordinal) is var colon and > 0 && address[..colon].All(c => char.IsAsciiLetterOrDigit(c) || c is '+' or '-' or '.'));

    /// <summary>The path in the site of an address; null when it leaves the site.</summary>
    /// <param name="from">Path of the file that names it.</param>
    /// <param name="address">A relative address, with or without query and fragment.</param>
    public static string? Resolve(string from, string address)
    {
        var end = address.IndexOfAny(['?', '#']);
        var path = Uri.UnescapeDataString(end < 0 ? address : address[..end]);
        if (IsOutside(address) || path.StartsWith('/'))
        {
            return null;
        }

        if (path.Length == 0)
        {
            return from;
        }

        var parts = from.Split('/')[..^1].ToList();
        foreach (var part in path.Split('/'))
        {
            switch (part)
            {
                case "." or "":
                    break;
                case "..":
                    if (parts.Count == 0)
                    {
                        return null;
                    }

                    parts.RemoveAt(parts.Count - 1);
                    break;
                default:
                    parts.Add(part);
                    break;
            }
        }

        return path.EndsWith('/') ? $"{string.Join('/', parts)}/index.html" : string.Join('/', parts);
    }
}
