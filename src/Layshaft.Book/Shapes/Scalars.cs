using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Layshaft.Book.Values;
using UnitsNet;
using SeasonCalendar = Layshaft.Engineering.Life.SeasonCalendar;

namespace Layshaft.Book.Shapes;

/// <summary>The shapes of single values that a book is made of.</summary>
public static partial class Scalars
{
    /// <summary>Any text of one line or more; not empty.</summary>
    public static Shape<string> Text { get; } = TextOf("text");

    /// <summary>The name of an estimate line in an answer by line.</summary>
    public static Shape<string> LineName { get; } = TextOf("the id, part or work of an estimate line");

    /// <summary>The name of another file in the book, or of a thing that other files refer to.</summary>
    public static Shape<string> Id { get; } = new ScalarShape<string>(
        "a short name in lower-case letters, digits and hyphens",
        "ring-2",
        "bad-name",
        t => IdPattern().IsMatch(t) ? Parsed.Good(t) : Parsed.Bad<string>($"'{Short(t)}' is not a short name."),
        () => SchemaParts.Name("^[a-z0-9]+(?:-[a-z0-9]+)*$"));

    /// <summary>The tag of a language (BCP 47).</summary>
    public static Shape<string> Language { get; } = new ScalarShape<string>(
        "a language tag",
        "en-US",
        "bad-language",
        t => t.Length <= LongestLanguage && LanguagePattern().IsMatch(t) ? Parsed.Good(t) : Parsed.Bad<string>($"'{Short(t)}' is not a language tag."),
        () =>
        {
            var schema = SchemaParts.Matching(LanguageTag + "$");
            schema["maxLength"] = LongestLanguage;
            return schema;
        });

    /// <summary>A file beside this one, or in a folder below it.</summary>
    public static Shape<string> FileName { get; } = new ScalarShape<string>(
        "a file name",
        "notes.md",
        "bad-file-name",
        t => IsFileName(t)
            ? Parsed.Good(t)
            : Parsed.Bad<string>($"'{Short(t)}' is not a valid file name for a book.", NameInstead(t) is { } name ? $"Rename the file, for example to '{name}', and write that name." : "Write letters, digits, '-' and '_' with a file extension. Separate folders with '/'; '..' and drives are not allowed."),
        () =>
        {
            var schema = SchemaParts.Matching(FileNamePattern + "$");
            schema["maxLength"] = LongestFileName;
            return schema;
        });

    /// <summary>Whether a text can name a file beside a file of the book.</summary>
    public static bool IsFileName(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length <= LongestFileName && FilePattern().IsMatch(text);
    }

