using Layshaft.Site.Html;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Templates;

/// <summary>What templates may do, and what becomes of what they print.</summary>
public sealed class TemplateTests
{
    private static readonly Texts Words = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;

    private sealed record Part(string Name, string? Note = null);

    private sealed record Page(string Title, RawHtml Chart, IReadOnlyList<Part> Parts, int Count = 0, double Ratio = 1.5, bool Watched = false);

    /// <summary>A model that could be written to, were templates allowed.</summary>
    private sealed class Open
    {
        public string Title { get; set; } = "as it was";

        public List<string> Names { get; } = ["first"];

        public Dictionary<string, string> Map { get; } = new() { ["key"] = "as it was" };
    }

    private static readonly Page Sample = new("Dog & <ring> \"A\" 'b'", new("<svg></svg>"), [new("<i>4th</i>", "ok"), new("5th")]);

    private static TemplateEngine Engine(params (string Name, string Text)[] files) =>
        new(TemplateSet.Parse(files.ToDictionary(f => f.Name, f => f.Text)), Words);

    private static string Html(object page, params (string Name, string Text)[] files)
    {
        var result = Engine(files).Render(files[0].Name, page);
        Assert.Empty(result.Problems);
        return result.Html!;
    }

    private static TemplateProblem Problem(object page, params (string Name, string Text)[] files)
    {
        var result = Engine(files).Render(files[0].Name, page);
        Assert.Null(result.Html);
        return Assert.Single(result.Problems);
    }

    [Fact]
    public void Values_are_escaped_and_the_templates_own_text_is_not() =>
        Assert.Equal(
            "<h1 title=\"Dog &amp; &lt;ring&gt; &quot;A&quot; &#39;b&#39;\">Dog &amp; &lt;ring&gt; &quot;A&quot; &#39;b&#39;</h1>",
            Html(Sample, ("a.html", "<h1 title=\"{{ page.title }}\">{{ page.title }}</h1>")));

    [Theory]
    [InlineData("{{ \"<b>\" }}")]
    [InlineData("{{ $\"{page.title}<b>\" }}")]
    [InlineData("{{ x = page.title; x }}")]
    [InlineData("{{ [page.title][0] }}")]
    [InlineData("{{ {a: page.title}.a }}")]
    [InlineData("{{ page.title ?? 1 }}")]
    [InlineData("{{ if page.watched; else; page.title; end }}")]
    [InlineData("{{ case 1; when 1; page.title; end }}")]
    [InlineData("{{ for p in page.parts }}{{ p.name }}{{ end }}")]
    [InlineData("{{ page.watched ? 1 : page.title }}")]
    [InlineData("{{ say \"figures.both\" { first: page.title, second: \"<s>\" } }}")]
    [InlineData("{{ page.chart | say ?? page.title }}{{ page.title }}")]
    public void No_way_of_printing_lets_markup_through(string template)
    {
        var result = Engine(("a.html", template)).Render("a.html", Sample);
        Assert.DoesNotContain('<', result.Html ?? string.Empty);
    }

    [Fact]
    public void Raw_markup_passes_as_it_stands() => Assert.Equal("<p><svg></svg></p>", Html(Sample, ("a.html", "<p>{{ page.chart }}</p>")));

    [Fact]
    public void An_included_part_is_escaped_once() =>
        Assert.Equal(
            "<ul><li><b>&lt;i&gt;4th&lt;/i&gt;</b><svg></svg></li><li><b>5th</b><svg></svg></li></ul>",
            Html(Sample,
                ("a.html", "<ul>{{ for p in page.parts }}{{ include \"parts/row.html\" p }}{{ end }}</ul>"),
                ("parts/row.html", "<li>{{ include \"bold.html\" $0.name }}{{ page.chart }}</li>"),
                ("bold.html", "<b>{{ $0 }}</b>")));

    [Fact]
    public void Whole_numbers_print_and_nothing_prints_as_nothing() =>
        Assert.Equal("12|", Html(Sample with { Count = 12 }, ("a.html", "{{ page.count }}|{{ page.parts[1].note }}")));

