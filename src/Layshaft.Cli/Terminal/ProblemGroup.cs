using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Cli.Terminal;

/// <summary>A problem with the other places of the same message, such as a gauge overdue for calibration at each reading.</summary>
/// <param name="First">The problem at its first place.</param>
/// <param name="Elsewhere">The other places, in order; empty if it occurs only here.</param>
internal sealed record ProblemGroup(Problem First, IReadOnlyList<Place> Elsewhere)
{
    /// <summary>Up to so many places each keep a line of their own.</summary>
    private const int MostApart = 3;

    /// <summary>The other places, as a sentence; empty if it occurs only here.</summary>
    public string Where => Elsewhere.Count == 0 ? string.Empty : $"Repeated at {Elsewhere.Count} more places, the last in {Elsewhere[^1]}.";

    /// <summary>One line, as that of a problem.</summary>
    public override string ToString() => (First with { Remedy = $"{First.Remedy} {Where}".Trim() }).ToString();

    /// <summary>Groups notes that occur at more than three places; what must be fixed is never grouped.</summary>
    /// <param name="problems">The problems in order of place.</param>
    /// <returns>The groups by their first place.</returns>
    public static IReadOnlyList<ProblemGroup> Of(IEnumerable<Problem> problems)
    {
        var ordered = problems.ToList();
        var alike = ordered.Where(p => p.Severity == Severity.Notice)
            .GroupBy(p => p with { Place = default })
            .Where(g => g.Count() > MostApart)
            .ToDictionary(g => g.Key, g => g.ToList());
        var groups = new List<ProblemGroup>();
        foreach (var problem in ordered)
        {
            if (!alike.TryGetValue(problem with { Place = default }, out var all))
            {
                groups.Add(new ProblemGroup(problem, []));
            }
            else if (ReferenceEquals(all[0], problem))
            {
                groups.Add(new ProblemGroup(problem, [.. all.Skip(1).Select(p => p.Place)]));
            }
        }

        return groups;
    }
}
