using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests;

public class YamlTrapTests
{
    [Theory]
    [InlineData("no")]
    [InlineData("on")]
    [InlineData("12:30")]
    [InlineData("012")]
    [InlineData("1_000")]
    [InlineData("0x1F")]
    [InlineData("2026-03-14")]
    [InlineData(".inf")]
    public void A_plain_value_stays_the_text_that_was_written(string written)
    {
        var root = Read($"name: {written}\n", out var problems);

        Assert.Empty(problems);
        Assert.Equal(written, Assert.IsType<ScalarNode>(Assert.IsType<MapNode>(root).Entries[0].Value).Text);
    }

    [Theory]
    [InlineData("a: &x 1\nb: *x\n", "anchor", 1, 4)]
    [InlineData("a: *x\n", "alias", 1, 4)]
    [InlineData("a: !!int 3\n", "tag", 1, 4)]
    [InlineData("<<: {b: 1}\n", "merge-key", 1, 1)]
    [InlineData("a: 1\na: 2\n", "duplicate-key", 2, 1)]
    [InlineData("a: 1\n---\nb: 2\n", "second-document", 2, 1)]
    [InlineData("a:\n\tb: 1\n", "tab", 2, 1)]
    [InlineData("a: say: this\n", "colon-in-text", 1, 7)]
    [InlineData("a: {b: one: two}\n", "colon-in-text", 1, 11)]
    [InlineData("a: one:\n", "colon-in-text", 1, 7)]
    [InlineData("a: 1\nuse:92 h\nb: 2\n", "tight-colon", 2, 4)]
    [InlineData("a:\n  - b: 1\n    use:92 h\n", "tight-colon", 3, 8)]
    [InlineData("a: {use:92 h, b: 1}\n", "tight-colon", 1, 8)]
    [InlineData("a: {b: 1, c:[1 mm]}\n", "tight-colon", 1, 12)]
    [InlineData("a: 1\nuse\uFF1A92 h\nb: 2\n", "look-alike", 2, 4)]
    [InlineData("a: 1\nuse:\u00A092 h\nb: 2\n", "look-alike", 2, 5)]
    [InlineData("a:\n  -\u00A0b: 1\n    c: 2\n", "look-alike", 2, 4)]
    [InlineData("a:\n  - b: 1\n  \u2013 c: 2\n", "look-alike", 3, 3)]
    [InlineData("a: \u201Cone: two\u201D\n", "look-alike", 1, 4)]
    [InlineData("a: 1\nuse = 92 h\nb: 2\n", "equals-sign", 2, 5)]
    [InlineData("a: 1\nuse 92 h\nb: 2\n", "no-colon", 2, 1)]
    [InlineData("a: {b}\n", "no-colon", 1, 5)]
    [InlineData("a:\n  - part b\n    c:\n      - 1\n", "no-colon", 2, 3)]
    [InlineData("a: 1\n<<<<<<< ours\nb: 1\n=======\nb: 2\n>>>>>>> theirs\n", "merge-conflict", 2, 1)]
    [InlineData("a: 1\n=======\nb: 2\n", "merge-conflict", 2, 1)]
    [InlineData("a: {b: Anchor, c_d 104 km/h}\n", "no-colon", 1, 16)]
    [InlineData("a: {b: Micrometer, 0 to 25 mm, c: 1}\n", "comma-in-text", 1, 20)]
    [InlineData("a: {b: 33,5 %, c: 1}\n", "comma-in-text", 1, 11)]
    [InlineData("a: {b: one c: two}\n", "missing-comma", 1, 12)]
    [InlineData("a: {b: 1,, c: 2}\n", "stray-comma", 1, 10)]
    [InlineData("a: [b, c]]\nd: 1\n", "stray-bracket", 1, 10)]
    [InlineData("a: {b: Ring # 3, c: 1}\nd: 1\n", "hash-in-text", 1, 13)]
    [InlineData("a: hard # to\n  select\nb: 1\n", "hash-in-text", 1, 9)]
    [InlineData("a: @third\n", "sign-at-start", 1, 4)]
    [InlineData("a: >third\n", "sign-at-start", 1, 4)]
    [InlineData("a: - b\n", "list-on-line", 1, 4)]
    [InlineData("a: 1\n  b: 2\n", "indent", 2, 3)]
    [InlineData("a:\n  - b: 1\n  (  - b: 2\n", "before-dash", 3, 3)]
    [InlineData("a:\n  - {b: one, c: [1 mm, 2 mm}\nd: 1\n", "open-bracket", 2, 17)]
    [InlineData("a: {b: one, c: [1 mm, 2 mm]\nd: 1\n", "open-bracket", 1, 4)]
    [InlineData("a:\n  -b: 1\n    c: 2\n", "tight-dash", 2, 3)]
    [InlineData("a:\n  - b: 1\n   c: 2\n", "indent", 3, 4)]
    [InlineData("a: \"hard to select\nb: 1\n", "open-quote", 1, 4)]
    [InlineData("a: 'hard to select\nb: 1\n", "open-quote", 1, 4)]
    [InlineData("a: \"Third \"sticks\" when hot\"\nb: 1\n", "quote-in-text", 1, 11)]
    [InlineData("a:\n  - 'it doesn't select'\nb: 1\n", "quote-in-text", 2, 14)]
    [InlineData("a: 'it''s' worn\nb: 1\n", "quote-in-text", 1, 10)]
    [InlineData("a: \"C:\\dogs\"\nb: 1\n", "backslash", 1, 7)]
    [InlineData("a: \"one \\\" two\" # well\n - c: [1 mm\n", "open-bracket", 2, 7)]
    [InlineData("a: {b: \"one\"}\n - c: [1 mm\n", "open-bracket", 2, 7)]
    [InlineData("? [a, b]\n: c\n", "bad-key", 1, 3)]
    [InlineData("", "empty-file", 0, 0)]
    [InlineData("# only a remark\n", "empty-file", 0, 0)]
    public void What_could_change_a_meaning_is_refused_at_its_place(string text, string code, int line, int column)
    {
        Read(text, out var problems);

        var problem = Assert.Single(problems);
        Assert.Equal((code, line, column), (problem.Code, problem.Place.Line, problem.Place.Column));
    }

