using System.Text.RegularExpressions;

namespace Layshaft.Site.Templates;

/// <summary>
/// Finds numbers in a template that the library would work on for hours before it can refuse anything: it writes out
/// <c>1e90000000</c> digit by digit while it parses.
/// </summary>
internal static partial class TemplateNumbers
{
    /// <summary>The first such number's place in the text; null for none.</summary>
    public static int? Endless(string text) => Number().Match(text) is { Success: true } found ? found.Index : null;

    // Not after # or a letter, where it is a colour or a name.
    [GeneratedRegex("(?<![0-9A-Za-z_#])[0-9](?:[0-9_.]{60,}|[0-9_.]*[eE][+-]?[0-9_]{3,})", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Number();
}
