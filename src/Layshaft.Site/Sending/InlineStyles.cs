using System.Text;
using System.Text.RegularExpressions;

namespace Layshaft.Site.Sending;

/// <summary>Makes a stylesheet stand alone: what it loads is put inside it.</summary>
internal static partial class InlineStyles
{
    /// <summary>The stylesheet with its fonts and pictures as <c>data:</c> addresses.</summary>
    /// <param name="path">Its path in the site.</param>
    /// <param name="read">Reads a file of the site; null when there is none.</param>
    /// <param name="missing">Receives what cannot be put inside.</param>
    public static string Of(string path, Func<string, ReadOnlyMemory<byte>?> read, ICollection<string> missing)
    {
        if (read(path) is not { } bytes)
        {
            missing.Add(path);
            return string.Empty;
        }

        return Alone(Encoding.UTF8.GetString(bytes.Span).TrimStart('\uFEFF'), path, read, missing);
    }

    /// <summary>Styles that stand in a page, the same.</summary>
    /// <param name="css">The styles.</param>
    /// <param name="path">The path in the site of the file that they stand in.</param>
    /// <param name="read">Reads a file of the site; null when there is none.</param>
    /// <param name="missing">Receives what cannot be put inside.</param>
    public static string Alone(string css, string path, Func<string, ReadOnlyMemory<byte>?> read, ICollection<string> missing)
    {
        // Another stylesheet by @import would be asked for in vain.
        var text = Import().Replace(css.ReplaceLineEndings("\n"), m => Left(m.Value));
        var alone = Address().Replace(text, m =>
        {
            var address = m.Groups[1].Value.Trim().Trim('"', '\'').Trim();
            if (address.StartsWith("data:", StringComparison.OrdinalIgnoreCase) || address.StartsWith('#'))
            {
                return m.Value;
            }

            return SitePaths.Resolve(path, address) is { } target && read(target) is { } content
                ? $"url(\"{DataAddress(target, content)}\")"
                : Left(address, "url(\"data:,\")");
        });

        // Within an element an end tag would end it; CSS takes an escaped slash for a slash.
        return alone.Replace("</", "<\\/", StringComparison.Ordinal);

        string Left(string what, string instead = "")
        {
            missing.Add(what);
            return instead;
        }
    }

    /// <summary>A file as an address that holds it.</summary>
    public static string DataAddress(string path, ReadOnlyMemory<byte> content) => $"data:{TypeOf(path)};base64,{Convert.ToBase64String(content.Span)}";

    private static string TypeOf(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".woff2" => "font/woff2",
        ".woff" => "font/woff",
        ".jpg" or ".jpeg" => "image/jpeg",
        ".png" => "image/png",
        ".svg" => "image/svg+xml",
        ".webp" => "image/webp",
        _ => "application/octet-stream",
    };

    [GeneratedRegex("url\\(([^)]*)\\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 2000)]
    private static partial Regex Address();

    [GeneratedRegex("@import[^;]*;?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 2000)]
    private static partial Regex Import();
}
