using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

/// <summary>Mistakes that YAML takes for something else, told by their cause and with what to write.</summary>
public class TextMistakeTests
{
    private const string Job = "jobs/2026/0001/job.yaml";

    [Theory]
    [InlineData("hard to select # 3rd", true)]
    [InlineData("hard to select #3rd", true)]
    [InlineData("hard to select  # said on the telephone", false)]
    [InlineData("hard to select    # said on the telephone", false)]
    [InlineData("\"hard to select # 3rd\"", false)]
    [InlineData("hard to select#3rd", false)]
    public void A_comment_one_space_behind_a_free_text_is_noted(string complaint, bool noted)
    {
        var read = Books.SmallWith(Job, text => Replace(text, "complaint: ", $"complaint: {complaint}"));

        var notes = read.Problems.Where(p => p.Code == "hash-in-text").ToArray();
        Assert.Equal(noted ? 1 : 0, notes.Length);
        Assert.All(notes, n => Assert.Equal((Severity.Notice, 4, 12), (n.Severity, n.Place.Line, n.Place.Column)));
        Assert.All(notes, n => Assert.Contains("'hard to select'", n.Message, StringComparison.Ordinal));
        Assert.NotNull(read.Book);
    }

    [Theory]
    [InlineData("use: 18.5 h # on the meter")]
    [InlineData("technician: jo # all day")]
    [InlineData("received: 2026-03-02 # by van")]
    public void A_comment_behind_any_other_value_is_fine(string line)
    {
        var read = Books.SmallWith(Job, text => Replace(text, line[..(line.IndexOf(':', StringComparison.Ordinal) + 2)], line));

        Assert.Empty(read.Problems);
    }

    [Theory]
    [InlineData("demo-data")]
    [InlineData("src/Layshaft.Cli/StarterBook")]
    public void Our_own_books_have_no_doubtful_text(string book)
    {
        string[] doubtful = ["hash-in-text", "comma-in-list", "look-alike"];

        Assert.DoesNotContain(BookReader.ReadFolder(OwnBooks.Folder(book)).Problems, p => doubtful.Contains(p.Code));
    }

    [Theory]
    [InlineData("technician: ", "technician: j\u200Bo", 13, "Write jo.")]
    [InlineData("use: ", "use: 18.5\u2009h", 6, "Write 18.5 h.")]
    [InlineData("use: ", "use: \uFF11\uFF18.5 h", 6, "Write 18.5 h.")]
    [InlineData("use: ", "\u201Cuse\u201D: 18.5 h", 1, "Write 'use: …'.")]
    [InlineData("use: ", "use\u00A0: 18.5 h", 4, "Write 'use: …'.")]
    public void A_look_alike_in_a_value_or_a_name_is_the_one_mistake(string from, string to, int column, string remedy)
    {
        var read = Books.SmallWith(Job, text => Replace(text, from, to));

        var problem = Assert.Single(read.Problems);
        Assert.Equal(("look-alike", column, remedy), (problem.Code, problem.Place.Column, problem.Remedy));
    }

    [Fact]
    public void A_text_split_by_a_comma_in_brackets_is_noted()
    {
        var read = Books.SmallWith("shop.yaml", text => text + "cautions: [Check the level, and look again, Fit new seals]\n");

        var note = Assert.Single(read.Problems, p => p.Code == "comma-in-list");
        Assert.Contains("'and look again'", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tight_colon_in_braces_is_not_told_a_second_time_as_a_missing_field()
    {
        var read = Books.SmallWith("shop.yaml", text => text.Replace("{id: jo, name: Jo}", "{id:jo, name: Jo}", StringComparison.Ordinal));

        var problem = Assert.Single(read.Problems);
        Assert.Equal(("tight-colon", "Write 'id: jo'."), (problem.Code, problem.Remedy));
    }

    [Fact]
    public void A_value_remembers_that_a_comment_cut_it()
    {
        var root = Yaml.NodeReader.Read(Job, "complaint: hard # 3rd\n", new ProblemList())!;

        Assert.True(Assert.IsType<Yaml.ScalarNode>(Assert.IsType<Yaml.MapNode>(root).Entries[0].Value).Cut);
    }

    // The line that begins so, whole.
    private static string Replace(string text, string start, string line)
    {
        var from = text.IndexOf($"\n{start}", StringComparison.Ordinal) + 1;
        return new StringBuilder(text).Remove(from, text.IndexOf('\n', from) - from).Insert(from, line).ToString();
    }
}
