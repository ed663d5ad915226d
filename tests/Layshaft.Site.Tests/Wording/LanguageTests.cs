using System.Text.RegularExpressions;
using Layshaft.Book.Records;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>English is the measure for every language that we ship, and nothing in it is idle.</summary>
public partial class LanguageTests
{
    private static readonly IReadOnlyDictionary<string, Sentence> English = LanguageFiles.Read("en");

    public static TheoryData<string> Others => [.. LanguageFiles.Others];

    [Fact]
    public void There_is_a_second_language() => Assert.Contains("de", LanguageFiles.Others);

    [Theory]
    [MemberData(nameof(Others))]
    public void A_language_has_the_keys_of_the_English_file_in_the_same_order(string language)
    {
        Assert.Equal(English.Keys, LanguageFiles.Read(language).Keys);
        Assert.Equal(LanguageFiles.KeysInFile("en"), LanguageFiles.KeysInFile(language));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void A_sentence_has_the_forms_and_places_of_the_English_one(string language)
    {
        foreach (var (key, sentence) in LanguageFiles.Read(language))
        {
            Assert.Equal((key, LanguageFiles.Shape(English[key])), (key, LanguageFiles.Shape(sentence)));
        }
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void No_sentence_is_left_in_English(string language)
    {
        foreach (var (key, sentence) in LanguageFiles.Read(language))
        {
            foreach (var (_, words) in sentence.Forms())
            {
                Assert.DoesNotMatch(EnglishWords(), Place().Replace(words.Source, string.Empty));
                Assert.False(words.Source == English[key].Other.Source && Sentences().IsMatch(words.Source), $"{key}: {words.Source}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Every_word_for_damage_has_a_name_of_its_own_and_one_sentence(string language)
    {
        var texts = LanguageFiles.Read(language);
        foreach (var key in DamageTerms.All.Select(t => Glossary.Key(t.Word)))
        {
            Assert.Matches(@"^[^.]{25,199}\.$", texts[key].Other.Source);
        }

        Assert.Equal(DamageTerms.All.Count, DamageTerms.All.Select(t => texts[Glossary.Key(t.Word) + ".name"].Other.Source).Distinct().Count());
    }

    [Fact]
    public void The_English_names_of_damage_are_the_words_that_a_book_uses() =>
        Assert.All(DamageTerms.All, t => Assert.Equal(t.Word, English[Glossary.Key(t.Word) + ".name"].Other.Source));

    [Fact]
    public void No_sentence_is_idle()
    {
        var damage = DamageTerms.All.SelectMany(t => new[] { Glossary.Key(t.Word), Glossary.Key(t.Word) + ".name" });
        var said = SourceTexts.SaidInCodeAndTemplates();
        var idle = English.Keys.Except(damage).Where(key => !said.Any(pattern => pattern.IsMatch(Plain(key))));

        Assert.Empty(idle);
    }

    // A sentence about a unit that is not a gearbox is said in place of the plain one.
    private static string Plain(string key)
    {
        var plain = key.EndsWith(".of_unit", StringComparison.Ordinal) ? key[..^".of_unit".Length] : key;
        return English.ContainsKey(plain) ? plain : key;
    }

    [GeneratedRegex(@"\b(the|and|of|with|from|is|are|its|it|to|for|not|this|that)\b", RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWords();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Place();

    // Two words in a row outside places: more than a symbol, a name or a mark.
    [GeneratedRegex(@"\p{L}{2,} \p{L}{2,}")]
    private static partial Regex Sentences();
}
