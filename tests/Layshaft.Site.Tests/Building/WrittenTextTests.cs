using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Building;

/// <summary>What the pages leave out of a text is said at the text, wherever in the book it stands.</summary>
public sealed class WrittenTextTests : IDisposable
{
    private const string Link = "Look [here](javascript:alert(1)) first.";
    private readonly TempFolder _temp = new();

    public WrittenTextTests()
    {
        foreach (var (path, text) in SmallBook.Files())
        {
            _temp.Write($"book/{path}", text);
        }
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_refused_link_in_the_closing_words_is_a_problem_at_its_line()
    {
        _temp.Write("book/shop.yaml", $"{SmallBook.Shop.TrimEnd()}\nclosing_words: {Link}\n");
        Assert.Equal($"shop.yaml({LineOf("shop.yaml")},16)", Refused());
    }

    [Fact]
    public void A_refused_link_in_a_piece_of_advice_is_a_problem_at_its_line()
    {
        // The small book's shop ends with its advice.
        _temp.Write("book/shop.yaml", $"{SmallBook.Shop.TrimEnd()}\n  - when: one gear\n    words: {Link}\n");
        Assert.Equal($"shop.yaml({LineOf("shop.yaml")},12)", Refused());
    }

    [Fact]
    public void A_refused_link_in_the_words_on_driving_is_a_problem_where_they_begin()
    {
        Job($"complaint: New.\ndriving: |\n  Move it quickly.\n\n  {Link}\n");
        Assert.Equal($"jobs/2026/0009/job.yaml({LineOf("jobs/2026/0009/job.yaml") - 3},10)", Refused());
    }

    [Fact]
    public void A_refused_link_in_a_note_file_is_a_problem_at_the_link()
    {
        Job("complaint: New.\nnotes: notes.md\n");
        _temp.Write("book/jobs/2026/0009/notes.md", $"Stripped.\n\n{Link}\n");
        Assert.Equal("jobs/2026/0009/notes.md(3,1)", Refused());
    }

    private void Job(string lines) => _temp.Write("book/jobs/2026/0009/job.yaml", SmallBook.Job("a", "2026-11-01", "80 h", lines));

    private int LineOf(string path) => 1 + Array.FindIndex(File.ReadAllLines(_temp.At($"book/{path}")), l => l.Contains("javascript:", StringComparison.Ordinal));

    private string Refused()
    {
        var site = SitePreparation.Of(BookReview.OfFolder(_temp.At("book")), _temp.At("book"));
        var problem = Assert.Single(site.Problems, p => p.Severity != Severity.Notice);
        Assert.Equal("note", problem.Code);
        Assert.StartsWith("The link to 'javascript:alert(1)' is left out.", problem.Message, StringComparison.Ordinal);
        Assert.Null(site.Builder);
        return problem.Place.ToString();
    }
}
