using System.Collections.Concurrent;

namespace Layshaft.Site.Photos;

/// <summary>
/// Makes the renditions of many photos, a fixed number at a time. Memory stays bounded whatever the photos' size:
/// a photo waits until its decoding fits beside those that run, and results are handed on, not collected.
/// </summary>
public sealed record PhotoBatch
{
    /// <summary>What to make of each.</summary>
    public RenditionSettings Settings { get; init; } = RenditionSettings.Default;

    /// <summary>How large each may be.</summary>
    public PhotoLimits Limits { get; init; } = PhotoLimits.Default;

    /// <summary>How many are worked on at a time, at least 1; as many as the machine has processors by default.</summary>
    public int Degree { get; init; } = Environment.ProcessorCount;

    /// <summary>Memory in bytes that all decoding together may take; 1 GiB by default.</summary>
    public long MemoryBytes { get; init; } = 1L << 30;

    /// <summary>Works through the files and returns when all are done.</summary>
    /// <param name="paths">The files, started in this order.</param>
    /// <param name="deliver">Takes each result. Called from several threads at once, in no certain order.</param>
    /// <param name="cancel">Stops before the next photo.</param>
    /// <exception cref="ArgumentException">The settings are out of range.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    /// <exception cref="AggregateException"><paramref name="deliver"/> threw.</exception>
    public void Run(IEnumerable<string> paths, Action<string, RenditionResult> deliver, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(deliver);
        ArgumentOutOfRangeException.ThrowIfLessThan(Degree, 1);
        Settings.Check();
        var budget = new MemoryBudget(MemoryBytes);
        var options = new ParallelOptions { MaxDegreeOfParallelism = Degree, CancellationToken = cancel };
        Parallel.ForEach(Partitioner.Create(paths, EnumerablePartitionerOptions.NoBuffering), options, path =>
        {
            var (facts, problem) = PhotoFile.Inspect(path, Limits);
            var result = facts is null
                ? new(null, problem)
                : budget.Within(facts.WorkingBytes, () => PhotoRenditions.Make(path, Settings, Limits));
            deliver(path, result);
        });
    }
}
