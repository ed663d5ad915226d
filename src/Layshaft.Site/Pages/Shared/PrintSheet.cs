using System.Text;
using Layshaft.Book.Records;

namespace Layshaft.Site.Pages.Shared;

/// <summary>The stylesheet that puts a line at the foot of each printed page.</summary>
public static class PrintSheet
{
    /// <summary>Rules that put the job's number, the unit and the shop at the bottom left of each page.</summary>
    public static string Stylesheet(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        var line = composition.Say("print.line", ("number", job.Number), ("unit", view.Unit.Serial), ("shop", composition.Shop.Name));
        return $"@page {{ @bottom-left {{ content: \"{Escape(line)}\"; font: 8.5pt \"Layshaft Text\", Arial, sans-serif; }} }}";
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