    [Fact]
    public void Lists_know_their_size() =>
        Assert.Equal("2 full", Html(Sample, ("a.html", "{{ page.parts.size }} {{ if page.parts.empty? }}empty{{ else }}full{{ end }}")));

    [Theory]
    [InlineData("{{ page.ratio }}", "Double")]
    [InlineData("{{ page.watched }}", "Boolean")]
    [InlineData("{{ page.parts }}", "not text")]
    [InlineData("{{ page }}", "not text")]
    [InlineData("{{ 0.5 }}", "Double")]
    public void What_is_not_text_is_not_printed(string template, string said) =>
        Assert.Contains(said, Problem(Sample, ("a.html", template)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("a\nbb{{ pagge.title }}", 2, 6)]
    [InlineData("{{ page.titel }}", 1, 9)]
    [InlineData("{{ page.parts[0].nam }}", 1, 18)]
    [InlineData("{{ nowhere }}", 1, 4)]
    [InlineData("{{ page.parts[1].note.x }}", 1, 18)]
    [InlineData("{{ date.now }}", 1, 4)]
    [InlineData("{{ page.title | string.upcase }}", 1, 17)]
    public void A_typing_mistake_is_a_problem_with_its_place(string template, int line, int column)
    {
        var problem = Problem(Sample, ("a.html", template));
        Assert.Equal(("a.html", line), (problem.File, problem.Line));
        Assert.InRange(problem.Column, column - 1, column + 8);
        Assert.NotEmpty(problem.Message);
        Assert.DoesNotContain("error", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_in_an_included_part_names_the_part()
    {
        var problem = Problem(Sample, ("a.html", "\n{{ include \"b.html\" }}"), ("b.html", "x\n\n{{ page.oops }}"));
        Assert.Equal(("b.html", 3), (problem.File, problem.Line));
    }

    [Theory]
    [InlineData("{{ include \"../../etc/passwd\" }}")]
    [InlineData("{{ include \"/etc/passwd\" }}")]
    [InlineData("{{ include \"nosuch.html\" }}")]
    [InlineData("{{ include page }}")]
    public void Only_templates_of_the_folders_are_included(string template) =>
        Assert.Equal(("a.html", 1), (Problem(Sample, ("a.html", template)) is var p ? (p.File, p.Line) : default));

    [Theory]
    [InlineData("{{ while true; end }}", "while")]
    [InlineData("{{ capture x }}a{{ end }}", "capture")]
    [InlineData("{{ func f; ret 1; end }}", "include")]
    [InlineData("{{ with page }}{{ title }}{{ end }}", "full name")]
    [InlineData("{{ import page }}", "full name")]
    [InlineData("{{ tablerow x in page.parts }}{{ end }}", "rows")]
    [InlineData("{{ 1 + 1 }}", "compute")]
    [InlineData("{{ page.title * 100000000 }}", "compute")]
    [InlineData("{{ for i in 1..1000000000 }}x{{ end }}", "compute")]
    [InlineData("{{ x = 1; x += 1 }}", "compute")]
    [InlineData("{{ x = 1; x++ }}", "compute")]
    [InlineData("{{ -page.count }}", "compute")]
    [InlineData("{{ page.title = \"x\" }}", "member")]
    [InlineData("{{ page.parts[0] = 1 }}", "member")]
    [InlineData("{{ this }}", "this")]
    public void Templates_neither_compute_nor_write(string template, string said)
    {
        var problems = TemplateSet.Parse(new Dictionary<string, string> { ["a.html"] = template }).Problems;
        Assert.Contains(problems, p => p.Message.Contains(said, StringComparison.Ordinal) && p.Line == 1 && p.Column > 1);
    }

    [Theory]
    [InlineData("{{ page = 1 }}")]
    [InlineData("{{ x = page; readonly x; x = 2 }}")]
    public void Given_names_stay_what_they_are(string template) => Assert.Equal("a.html", Problem(Sample, ("a.html", template)).File);

    [Fact]
    public void Nothing_that_a_model_holds_is_changed_even_where_the_rules_of_templates_would_miss_it()
    {
        var model = new Open();
        var context = new PageContext([], default);
        context.PushGlobal(new Scriban.Runtime.ScriptObject { ["page"] = model });
        foreach (var write in new[] { "page.title = 'x'", "page.names[0] = 'x'", "page.map.key = 'x'", "page.map['key'] = 'x'" })
        {
            var template = Scriban.Template.Parse("{{ " + write + " }}");
            Assert.ThrowsAny<Scriban.Syntax.ScriptRuntimeException>(() => template.Render(context));
        }

        Assert.Equal(("as it was", "first", "as it was"), (model.Title, model.Names[0], model.Map["key"]));
    }

    [Theory]
    [InlineData("<p>{{ if page.watched }}", "end")]
    [InlineData("{{ page. }}", "")]
    public void A_template_that_cannot_be_parsed_is_a_problem(string template, string said) =>
        Assert.Contains(said, Engine(("a.html", template)).Render("a.html", Sample).Problems[0].Message, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void A_template_that_includes_itself_stops_with_a_problem() =>
        Assert.Contains("recursive", Problem(Sample, ("a.html", "{{ include \"a.html\" }}")).Message, StringComparison.Ordinal);

    [Fact]
    public void Deep_nesting_within_parts_that_include_themselves_does_not_end_the_process()
    {
        var nested = string.Concat(Enumerable.Repeat("{{ if true }}", 120)) + "{{ include \"a.html\" }}" + string.Concat(Enumerable.Repeat("{{ end }}", 120));
        Assert.Equal("a.html", Problem(Sample, ("a.html", nested)).File);
    }

    [Fact]
    public void A_page_longer_than_the_librarys_own_limit_is_whole()
    {
        var page = Sample with { Parts = [.. Enumerable.Range(0, 30_000).Select(_ => new Part(new string('x', 60)))] };
        var html = Html(page, ("a.html", "{{ for p in page.parts }}{{ p.name }}{{ end }}."));
        Assert.Equal((30_000 * 60) + 1, html.Length);
        Assert.EndsWith(".", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Loops_within_loops_may_pass_a_thousand_turns()
    {
        var page = Sample with { Parts = [.. Enumerable.Repeat(new Part("x"), 60)] };
        var html = Html(page, ("a.html", "{{ for a in page.parts }}{{ for b in page.parts }}{{ b.name }}{{ end }}{{ end }}"));
        Assert.Equal(3_600, html.Length);
    }

    [Fact]
    public void A_page_that_takes_too_long_is_stopped_and_is_a_problem()
    {
        var page = Sample with { Parts = [.. Enumerable.Repeat(new Part("x"), 10_000)] };
        const string Endless = "{{ for a in page.parts }}{{ for b in page.parts }}{{ for c in page.parts }}{{ x = 1 }}{{ end }}{{ end }}{{ end }}";
        var set = TemplateSet.Parse(new Dictionary<string, string> { ["a.html"] = Endless });
        var result = new TemplateEngine(set, Words, TimeSpan.FromMilliseconds(20)).Render("a.html", page);
        Assert.Contains("stopped", Assert.Single(result.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cancelled_rendering_says_so_as_usual() =>
        Assert.Throws<OperationCanceledException>(() =>
            Engine(("a.html", "{{ for p in page.parts }}x{{ end }}")).Render("a.html", Sample, new CancellationToken(true)));

    [Fact]
    public void Threads_share_an_engine_and_get_the_same_page()
    {
        var engine = Engine(
            ("a.html", "{{ x = page.title }}{{ for p in page.parts }}{{ include \"b.html\" p }}{{ end }}{{ x }}"), ("b.html", "{{ y = $0.name }}{{ y }};"));
        var pages = Enumerable.Range(0, 200).AsParallel().AsOrdered()
            .Select(i => engine.Render("a.html", Sample with { Title = $"<{i}>" }).Html).ToList();
        Assert.Equal(Enumerable.Range(0, 200).Select(i => $"&lt;i&gt;4th&lt;/i&gt;;5th;&lt;{i}&gt;"), pages);
    }
}