    /// <summary>A plain name for a file whose name has other characters, as telephones and people give them; null if there is none near it.</summary>
    internal static string? NameInstead(string file)
    {
        var dot = file.LastIndexOf('.');
        if (dot <= 0 || file.AsSpan().IndexOfAny("/\\") >= 0 || file.Length > 200 || !file[(dot + 1)..].All(char.IsAsciiLetterOrDigit) || dot == file.Length - 1)
        {
            return null;
        }

        // Half a character and U+FFFE cannot be decomposed.
        var whole = string.Concat(file[..dot].ToLowerInvariant().Select(c => char.IsSurrogate(c) || c == '\uFFFE' ? '-' : c));
        var letters = whole.Replace("ä", "ae", StringComparison.Ordinal).Replace("ö", "oe", StringComparison.Ordinal).Replace("ü", "ue", StringComparison.Ordinal).Replace("ß", "ss", StringComparison.Ordinal)
            .Normalize(System.Text.NormalizationForm.FormD).Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark).Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-');
        var name = string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return name.Length is > 0 and <= 60 && $"{name}.{file[(dot + 1)..].ToLowerInvariant()}" is var instead && IsFileName(instead) ? instead : null;
    }

    /// <summary>A calendar day.</summary>
    public static Shape<DateOnly> Date { get; } = new ScalarShape<DateOnly>(
        "a date as year-month-day",
        "2026-03-14",
        "bad-date",
        t => DateOnly.TryParseExact(t, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && date.Year is >= 1950 and < 2200
            ? Parsed.Good(date)
            : Parsed.Bad<DateOnly>($"'{Short(t)}' is not a date."),
        () => SchemaParts.Matching(Patterns.Date));

    /// <summary>Yes or no. <c>on</c>, <c>off</c>, <c>y</c> and <c>n</c> are not taken.</summary>
    public static Shape<bool> YesNo { get; } = new ChoiceShape<bool>("yes or no", ("yes", true), ("no", false), ("true", true), ("false", false));

    /// <summary>A whole number above zero.</summary>
    public static Shape<int> Count { get; } = Whole("a whole number of 1 or more", "2", 1, 100_000);

    /// <summary>A whole number, zero or more.</summary>
    public static Shape<int> CountOrNone { get; } = Whole("a whole number of 0 or more", "4", 0, 100_000);

    /// <summary>The teeth of one gear.</summary>
    public static Shape<int> ToothCount { get; } = Whole($"a tooth count from {Values.Teeth.Fewest} to {Values.Teeth.Most}", "29", Values.Teeth.Fewest, Values.Teeth.Most);

    /// <summary>Two gears in mesh.</summary>
    public static Shape<Teeth> Teeth { get; } = new ScalarShape<Teeth>(Values.Teeth.What, Values.Teeth.Example, "bad-teeth", Values.Teeth.Parse, () => SchemaParts.Matching(Patterns.Teeth()));

    /// <summary>Crown wheel and pinion.</summary>
    public static Shape<Teeth> FinalDrive { get; } = new ScalarShape<Teeth>(Values.Teeth.FinalDriveWhat, Values.Teeth.FinalDriveExample, "bad-teeth", Values.Teeth.ParseFinalDrive, () => SchemaParts.Matching(Patterns.Teeth()));

    /// <summary>The ramps of a plate differential.</summary>
    public static Shape<RampAngles> RampAngles { get; } = new ScalarShape<RampAngles>(Values.RampAngles.What, Values.RampAngles.Example, "bad-ramps", Values.RampAngles.Parse, () => SchemaParts.Matching(Patterns.Ramps()));

    /// <summary>The plates of one side of a differential, in order.</summary>
    public static Shape<PlateSequence> PlateSequence { get; } = new ScalarShape<PlateSequence>(Values.PlateSequence.What, Values.PlateSequence.Example, "bad-plates", Values.PlateSequence.Parse, () => SchemaParts.Matching(Patterns.Whole(Values.PlateSequence.Pattern)));

    /// <summary>A plain number without a unit, such as a profile shift coefficient.</summary>
    public static Shape<double> Number { get; } = NumberOf(Sign.Any);

    /// <summary>A plain number above zero.</summary>
    public static Shape<double> PositiveNumber { get; } = NumberOf(Sign.Positive).Demand("not-positive", v => v > 0, _ => "This must be more than 0.");

    /// <summary>A share in per cent, read as a fraction (54 % is 0.54); may be negative or above 100 %.</summary>
    public static Shape<double> Share { get; } = ShareOf(part: false, p => (double)p / 100);

    /// <summary>A share from 0 % to 100 %.</summary>
    public static Shape<double> Part { get; } = ShareOf(part: true, p => (double)p / 100).Demand("share-out-of-range", v => v is >= 0 and <= 1, _ => "This must be from 0 % to 100 %.");

    /// <summary>A share from 0 % to 100 % as an exact decimal, for money.</summary>
    public static Shape<decimal> TaxRate { get; } = ShareOf(part: true, p => p / 100).Demand("share-out-of-range", v => v is >= 0 and <= 1, _ => "This must be from 0 % to 100 %.");

    /// <summary>An amount of the shop's currency, to the cent.</summary>
    public static Shape<decimal> Money { get; } = Amount("an amount without a currency sign", "145.00", "bad-money");

    /// <summary>A number of labour hours, to a hundredth.</summary>
    public static Shape<decimal> Hours { get; } = Amount("a number of hours", "6.5", "bad-hours");

    private static ScalarShape<decimal> Amount(string what, string example, string code) => new(
        what,
        example,
        code,
        t => Figure.ParseExact(t) switch
        {
            { Wrong: { } wrong, Remedy: var remedy } => Parsed.Bad<decimal>(wrong, remedy ?? (Dressed().Match(t) is { Success: true } dressed ? $"Write {dressed.Groups["number"].Value}." : null)),
            { Value: var v } when v < 0 => Parsed.Bad<decimal>($"'{t}' is negative."),
            { Value: var v } when decimal.Round(v, 2) != v => Parsed.Bad<decimal>($"'{t}' has more than two decimal places."),
            { Value: var v } => Parsed.Good(v),
        },
        () => new() { ["type"] = new JsonArray("number", "string"), ["minimum"] = 0, ["pattern"] = "^(?:[+]?(?:0|[1-9][0-9]*)(?:[.][0-9]{1,2}0*)?|[-−]0(?:[.]0+)?)$" });

    /// <summary>An amount of running.</summary>
    public static Shape<Use> Use { get; } = new ScalarShape<Use>("a usage in h, km or events", "21.5 h", "bad-use", Values.Use.Parse, () => SchemaParts.Matching(Patterns.Whole($"{Patterns.Number(Sign.NotNegative)}{Patterns.Space}(?:h|hours?|km|events?)")));

    /// <summary>A span of the calendar.</summary>
    public static Shape<CalendarSpan> Span { get; } = new ScalarShape<CalendarSpan>("a period in days, weeks, months or years", "12 months", "bad-span", CalendarSpan.Parse, () => SchemaParts.Matching(Patterns.Whole($"[+]?{Patterns.Whole(1, 1200)}{Patterns.Space}(?:days?|weeks?|months?|years?)")));

    /// <summary>The months in which units are run.</summary>
    public static Shape<SeasonCalendar> Season { get; } = new ScalarShape<SeasonCalendar>(SeasonText.What, SeasonText.Example, "bad-season", SeasonText.Parse, () => SchemaParts.Matching(SeasonText.Pattern));

    /// <summary>A colour.</summary>
    public static Shape<string> Colour { get; } = new ScalarShape<string>(
        "a colour as \"#rrggbb\" in quotes",
        "\"#1f4e79\"",
        "bad-colour",
        t => ColourPattern().IsMatch(t) ? Parsed.Good(t.ToLowerInvariant()) : Parsed.Bad<string>($"'{Short(t)}' is not a colour."),
        () => SchemaParts.Matching("^#[0-9a-fA-F]{6}$"));

    /// <summary>An ISO 4217 currency code.</summary>
    public static Shape<string> Currency { get; } = new ScalarShape<string>(
        "an ISO 4217 currency code",
        "EUR",
        "bad-currency",
        t => t.Length == 3 && t.All(char.IsAsciiLetterUpper) ? Parsed.Good(t) : Parsed.Bad<string>($"'{Short(t)}' is not a currency code."),
        () => SchemaParts.Matching("^[A-Z]{3}$"));

    /// <summary>The size of a file.</summary>
    public static Shape<FileSize> FileSize { get; } = new ScalarShape<FileSize>("a file size in kB or MB", "8 MB", "bad-file-size", Values.FileSize.Parse, () => SchemaParts.Matching(Patterns.Whole($"{Patterns.Number(Sign.Positive)}{Patterns.Space}(?:kB|KB|MB)")));

    /// <summary>The address of a folder on the web.</summary>
    public static Shape<WebAddress> WebAddress { get; } = new ScalarShape<WebAddress>("a web address of a folder, without a query", Values.WebAddress.Example, "bad-web-address", Values.WebAddress.Parse, () => SchemaParts.Matching(Patterns.Whole(Values.WebAddress.Pattern)));

    /// <summary>A target band of a measured value.</summary>
    public static Shape<Band<IQuantity>> Band { get; } = new ScalarShape<Band<IQuantity>>(BandText.What, BandText.Examples, "bad-band", BandText.Parse, () => SchemaParts.Matching(Patterns.Band()));

    private const int LongestText = 20_000;

    private static ScalarShape<double> NumberOf(Sign sign) => new("a number", "0.35", "bad-number", Figure.Parse, () => SchemaParts.Number(sign));

    private static ScalarShape<string> TextOf(string what) => new(
        what,
        "",
        "bad-text",
        t => string.IsNullOrWhiteSpace(t)
            ? Parsed.Bad<string>("The text is empty.", "Write the text, or remove the line.")
            : t.Length > LongestText
                ? Parsed.Bad<string>("This text is longer than 20,000 characters.", "Move it to a notes file.")
                : Parsed.Good(t.Trim()),
        () => SchemaParts.AnyText(LongestText),
        free: true);

    private static ScalarShape<T> ShareOf<T>(bool part, Func<decimal, T> ofPerCent) => new(
        "a percentage",
        "54 %",
        "bad-share",
        t => ParsePerCent(t) is { Wrong: { } wrong, Remedy: var remedy } ? Parsed.Bad<T>(wrong, remedy) : Parsed.Good(ofPerCent(ParsePerCent(t).Value)),
        () => SchemaParts.Matching(Patterns.Share(part)));

    // Leaves room for what stands around it in the longest path that every system allows.
    private const int LongestFileName = 80;

    private const int LongestLanguage = 35;

    // A language of BCP 47 in lower case, then what narrows it down, such as a region.
    private const string LanguageTag = "^[a-z]{2,8}(?:-[A-Za-z0-9]{1,8})*";

    // Windows keeps these names for devices, in any case and whatever ending follows; and it drops points and spaces at the
    // end of a folder's name.
    private const string NoDevice = "(?!(?:[Cc][Oo][Nn]|[Pp][Rr][Nn]|[Aa][Uu][Xx]|[Nn][Uu][Ll]|(?:[Cc][Oo][Mm]|[Ll][Pp][Tt])[0-9]) *(?:[./]|$))";

    private const string FileNamePattern =
        $"^{NoDevice}(?:[A-Za-z0-9_-](?:[A-Za-z0-9_. -]*[A-Za-z0-9_-])?/{NoDevice})*[A-Za-z0-9_-][A-Za-z0-9_. -]*[.][A-Za-z0-9]+";

    private static Shape<int> Whole(string what, string example, int least, int most) => new ScalarShape<int>(
        what,
        example,
        "bad-whole-number",
        t => Figure.ParseWhole(t) switch
        {
            { Wrong: { } wrong, Remedy: var remedy } => Parsed.Bad<int>(wrong, remedy),
            { Value: var v } when v < least || v > most => Parsed.Bad<int>($"'{t}' is out of range."),
            { Value: var v } => Parsed.Good(v),
        },
        () => SchemaParts.Whole(least, most));

    private static Parsed<decimal> ParsePerCent(string text)
    {
        var trimmed = text.Trim();
        return trimmed.EndsWith('%')
            ? Figure.ParseExact(trimmed[..^1].TrimEnd(' ', '\u00A0', '\u202F'))
            : Parsed.Bad<decimal>($"'{Short(text)}' has no '%'.");
    }

    private static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*\\z")]
    private static partial Regex IdPattern();

    // A number with a currency or an hour beside it: £38, 38 EUR, 9 h.
    [GeneratedRegex(@"^\s*[\p{Sc}A-Za-z]*\s*(?<number>(?:0|[1-9][0-9]*)(?:[.][0-9]{1,2})?)\s*[\p{Sc}A-Za-z]*\s*\z", RegexOptions.None, 1000)]
    private static partial Regex Dressed();

    [GeneratedRegex(LanguageTag + "\\z")]
    private static partial Regex LanguagePattern();

    [GeneratedRegex(FileNamePattern + "\\z")]
    private static partial Regex FilePattern();

    [GeneratedRegex("^#[0-9a-fA-F]{6}\\z")]
    private static partial Regex ColourPattern();
}
