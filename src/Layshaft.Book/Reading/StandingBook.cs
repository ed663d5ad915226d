using Layshaft.Book.Checks;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Book.Reading;

/// <summary>
/// All of a book but its jobs. Jobs are read against it some at a time, so that ten seasons of them need never be in memory
/// together.
/// </summary>
public sealed class StandingBook
{
    private readonly Draft draft;

    private StandingBook(Draft draft, Shop shop)
    {
        this.draft = draft;
        Book = draft.ToBook(shop);
        JobFiles = [.. BookLayout.JobFiles(draft.Files)];
    }

    /// <summary>The book's files.</summary>
    public IBookFiles Files => draft.Files;

    /// <summary>What was read: a book without jobs.</summary>
    public ShopBook Book { get; }

    /// <summary>The paths of all jobs' files, in order.</summary>
    public IReadOnlyList<string> JobFiles { get; }

    /// <summary>Reads it.</summary>
    /// <param name="files">The book's files.</param>
    /// <param name="problems">What was already found; receives what is wrong with where files are.</param>
    /// <param name="found">Receives what is wrong in them.</param>
    /// <returns>Null when something stops it.</returns>
    public static StandingBook? Read(IBookFiles files, ProblemList problems, ProblemList found)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(problems);
        ArgumentNullException.ThrowIfNull(found);
        BookLayout.Check(files, problems);
        var (draft, isComplete) = BookReader.ReadStanding(files, found);
        BookChecks.Standing(draft, found);
        return !problems.HasStops && !found.HasStops && isComplete && draft.Shop is { } shop ? new StandingBook(draft, shop) : null;
    }

    /// <summary>
    /// The book that was read and checked before, of which no file but those of jobs has changed since: each of its records is read when it
    /// is asked for, and nothing is checked once more.
    /// </summary>
    /// <param name="files">The book's files.</param>
    /// <param name="problems">Receives what is wrong with where files are; nothing else is told.</param>
    /// <returns>Null when something stops it.</returns>
    /// <remarks>A record that is asked for and can be read no longer is an <see cref="IOException"/>.</remarks>
    public static StandingBook? Recall(IBookFiles files, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(problems);
        BookLayout.Check(files, problems);
        var draft = BookReader.RecallStanding(files);
        return !problems.HasStops && draft.Shop is { } shop ? new StandingBook(draft, shop) : null;
    }

    /// <summary>Reads jobs without asking whether they fit the book.</summary>
    /// <param name="paths">The paths of their files.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>Those that could be read, by day of receipt, then number.</returns>
    public IReadOnlyList<Job> ReadJobs(IReadOnlyList<string> paths, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(problems);
        return BookReader.ReadJobs(draft, paths, problems);
    }

    /// <summary>Reads all jobs of some units and checks that everything in them fits the book.</summary>
    /// <param name="paths">The paths of their files.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>By day of receipt, then number; null when something stops them.</returns>
    public IReadOnlyList<Job>? ReadAndCheck(IReadOnlyList<string> paths, ProblemList problems)
    {
        var jobs = ReadJobs(paths, problems);
        BookChecks.Jobs(draft with { Jobs = jobs }, problems);
        return problems.HasStops ? null : jobs;
    }
}
