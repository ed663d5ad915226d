using System.Text.RegularExpressions;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>A regional language has only the sentences in which it differs; the rest is taken from the language it belongs to.</summary>
public sealed partial class RegionalTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public static TheoryData<string> Regional => [.. LanguageFiles.Regional];

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void There_is_American_English() => Assert.Contains("en-US", LanguageFiles.Regional);

    [Theory]
    [MemberData(nameof(Regional))]
    public void Its_sentences_are_known_differ_and_have_the_same_forms_and_places(string language)
    {
        var general = LanguageFiles.Read(GeneralOf(language));
        var own = LanguageFiles.Read(language);
        Assert.NotEmpty(own);
        foreach (var (key, sentence) in own)
        {
            Assert.True(general.ContainsKey(key), key);
            Assert.Equal((key, LanguageFiles.Shape(general[key])), (key, LanguageFiles.Shape(sentence)));
            Assert.True(sentence.Forms().Select(f => f.Words.Source).Except(general[key].Forms().Select(f => f.Words.Source)).Any(), $"{key} says the same");
        }

        Assert.Equal(LanguageFiles.KeysInFile(GeneralOf(language)).Where(own.ContainsKey), LanguageFiles.KeysInFile(language));
    }

    [Fact]
    public void No_British_word_is_left_in_American_English()
    {
        var american = LanguageFiles.Read("en-US");
        var left = LanguageFiles.Read("en")
            .Select(s => (s.Key, Sentence: american.GetValueOrDefault(s.Key, s.Value)))
            .SelectMany(s => s.Sentence.Forms().Select(f => (s.Key, Words: Places().Replace(f.Words.Source, ""))))
            .Where(s => British().IsMatch(s.Words));
        Assert.Empty(left);
    }

    [Fact]
    public void It_falls_back_to_its_language_without_a_note()
    {
        var (texts, problems, notices) = TextsLoader.Load(TemplateFolders.BesideProgram(), "en-US");
        Assert.Empty(problems);
        Assert.Empty(notices);
        Assert.Equal("en-US", texts!.Language);
        Assert.Equal("Replace", texts.Say("grade.renew.name"));
        Assert.Equal("Serviceable", texts.Say("grade.reuse.name"));
        Assert.Equal("June 17, 2026", texts.Say("figures.date", ("day", "17"), ("month", "June"), ("year", "2026")));
    }

    [Fact]
    public void The_shops_own_sentences_come_over_ours_and_its_regional_ones_over_all()
    {
        _temp.Write("ours/texts/en.yaml", "a: ours\nb: ours\nc: ours\nd: ours\n");
        _temp.Write("ours/texts/en-US.yaml", "b: American\nc: American\nd: American\n");
        _temp.Write("shop/texts/en.yaml", "c: shop\nd: shop\n");
        _temp.Write("shop/texts/en-US.yaml", "d: regional\n");
        var (texts, _, notices) = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), "en-US");
        Assert.Equal(["ours", "American", "shop", "regional"], new[] { "a", "b", "c", "d" }.Select(k => texts!.Say(k)));
        Assert.Empty(notices);
    }

    [Fact]
    public void A_shop_may_write_a_region_of_its_own()
    {
        _temp.Write("ours/texts/en.yaml", "a: x\nb: y\n");
        _temp.Write("ours/texts/de.yaml", "a: deutsch\nb: deutsch\n");
        _temp.Write("shop/texts/de-AT.yaml", "b: österreichisch\n");
        var (texts, _, notices) = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), "de-AT");
        Assert.Equal(("deutsch", "österreichisch", "de-AT"), (texts!.Say("a"), texts.Say("b"), texts.Language));
        Assert.Empty(notices);
    }

    [Fact]
    public void A_region_of_a_language_that_we_do_not_have_names_what_it_lacks()
    {
        _temp.Write("ours/texts/en.yaml", "a: x\nb: y\n");
        _temp.Write("shop/texts/cy.yaml", "a: cymraeg\n");
        _temp.Write("shop/texts/cy-GB.yaml", "a: rhanbarth\n");
        var (texts, _, notices) = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), "cy-GB");
        Assert.Equal(("rhanbarth", "y"), (texts!.Say("a"), texts.Say("b")));
        Assert.Contains("'b' is missing", Assert.Single(notices).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_regional_file_with_an_unknown_key_is_a_problem_with_its_place()
    {
        _temp.Write("ours/texts/en.yaml", "report.a: x\n");
        _temp.Write("shop/texts/en-US.yaml", "reprot.a: y\n");
        var problem = Assert.Single(TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), "en-US").Problems);
        Assert.Equal(("texts/en-US.yaml", 1), (problem.File, problem.Line));
        Assert.Contains("Did you mean 'report.a'?", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_names_the_region_in_its_language_attribute()
    {
        var review = DemoBook.With("shop.yaml", shop => "language: en-US\n" + shop);
        var (texts, problems, _) = TextsLoader.Load(TemplateFolders.BesideProgram(), review.Assessment!.Book.Shop.Language);
        Assert.Empty(problems);
        var (_, html) = DemoBook.Pages(DemoBook.Composition(review, texts), p => p.EndsWith("0615/index.html", StringComparison.Ordinal)).Single();
        Assert.Contains("<html lang=\"en-US\">", html, StringComparison.Ordinal);
        Assert.Contains("June 8, 2026", html, StringComparison.Ordinal);
    }

    private static string GeneralOf(string language) => language[..language.IndexOf('-', StringComparison.Ordinal)];

    [GeneratedRegex(@"\b(tyres?|layshafts?|crown wheels?|propshafts?|\w*colour\w*|grey|vapour|labour|manoeuv\w*|(kilo|milli)?metres|renew\w*|floats?|stripp\w+|workshop|callipers?|scrutin\w+|lifed|towards|centres?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex British();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Places();
}
