using System.Text;
using System.Text.RegularExpressions;

namespace Layshaft.Browser.Tests;

/// <summary>Counts the pages of a PDF that Chromium wrote (its page objects stand outside compressed streams).</summary>
internal static partial class PdfPages
{
    public static int Count(byte[] pdf) => PageObject().Count(Encoding.Latin1.GetString(pdf));

    [GeneratedRegex(@"/Type\s*/Page[^s]", RegexOptions.None, 5000)]
    private static partial Regex PageObject();
}
