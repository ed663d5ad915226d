using Layshaft.Book.Shapes;
using SeasonCalendar = Layshaft.Engineering.Life.SeasonCalendar;

namespace Layshaft.Book.Values;

/// <summary>Reads the months of a season.</summary>
public static class SeasonText
{
    /// <summary>What to write.</summary>
    public const string What = "the first and last month of the season";

    /// <summary>How it is written.</summary>
    public const string Example = "March to October";

    private static readonly string[] s_months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    /// <summary>ECMA 262 regular expression of what can be read.</summary>
    public static string Pattern { get; } = $"^{Month} to {Month}$";

    private static string Month => $"(?:{string.Join('|', s_months.Select(m => $"[{m[0]}{char.ToLowerInvariant(m[0])}]{m[1..]}"))})";

    /// <summary>Reads "March to October"; "October to March" is a season over the turn of the year.</summary>
    public static Parsed<SeasonCalendar> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var ends = text.Split(" to ");
        if (ends.Length != 2)
        {
            return Parsed.Bad<SeasonCalendar>($"'{Short(text)}' does not name two months.");
        }

        int[] months = [.. ends.Select(Number)];
        return Array.IndexOf(months, 0) is var unknown and >= 0
            ? Parsed.Bad<SeasonCalendar>($"'{Short(ends[unknown])}' is not a month.", "Write the months in full and in English: March to October.")
            : Parsed.Good(new SeasonCalendar(months[0], months[1]));
    }

    private static int Number(string name) => Array.FindIndex(s_months, m => m == name || (name.Length > 0 && m == char.ToUpperInvariant(name[0]) + name[1..])) + 1;

    private static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;
}
