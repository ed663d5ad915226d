using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Assessment;

/// <summary>What a whole book comes to: everything that pages quote, worked out once.</summary>
/// <param name="Book">The book.</param>
/// <param name="Jobs">Its jobs, judged, by number.</param>
/// <param name="Lives">The lives of its parts.</param>
/// <param name="Problems">What the working-out found wrong in the book, by file and line.</param>
public sealed record BookAssessment(ShopBook Book, IReadOnlyDictionary<string, JobAssessment> Jobs, LifeAssessment Lives, IReadOnlyList<Problem> Problems)
{
    /// <summary>Works a book out.</summary>
    public static BookAssessment Of(ShopBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var problems = new ProblemList();
        var jobs = book.Jobs.ToDictionary(j => j.Number, j => JobAssessment.Of(book, j, problems), StringComparer.Ordinal);
        var lives = LifeAssessment.Of(book, jobs, problems);
        return new BookAssessment(book, jobs, lives, problems.InOrder());
    }
}
