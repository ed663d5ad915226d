using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Book.Reading;

/// <summary>What came of reading a book.</summary>
/// <param name="Book">The book; null when a problem stops it from being used.</param>
/// <param name="Problems">All problems and notes, by file and line.</param>
public sealed record BookRead(ShopBook? Book, IReadOnlyList<Problem> Problems)
{
    /// <summary>Whether anything must be fixed.</summary>
    public bool HasProblems => Problems.Any(p => p.Severity != Severity.Notice);
}
