using System.Text.RegularExpressions;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>The address of a folder on the web: absolute, ending in a slash, so that a site's paths can be put behind it.</summary>
/// <param name="Text">The address.</param>
public sealed partial record WebAddress(string Text)
{
    /// <summary>How it is written.</summary>
    public const string Example = "https://reports.myshop.example/";

    /// <summary>How it looks: scheme, host, port if need be, folders; no name, query or fragment.</summary>
    internal const string Pattern = "[hH][tT][tT][pP][sS]?://[^\\s/?#\"<>@:\\\\]+(?::[0-9]{1,5})?(?:/[^\\s?#\"<>\\\\]*)?";

    private const int Longest = 300;

    /// <summary>Reads an address. What is missing at its end is a slash.</summary>
    public static Parsed<WebAddress> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var given = text.Trim();
        return given.Length <= Longest && Form().IsMatch(given) && Uri.TryCreate(given, UriKind.Absolute, out var uri)
            ? Parsed.Good(new WebAddress(uri.AbsoluteUri.EndsWith('/') ? uri.AbsoluteUri : uri.AbsoluteUri + "/"))
            : Parsed.Bad<WebAddress>($"'{(given.Length > 60 ? given[..60] + "…" : given)}' is not the web address of a folder.");
    }

    /// <summary>The address of a file of the site.</summary>
    /// <param name="path">Its path from the output folder, with forward slashes.</param>
    public string Of(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Text + string.Join('/', path.Split('/').Select(Uri.EscapeDataString));
    }

    [GeneratedRegex($"^{Pattern}$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Form();
}
