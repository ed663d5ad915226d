using System.Text;

namespace Layshaft.Site.Look;

/// <summary>The stylesheet that puts a line at the foot of each printed page.</summary>
public static class PrintSheet
{
    /// <summary>A stylesheet with a line for the bottom left of each page.</summary>
    public static string Stylesheet(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return $"@page {{ @bottom-left {{ content: \"{Escape(line)}\"; font: 8.5pt \"Layshaft Text\", Arial, sans-serif; }} }}\n";
    }

    // CSS Syntax Level 3, 4.3.7: a backslash and the code point in hexadecimal, ended by a space, stands for any character.
    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii && (Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or ',' or '.'))
            {
                escaped.Append(rune);
            }
            else
            {
                escaped.Append('\\').Append(rune.Value.ToString("x", System.Globalization.CultureInfo.InvariantCulture)).Append(' ');
            }
        }

        return escaped.ToString();
    }
}
