using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>A key that has a new name still works in a shop's own files, and a note names the new one.</summary>
public sealed class RenamedKeyTests : IDisposable
{
    private const string Old = "gearing.head.never";
    private const string New = "gearing.head.maximum_speed";
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void The_new_names_exist_and_the_old_ones_do_not()
    {
        var english = LanguageFiles.Read("en").Keys.ToHashSet(StringComparer.Ordinal);
        Assert.All(RenamedKeys.NewNames, n => Assert.True(english.Contains(n.Value) && !english.Contains(n.Key), n.Key));
    }

    [Fact]
    public void A_shops_sentence_under_the_old_name_is_used_and_noted_at_its_place()
    {
        _temp.Write("shop/texts/en.yaml", $"report.complaint: Yours\n{Old}: SHOP\n");
        var (texts, problems, notices) = Load();
        Assert.Empty(problems);
        Assert.Equal("SHOP", texts!.Say(New));
        var note = Assert.Single(notices);
        Assert.Equal(("texts/en.yaml", 2, 1), (note.File, note.Line, note.Column));
        Assert.Contains($"'{Old}' is now called '{New}'", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_with_both_names_means_the_new_one()
    {
        _temp.Write("shop/texts/en.yaml", $"{Old}: OLD\n{New}: NEW\n");
        var (texts, _, notices) = Load();
        Assert.Equal("NEW", texts!.Say(New));
        Assert.Single(notices);
    }

    [Theory]
    [InlineData("<p>\n{{ say \"" + Old + "\" }}</p>", 2, 9)]
    [InlineData("<p>{{ say '" + Old + "' }}</p>", 1, 12)]
    public void A_shops_template_may_say_the_old_name_and_is_noted_at_its_place(string template, int line, int column)
    {
        _temp.Write("shop/a.html", template);
        var (texts, _, notices) = Load();
        var note = Assert.Single(notices);
        Assert.Equal(("a.html", line, column), (note.File, note.Line, note.Column));
        var engine = new TemplateEngine(TemplateSet.Parse(new Dictionary<string, string> { ["a.html"] = template }), texts!);
        Assert.Contains(texts!.Say(New), engine.Render("a.html", "").Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_of_another_key_is_not_an_old_name()
    {
        _temp.Write("shop/a.html", "<p>{{ say \"reference.head.gear\" }} gearing.head.never</p>");
        Assert.Empty(Load().Notices);
    }

    private TextsResult Load() => TextsLoader.Load(TemplateFolders.BesideProgram(_temp.At("shop")));
}
