using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Assessment;

/// <summary>
/// Jobs that cannot be read yet and that no customer has a page of: neither finished nor estimated, and no part was renewed. The rest of
/// the book is the same without them, so a slip in one does not stop the reports of others.
/// </summary>
internal static partial class UnfinishedJobs
{
    /// <summary>The folders of such jobs, if they have all the problems that stop a book; none otherwise.</summary>
    /// <param name="review">The whole book.</param>
    public static IReadOnlySet<string> In(BookReview review)
    {
        string[] folders = [.. review.Problems.Where(p => p.Severity == Severity.Stops).Select(p => FolderOf(p.Place.File)).Distinct()];
        return folders.All(f => IsUnfinished(f, review.Files)) ? folders.ToHashSet(StringComparer.Ordinal) : new HashSet<string>();
    }

    /// <summary>The problems of the whole book as notes, for a book that is used without those jobs.</summary>
    public static IEnumerable<Problem> Notes(BookReview whole, IReadOnlySet<string> left) => whole.Problems
        .Where(p => left.Contains(FolderOf(p.Place.File)))
        .Select(p => p with { Severity = Severity.Notice })
        .Concat(left.Select(f => new Problem("job-left-out", Place.WholeFile($"{f}/job.yaml"), "This job is not finished and has problems. The site is published without it.", "Fix its problems.") { Severity = Severity.Notice }));

    /// <summary>The first three folders of a path: those of a job.</summary>
    public static string FolderOf(string path) => string.Join('/', path.Split('/').Take(3));

    private static bool IsUnfinished(string folder, IBookFiles files) =>
        folder.StartsWith("jobs/", StringComparison.Ordinal) && files.Has($"{folder}/job.yaml") && !Shown().IsMatch(Encoding.UTF8.GetString(files.ReadLimited($"{folder}/job.yaml")));

    // By the text, because a file with a slip may not be readable as YAML.
    [GeneratedRegex(@"^[\uFEFF""'{ ]*(finished|estimate|supplements|renewed)[""' ]*:", RegexOptions.Multiline, 1000)]
    private static partial Regex Shown();
}
