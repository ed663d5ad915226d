using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>The words of the pages.</summary>
public sealed class TextsTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    private Texts Load(string english)
    {
        _temp.Write("ours/texts/en.yaml", english);
        var result = TextsLoader.Load(new(_temp.At("ours")));
        Assert.Empty(result.Problems);
        return result.Texts!;
    }

    private IReadOnlyList<TemplateProblem> Problems(string english, string? shop = null, string language = "en")
    {
        _temp.Write("ours/texts/en.yaml", english);
        _temp.Write($"shop/texts/{(shop is null ? "xx" : language)}.yaml", shop ?? "a: b\n");
        var result = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), language);
        Assert.Null(result.Texts);
        return result.Problems;
    }

    [Fact]
    public void Places_are_filled() =>
        Assert.Equal("4th of 6 & {x}", Load("a.b: \"{gear} of {count} & {odd}\"\n").Say("a.b", ("gear", "4th"), ("count", 6), ("odd", "{x}")));

    [Theory]
    [InlineData(0, "no events")]
    [InlineData(1, "one event")]
    [InlineData(2, "2 events")]
    [InlineData(-1, "-1 events")]
    public void The_form_follows_the_count(int count, string expected) =>
        Assert.Equal(expected, Load("e:\n  zero: no events\n  one: one event\n  other: \"{count} events\"\n").Say("e", ("count", count)));

    [Fact]
    public void A_sentence_asked_for_wrongly_is_an_error_of_the_caller()
    {
        var texts = Load("a: \"{x} y\"\ne:\n  one: one\n  other: many\n");
        Assert.Throws<KeyNotFoundException>(() => texts.Say("b"));
        Assert.Throws<ArgumentException>(() => texts.Say("a"));
        Assert.Throws<ArgumentException>(() => texts.Say("a", ("x", "1"), ("z", "2")));
        Assert.Throws<ArgumentException>(() => texts.Say("a", ("x", 1.5)));
        Assert.Throws<ArgumentException>(() => texts.Say("e"));
        Assert.Throws<ArgumentException>(() => texts.Say("e", ("count", "2")));
    }

    [Theory]
    [InlineData("a: b\na: c\n", 2, "is written twice")]
    [InlineData("a: &x b\n", 1, "anchor")]
    [InlineData("a: !t b\n", 1, "anchor")]
    [InlineData("a: [b]\n", 1, "forms")]
    [InlineData("a:\n", 1, "empty")]
    [InlineData("a: '{X}'\n", 1, "braces")]
    [InlineData("a: 'x } y'\n", 1, "braces")]
    [InlineData("a: 'x {y'\n", 1, "braces")]
    [InlineData("a:\n  one: b\n", 2, "other")]
    [InlineData("a:\n  two: b\n  other: c\n", 2, "'two'")]
    [InlineData("a:\n  other: b\n  other: c\n", 3, "is written twice")]
    [InlineData("- a\n", 1, "key: text")]
    [InlineData("", 1, "key: text")]
    [InlineData("a: b\n---\na: c\n", 2, "one document")]
    [InlineData("a: 'b\n", 1, "YAML")]
    public void A_mistake_in_the_file_is_a_problem_with_its_place(string yaml, int line, string said)
    {
        var problem = Problems(yaml)[0];
        Assert.Equal("texts/en.yaml", problem.File);
        Assert.Contains(said, problem.Message, StringComparison.Ordinal);
        Assert.InRange(problem.Line, line, line + 1);
    }

    [Theory]
    [InlineData("report.a: x\nreport.b: y\nother: z\n", 3, "'other'. Remove it")]
    [InlineData("report.a: x\n\nreprot.b: z\n", 3, "Did you mean 'report.b'?")]
    [InlineData("report.a: '{owner}'\nreport.b: y\n", 1, "no value for the place '{owner}'. It has {name}, {part}.")]
    [InlineData("report.a: x\nreport.b: '{owner}'\n", 2, "no value for the place '{owner}'. It has none.")]
    public void Another_language_has_no_other_keys_and_no_other_places(string german, int line, string said)
    {
        var problem = Assert.Single(Problems("report.a: '{name} {part}'\nreport.b: y\n", german, "de"));
        Assert.Equal(("texts/de.yaml", line), (problem.File, problem.Line));
        Assert.Contains(said, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_language_of_ours_that_lacks_a_sentence_is_a_fault_of_ours()
    {
        _temp.Write("ours/texts/en.yaml", "a: x\nb: y\n");
        _temp.Write("ours/texts/de.yaml", "a: z\n");
        var result = TextsLoader.Load(new(_temp.At("ours")), "de");
        Assert.Null(result.Texts);
        Assert.Contains("'b' is missing", Assert.Single(result.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shops_own_language_says_in_English_what_it_lacks_and_names_it()
    {
        _temp.Write("ours/texts/en.yaml", "a: x\nb: y\n");
        _temp.Write("shop/texts/cy.yaml", "a: z\n");
        var result = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), "cy");
        Assert.Equal(("z", "y", "cy"), (result.Texts!.Say("a"), result.Texts.Say("b"), result.Texts.Language));
        Assert.Equal("The text 'b' is missing, so pages show it in English. Translate it from texts/en.yaml.", Assert.Single(result.Notices).Message);
    }

    [Fact]
    public void A_language_just_begun_does_not_bury_the_shop_in_notices()
    {
        _temp.Write("ours/texts/en.yaml", string.Concat(Enumerable.Range(100, 50).Select(i => $"k.{i}: x\n")));
        _temp.Write("shop/texts/cy.yaml", "k.100: z\n");
        var notices = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop")), "cy").Notices;
        Assert.Equal(13, notices.Count);
        Assert.Equal("37 more texts are missing, so pages show them in English, from 'k.113' on.", notices[^1].Message);
    }

    [Theory]
    [InlineData("'.'", false)]
    [InlineData("','", true)]
    public void A_language_brings_its_decimal_mark(string mark, bool isComma) =>
        Assert.Equal(isComma, Load($"figures.decimal_mark: {mark}\n").DecimalComma);

    [Fact]
    public void A_decimal_mark_is_a_point_or_a_comma() =>
        Assert.Contains("'.' or ','", Assert.Single(Problems("figures.decimal_mark: \";\"\n")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_language_without_a_file_is_a_problem() =>
        Assert.Contains("'fr'", Problems("a: b\n", null, "fr")[0].Message, StringComparison.Ordinal);

    [Fact]
    public void A_shop_may_change_a_single_sentence()
    {
        _temp.Write("ours/texts/en.yaml", "a: ours\nb: ours\n");
        _temp.Write("shop/texts/en.yaml", "b: shop\n");
        var texts = TextsLoader.Load(new(_temp.At("ours"), _temp.At("shop"))).Texts!;
        Assert.Equal(("ours", "shop"), (texts.Say("a"), texts.Say("b")));
        Assert.NotEqual(Load("a: ours\nb: ours\n").Fingerprint, texts.Fingerprint);
    }

    [Fact]
    public void Templates_say_texts_and_a_wrong_key_is_a_problem_with_its_place()
    {
        var texts = Load("job.hours: \"{hours} since the <last> visit\"\n");
        var set = TemplateSet.Parse(new Dictionary<string, string>
        {
            ["a.html"] = "<p>{{ say \"job.hours\" { hours: page } }}</p>",
            ["b.html"] = "\n{{ say \"job.hour\" }}",
        });
        var engine = new TemplateEngine(set, texts);
        Assert.Equal("<p>3 h since the &lt;last&gt; visit</p>", engine.Render("a.html", "3 h").Html);
        var problem = Assert.Single(engine.Render("b.html", "3 h").Problems);
        Assert.Equal(("b.html", 2), (problem.File, problem.Line));
        Assert.Contains("'job.hour'", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Our_own_texts_have_no_problem() => Assert.Empty(TextsLoader.Load(TemplateFolders.BesideProgram()).Problems);
}
