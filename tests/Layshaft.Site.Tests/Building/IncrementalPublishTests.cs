using CsCheck;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Building;

/// <summary>A publish that makes only what changed, against one that makes everything.</summary>
public sealed class IncrementalPublishTests
{
    [Fact]
    public void Whatever_changes_in_a_book_the_site_is_the_one_that_a_clean_publish_gives() =>
        Gen.Select(Gen.Int[0, EditedBook.Kinds], Gen.Int[0, 9]).Array[1, 4].Array[1, 3].Sample(
            rounds =>
            {
                using var book = new EditedBook();
                book.Again();
                foreach (var changes in rounds)
                {
                    foreach (var (kind, value) in changes)
                    {
                        book.Change(kind, value);
                    }

                    book.Again();
                    Assert.Equal(book.ProblemsOfTheWhole(), book.Problems);
                    Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
                }
            },
            iter: 5,
            threads: 1);

    [Fact]
    public void A_change_in_one_job_makes_the_pages_of_its_unit_and_of_the_shop_and_no_other()
    {
        using var book = new EditedBook();
        book.Again();
        book.Change(15, 5);
        var result = book.Again();
        var all = book.Tree("site").Count;
        Assert.True(result.Made < all / 2, $"{result.Made} of {all} files were made");
        Assert.All(result.Changed, path => Assert.True(path.StartsWith("customers/", StringComparison.Ordinal) || path.StartsWith("shop/", StringComparison.Ordinal), path));
        Assert.NotEmpty(result.Changed);
        Assert.Single(result.Changed.Where(p => p.StartsWith("customers/", StringComparison.Ordinal)).Select(p => p.Split('/')[1]).Distinct());
    }

    [Fact]
    public void A_part_that_came_from_another_unit_joins_the_pages_of_both()
    {
        using var book = new EditedBook();
        book.Change(12, 0);
        book.Again();
        book.Change(14, 3);
        book.Again();
        Assert.Equal(book.Tree(book.Clean()), book.Tree("site"));
    }

    [Fact]
    public void Nothing_is_made_when_nothing_changed()
    {
        using var book = new EditedBook();
        book.Again();
        var result = book.Again();
        Assert.Equal((PublishOutcome.Unchanged, 0), (result.Outcome, result.Made));
    }
}
