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
    [InlineData("a: b\na: c\n", 2, "second time")]
    [InlineData("a: &x b\n", 1, "Anchors")]
    [InlineData("a: !t b\n", 1, "Anchors")]
    [InlineData("a: [b]\n", 1, "sentence")]
    [InlineData("a:\n", 1, "empty")]
    [InlineData("a: '{X}'\n", 1, "braces")]
    [InlineData("a: 'x } y'\n", 1, "braces")]
    [InlineData("a: 'x {y'\n", 1, "braces")]
    [InlineData("a:\n  one: b\n", 2, "other")]
    [InlineData("a:\n  two: b\n  other: c\n", 2, "`two`")]
    [InlineData("a:\n  other: b\n  other: c\n", 3, "second time")]
    [InlineData("- a\n", 1, "key: sentence")]
    [InlineData("", 1, "key: sentence")]
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
    [InlineData("b: x\n", "`a` is missing")]
    [InlineData("a: x\nb: y\nc: z\n", "`c`")]
    [InlineData("a: '{owner}'\nb: y\n", "`{owner}`")]
    public void Another_language_has_the_same_keys_and_no_other_places(string german, string said) =>
        Assert.Contains(said, Assert.Single(Problems("a: '{name}'\nb: y\n", german, "de")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_language_without_a_file_is_a_problem() =>
        Assert.Contains("`fr`", Problems("a: b\n", null, "fr")[0].Message, StringComparison.Ordinal);

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
        Assert.Contains("`job.hour`", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Our_own_texts_have_no_problem() => Assert.Empty(TextsLoader.Load(TemplateFolders.BesideProgram()).Problems);
}
