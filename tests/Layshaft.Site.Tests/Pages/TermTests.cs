using System.Xml.Linq;
using Layshaft.Book.Records;
using Layshaft.Site.Charts.Terms;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Pages;

/// <summary>The words for damage: each has a sentence and a drawing of its own.</summary>
public class TermTests
{
    private static readonly Texts English = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;

    public static TheoryData<string> Words() => [.. DamageTerms.All.Select(t => t.Word)];

    private static DamageTerm Term(string word) => DamageTerms.All.Single(t => t.Word == word);

    [Theory]
    [MemberData(nameof(Words))]
    public void Every_word_has_one_sentence(string word)
    {
        var sentence = English.Say(Glossary.Key(word));

        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(". ", sentence, StringComparison.Ordinal);
        Assert.InRange(sentence.Length, 30, 200);
    }

    [Fact]
    public void No_two_words_share_a_sentence() =>
        Assert.Equal(DamageTerms.All.Count, DamageTerms.All.Select(t => English.Say(Glossary.Key(t.Word))).Distinct(StringComparer.Ordinal).Count());

    [Theory]
    [MemberData(nameof(Words))]
    public void A_drawing_is_named_and_obeys_the_strict_content_policy(string word)
    {
        var root = XElement.Parse(TermDrawing.Draw(Term(word), "Wort").Markup);

        Assert.Equal("Wort", root.Attribute("aria-label")!.Value);
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.DoesNotContain(root.DescendantsAndSelf().Attributes(), a => a.Name.LocalName is "style" or "id");
        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName is "style" or "script" or "image");
        Assert.NotEmpty(root.Elements());
    }

    [Fact]
    public void Each_word_has_a_drawing_of_its_own()
    {
        var drawings = DamageTerms.All.Select(t => string.Concat(XElement.Parse(TermDrawing.Draw(t, t.Word).Markup).Elements().Select(e => e.ToString())));

        Assert.Equal(DamageTerms.All.Count, drawings.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_word_without_a_drawing_is_refused() =>
        Assert.Throws<ArgumentException>(() => TermDrawing.Draw(new DamageTerm("worn out", TermFamily.Bearing), "worn out"));
}