    [Fact]
    public void Deep_nesting_is_refused_without_harm()
    {
        Read(new string('[', 100_000), out var problems);

        Assert.Contains(Assert.Single(problems).Code, (string[])["too-deep", "not-yaml"]);
    }

    [Fact]
    public void A_file_with_too_many_values_is_refused()
    {
        Read("a: [" + string.Concat(Enumerable.Repeat("1,", 60_000)) + "1]", out var problems);

        Assert.Equal("too-many-values", Assert.Single(problems).Code);
    }

    [Theory]
    [InlineData("a: b\u0000c\n", 1, 5)]
    [InlineData("a: 1\nb: x\u202Ey\n", 2, 5)]
    public void An_invisible_character_is_refused_at_its_place(string text, int line, int column)
    {
        var problems = new ProblemList();

        Assert.Null(YamlText.Decode(Encoding.UTF8.GetBytes(text), "a.yaml", problems));

        var problem = Assert.Single(problems.InOrder());
        Assert.Equal(("hidden-character", line, column), (problem.Code, problem.Place.Line, problem.Place.Column));
    }

    [Fact]
    public void Bytes_that_are_not_utf8_are_refused_at_their_place()
    {
        var problems = new ProblemList();

        Assert.Null(YamlText.Decode([.. "a: 1\nb: "u8, 0xE9, .. "\n"u8], "a.yaml", problems));

        var problem = Assert.Single(problems.InOrder());
        Assert.Equal(("not-utf8", 2, 4), (problem.Code, problem.Place.Line, problem.Place.Column));
    }

    [Fact]
    public void A_byte_order_mark_and_windows_line_ends_are_fine()
    {
        var problems = new ProblemList();
        var text = YamlText.Decode([0xEF, 0xBB, 0xBF, .. "a: 1\r\nb: 2\r\n"u8], "a.yaml", problems);

        var map = Assert.IsType<MapNode>(NodeReader.Read("a.yaml", text!, problems));

        Assert.Empty(problems.InOrder());
        Assert.Equal(["a", "b"], map.Entries.Select(e => e.Key));
        Assert.Equal("1", Assert.IsType<ScalarNode>(map.Entries[0].Value).Text);
    }

    [Fact]
    public void A_file_over_one_mebibyte_is_refused()
    {
        var problems = new ProblemList();

        Assert.Null(YamlText.Decode(new byte[YamlText.LargestFile + 1], "a.yaml", problems));
        Assert.Equal("file-too-large", Assert.Single(problems.InOrder()).Code);
    }

    private static Node? Read(string text, out IReadOnlyList<Problem> problems)
    {
        var list = new ProblemList();
        var root = NodeReader.Read("a.yaml", text, list);
        problems = list.InOrder();
        return root;
    }
}
