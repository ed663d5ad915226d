using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Assessment;

/// <summary>What a whole book comes to: everything that pages quote, worked out once.</summary>
/// <param name="Book">The book.</param>
/// <param name="Jobs">Its jobs, judged, by number; of a whole book anew each time one is asked for.</param>
/// <param name="Lives">The lives of its parts.</param>
/// <param name="Gearing">The gearing of its events, each worked out when it is asked for.</param>
/// <param name="Problems">What the working-out found wrong in the book, by file and line.</param>
public sealed record BookAssessment(
    ShopBook Book,
    IReadOnlyDictionary<string, JobAssessment> Jobs,
    LifeAssessment Lives,
    BookGearing Gearing,
    IReadOnlyList<Problem> Problems)
{
    /// <summary>Works out a part of a book: some units that no others touch, with all their jobs.</summary>
    /// <param name="part">The part.</param>
    /// <param name="standing">The gearing of the book's cars and gearboxes.</param>
    public static BookAssessment OfPart(ShopBook part, BookGearing standing)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(standing);
        var problems = new ProblemList();
        var jobs = part.Jobs.ToDictionary(j => j.Number, j => JobAssessment.Of(part, j, problems), StringComparer.Ordinal);
        var lives = LifeAssessment.Of(part, jobs, problems);
        LifedPart.Check(lives, problems);
        var gearing = standing.OfEvents(part, problems);
        return new BookAssessment(part, jobs, lives, gearing, problems.InOrder());
    }

    /// <summary>Works a book out.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files, for figures that stand in files of their own.</param>
    public static BookAssessment Of(ShopBook book, IBookFiles files)
    {
        ArgumentNullException.ThrowIfNull(book);
        var problems = new ProblemList();
        var jobs = new JudgedJobs(book, problems);

        // Reads every job once, which tells the problems of each.
        var lives = LifeAssessment.Of(book, jobs, problems);
        jobs.Quiet();
        LifedPart.Check(lives, problems);
        var gearing = BookGearing.Of(book, files, problems);
        return new BookAssessment(book, jobs, lives, gearing, problems.InOrder());
    }
}
