using System.Collections;
using System.Diagnostics.CodeAnalysis;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment;

/// <summary>
/// The jobs of a book, each judged when somebody asks and not kept: judged, ten seasons of jobs are as large again as the
/// book, and each job is asked for a few times at most.
/// </summary>
/// <param name="book">The book.</param>
/// <param name="problems">Receives what judging finds, until <see cref="Quiet"/>.</param>
internal sealed class JudgedJobs(ShopBook book, ProblemList problems) : IReadOnlyDictionary<string, JobAssessment>
{
    private readonly Dictionary<string, Job> byNumber = book.Jobs.ToDictionary(j => j.Number, StringComparer.Ordinal);
    private ProblemList? told = problems;

    public IEnumerable<string> Keys => byNumber.Keys;

    public IEnumerable<JobAssessment> Values => byNumber.Values.Select(Judge);

    public int Count => byNumber.Count;

    public JobAssessment this[string key] => Judge(byNumber[key]);

    /// <summary>From here on problems are not told again.</summary>
    public void Quiet() => told = null;

    public bool ContainsKey(string key) => byNumber.ContainsKey(key);

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out JobAssessment value)
    {
        value = byNumber.TryGetValue(key, out var job) ? Judge(job) : null;
        return value is not null;
    }

    public IEnumerator<KeyValuePair<string, JobAssessment>> GetEnumerator() =>
        byNumber.Select(j => KeyValuePair.Create(j.Key, Judge(j.Value))).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private JobAssessment Judge(Job job) => JobAssessment.Of(book, job, told ?? new ProblemList());
}
