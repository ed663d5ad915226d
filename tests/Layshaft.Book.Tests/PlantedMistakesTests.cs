using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

public class PlantedMistakesTests
{
    [Fact]
    public void The_small_book_has_no_problems()
    {
        var read = Books.Small();

        Assert.Empty(read.Problems);
        Assert.NotNull(read.Book);
        Assert.Single(read.Book.Jobs);
    }

    [Fact]
    public void Every_planted_mistake_is_found_at_its_line_and_column_in_one_run()
    {
        var expected = File.ReadAllLines(Books.Folder("ThirtyMistakes.expected.txt"));

        var found = BookReader.ReadFolder(Books.Folder("ThirtyMistakes")).Problems.Select(p => $"{p.Place} {p.Code}").ToArray();

        Assert.True(expected.Length >= 30);
        Assert.Equal(expected, found);
    }

    [Fact]
    public void Every_problem_says_what_to_do_or_says_it_all()
    {
        var problems = BookReader.ReadFolder(Books.Folder("ThirtyMistakes")).Problems;

        Assert.All(problems, p => Assert.EndsWith(".", p.Message, StringComparison.Ordinal));
        Assert.All(problems.Where(p => p.Code is not ("photo-not-listed" or "calibration-overdue")), p => Assert.NotEqual(string.Empty, p.Remedy));
    }
}
