using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Pages.ShopPages.Tallies;

/// <summary>
/// What the shop's own pages take from jobs that are done with. That of a book is that of its parts together, so a part that
/// has not changed need not be read again.
/// </summary>
/// <param name="Units">Its units.</param>
/// <param name="Jobs">Its jobs.</param>
/// <param name="Lives">The lives of its parts, in the order in which they first appear.</param>
/// <param name="Newest">The newest day of anything done in its jobs; null without any.</param>
public sealed record ShopTally(IReadOnlyList<UnitTally> Units, IReadOnlyList<JobTally> Jobs, IReadOnlyList<LifeTally> Lives, DateOnly? Newest)
{
    /// <summary>The tally of a book, or of a part of one that no other part touches.</summary>
    /// <param name="assessment">The book, worked out.</param>
    public static ShopTally Of(BookAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var book = assessment.Book;
        return new ShopTally(
            [.. book.Units.Values.Select(u => UnitTally.Of(assessment, u))],
            [.. book.Jobs.Select(j => JobTally.Of(book, j))],
            LifeTally.Of(assessment.Lives),
            BookDay.OfJobs(book.Jobs));
    }

    /// <summary>Units in the order in which the book has them.</summary>
    /// <param name="units">The units.</param>
    public static IReadOnlyList<UnitTally> InOrder(IEnumerable<UnitTally> units) => [.. units.OrderBy(u => u.Unit, StringComparer.Ordinal)];
}
