using Layshaft.Book.Places;

namespace Layshaft.Book.Problems;

/// <summary>Collects the problems of one run. Not safe to share between threads.</summary>
public sealed class ProblemList
{
    private readonly List<Problem> problems = [];
    private readonly HashSet<(string File, string Id)> lost = [];

    /// <summary>How many were collected.</summary>
    public int Count => problems.Count;

    /// <summary>Whether one of them stops a publish.</summary>
    public bool HasStops => problems.Any(p => p.Severity == Severity.Stops);

    /// <summary>All of them, in the order in which they were found.</summary>
    public IReadOnlyList<Problem> All => problems;

    /// <summary>Adds a problem.</summary>
    public void Add(Problem problem) => problems.Add(problem);

    /// <summary>Adds those of another list, in the order in which it found them.</summary>
    public void Add(ProblemList others)
    {
        ArgumentNullException.ThrowIfNull(others);
        problems.AddRange(others.problems);
        lost.UnionWith(others.lost);
    }

    /// <summary>Notes that an item of a file was left out because of a mistake in it, which is reported: what refers to it is right.</summary>
    internal void Lose(string file, string id) => lost.Add((file, id));

    /// <summary>Whether an item of a file was left out because of a mistake in it.</summary>
    internal bool HasLost(string file, string id) => lost.Contains((file, id));

    /// <summary>Replaces each problem.</summary>
    internal void Revise(Func<Problem, Problem> revise)
    {
        for (var i = 0; i < problems.Count; i++)
        {
            problems[i] = revise(problems[i]);
        }
    }

    /// <summary>Adds a problem that stops a publish.</summary>
    public void Add(string code, Place place, string message, string remedy = "") =>
        problems.Add(new Problem(code, place, message, remedy));

    /// <summary>Adds a note, which stops nothing.</summary>
    public void Note(string code, Place place, string message, string remedy = "") =>
        problems.Add(new Problem(code, place, message, remedy, Severity.Notice));

    /// <summary>All of them by file, line and column; equal places stay in the order in which they were found.</summary>
    public IReadOnlyList<Problem> InOrder() => [.. problems.OrderBy(p => p.Place)];
}
