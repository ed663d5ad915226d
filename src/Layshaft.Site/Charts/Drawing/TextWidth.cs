using System.Text;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>
/// Estimates how wide text will be. The reader's font is unknown when a page is written, so classes of letters are
/// counted (widths near those of the common sans-serif faces) and a little is added.
/// </summary>
internal static class TextWidth
{
    private const double Allowance = 1.06;

    public static double Of(string text, double size = ChartSheet.TextSize)
    {
        var em = 0.0;
        foreach (var rune in (text ?? string.Empty).EnumerateRunes())
        {
            em += Em(rune.Value);
        }

        return em * size * Allowance;
    }

    public static double Widest(IEnumerable<string> texts) => texts.Select(t => Of(t)).DefaultIfEmpty(0).Max();

    /// <summary>Breaks text at spaces into lines no wider than given; a single word that is wider keeps its line.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width)
    {
        List<string> lines = [];
        StringBuilder line = new();
        foreach (var word in (text ?? string.Empty).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && Of($"{line} {word}") > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : string.Empty).Append(word);
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line.ToString());
        }

        return lines;
    }

    private static double Em(int rune) => rune switch
    {
        ' ' or 'i' or 'j' or 'l' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' or 'I' or 0xA0 or 0x202F or 0x2009 => 0.28,
        'f' or 't' or 'r' or '(' or ')' or '[' or ']' or '-' or '/' or 0xB7 => 0.35,
        'm' or 'M' or 'w' or 'W' or '@' or '%' => 0.86,
        >= 'A' and <= 'Z' => 0.68,
        < 0x300 => 0.56,
        < 0x2E80 => 0.64,
        _ => 1.0,
    };
}
