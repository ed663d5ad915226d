using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Assessment;

/// <summary>A book read and worked out, with everything that is wrong in it.</summary>
/// <param name="Files">The book's files.</param>
/// <param name="Assessment">The book, worked out; null when a problem stops it.</param>
/// <param name="Problems">Everything that is wrong or worth knowing, by file and line.</param>
public sealed record BookReview(IBookFiles Files, BookAssessment? Assessment, IReadOnlyList<Problem> Problems)
{
    /// <summary>Whether anything must be mended.</summary>
    public bool HasProblems => Problems.Any(p => p.Severity != Severity.Notice);

    /// <summary>Whether a problem keeps the book from being published.</summary>
    public bool IsStopped => Assessment is null || Problems.Any(p => p.Severity == Severity.Stops);

    /// <summary>Reads and works out the book in a folder; without a job that is not finished and has problems, which are then notes.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static BookReview OfFolder(string folder)
    {
        var problems = new ProblemList();
        var files = FolderBookFiles.Look(folder, problems);
        var looked = problems.InOrder();
        var whole = Of(files, BookReader.Read(files, problems));
        if (!whole.IsStopped || UnfinishedJobs.In(whole) is not { Count: > 0 } left)
        {
            return whole;
        }

        var rest = FolderBookFiles.Of(folder, files.All.Where(f => !left.Contains(UnfinishedJobs.FolderOf(f.Path))));
        var others = new ProblemList();
        foreach (var problem in looked.Where(p => !left.Contains(UnfinishedJobs.FolderOf(p.Place.File))))
        {
            others.Add(problem);
        }

        var without = Of(rest, BookReader.Read(rest, others));
        return without.IsStopped ? whole : without with { Problems = [.. without.Problems.Concat(UnfinishedJobs.Notes(whole, left)).OrderBy(p => p.Place)] };
    }

    /// <summary>Works out a book that was read.</summary>
    public static BookReview Of(IBookFiles files, BookRead read)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (read.Book is null)
        {
            return new BookReview(files, null, read.Problems);
        }

        var assessment = BookAssessment.Of(read.Book, files);
        return new BookReview(files, assessment, [.. read.Problems.Concat(assessment.Problems).OrderBy(p => p.Place)]);
    }
}
