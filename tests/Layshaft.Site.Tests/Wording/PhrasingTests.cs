using System.Text.RegularExpressions;

namespace Layshaft.Site.Tests.Wording;

/// <summary>Phrases that a search can find stay out of the texts: one word for one thing, short sentences, the terms of the trade.</summary>
public partial class PhrasingTests
{
    private const int MostWords = 25;

    // Pattern, and what to write instead.
    private static readonly (string Pattern, string Instead)[] s_english =
    [
        ("where nothing is said", "say what the default is"),
        (@"\banew\b", "again"),
        (@"\bin all\b", "in total"),
        (@"\b(of|our|the|usual) running\b", "usage is the word of the fields: usage, hours"),
        (@"\breckoned\b", "calculated"),
        (@"\bfor want of\b", "say what was missing"),
        (@"\blikewise\b", "also"),
        (@"\bholds? until\b", "valid until"),
        (@"\bmain shaft\b", "mainshaft, one word"),
        (@"\bmend(s|ed)?\b", "fix, correct"),
        (@"\bpressing\b", "urgent"),
        (@"\b(is|are) (no|told)\b", "is not a; is reported"),
        (@"\bcallipers?\b", "caliper"),
        (@"\btracks?\b", "raceway; a track is a circuit here"),
        (@"\b(under-?cut|lean(s|ing)?)\b", "back-cut, one word for one thing"),
        (@"\b(to pay|sum without)\b", "total, subtotal"),
        (@"\bthe bench\b", "the workshop, or the technician"),
        (@"\bhead wind\b", "headwind"),
        (@"\bwords for damage\b", "damage terms"),
        (@"\buse again\b", "Serviceable is the grade"),
        (@"\b(he|him|his|she|her)\b", "they, their"),
        (@"\bdrag line\b|\bthe drag\b", "total resistance, where rolling is included"),
        (@"\bat a glance\b", "summary"),
        (@"\bthe seasons\b", "service history"),
        (@"\bcustomers' pages\b", "customer pages"),
    ];

    private static readonly (string Pattern, string Instead)[] s_german =
    [
        ("Verschleißvorrat", "Abnutzungsvorrat (DIN 31051)"),
        ("Laufleistung", "Laufzeit: usage is hours, distance or events"),
        ("Kriechstr", "Kriechstrom is surface leakage, not a current through a part"),
        ("Wandtafel", "Wandtabelle; a Wandtafel is a blackboard"),
        (@"\bWerkbank\b", "Werkstatt, Mechaniker"),
        (@"\b(ge)?dient\b", "eingebaut, verbaut"),
        ("erzähl", "things do not tell"),
        (@"Wörter(n)? für|Schadenswört", "Schadensbegriffe"),
        (@"\b(Z|z)u zahlen\b|\bSumme ohne\b", "Gesamtbetrag, Zwischensumme"),
        ("Höchsttempo", "Höchstgeschwindigkeit"),
        (@"\bScheiben?\b|Scheibenpaket(?<!Passscheibenpaket)", "Passscheibe"),
        (@"\bUrteil", "Bewertung"),
        ("Weiterverwenden", "Verwendbar is the grade"),
        ("Gabelbacken", "Gleitstücke der Schaltgabel"),
        (@"\bRasten?\b", "Arretierung"),
        ("Weibull-Ausgleich", "Weibull-Anpassung"),
        (@"\bwieder ansehen\b", "prüfen"),
    ];

    // The name of a term is the word that a finding in the book uses.
    public static TheoryData<string> All => [.. LanguageFiles.All];

    [Theory]
    [MemberData(nameof(All))]
    public void No_text_uses_a_phrase_that_we_left_behind(string language)
    {
        var phrases = language.StartsWith("de", StringComparison.Ordinal) ? s_german : s_english;
        var found = Texts(language)
            .Where(t => !TermName().IsMatch(t.Key))
            .SelectMany(t => phrases.Where(p => Regex.IsMatch(t.Words, p.Pattern, RegexOptions.IgnoreCase)).Select(p => $"{t.Key}: “{t.Words}”; write: {p.Instead}"));
        Assert.Empty(found);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_sentence_is_longer_than_25_words(string language)
    {
        var found = Texts(language)
            .SelectMany(t => EndOfSentence().Split(t.Words).Where(s => s.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length > MostWords).Select(s => $"{t.Key}: {s}"));
        Assert.Empty(found);
    }

    [Fact]
    public void A_letter_of_a_grade_means_one_thing_in_all_languages()
    {
        var letters = LanguageFiles.All
            .SelectMany(l => LanguageFiles.Read(l).Where(s => GradeLetter().IsMatch(s.Key)).Select(s => (Letter: s.Value.Other.Source, s.Key))).Distinct().ToArray();
        Assert.Equal(letters.Length, letters.Select(l => l.Letter).Distinct().Count());
        Assert.True(letters.Length >= 6);
    }

    private static IEnumerable<(string Key, string Words)> Texts(string language) =>
        LanguageFiles.Read(language).SelectMany(s => s.Value.Forms().Select(f => (s.Key, f.Words.Source)));

    [GeneratedRegex(@"^term\..*\.name$")]
    private static partial Regex TermName();

    [GeneratedRegex(@"^grade\..*\.letter$")]
    private static partial Regex GradeLetter();

    [GeneratedRegex(@"(?<=[.:;!?])\s")]
    private static partial Regex EndOfSentence();
}
