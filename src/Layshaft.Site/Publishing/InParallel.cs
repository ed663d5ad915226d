using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace Layshaft.Site.Publishing;

/// <summary>Does the same to many files on several threads: a step on one file waits for the disk's book-keeping most of its time.</summary>
internal static class InParallel
{
    /// <summary>How many neighbours, which mostly lie in one folder, one thread takes at a time.</summary>
    internal const int Share = 256;

    /// <summary>Begins a step on another thread, if there is to be any.</summary>
    /// <param name="step">What to do.</param>
    /// <param name="parallelism">The most threads at once; with a single one the step is done when its end is waited for.</param>
    /// <returns>Waits for its end, and throws what it threw.</returns>
    internal static Action Begin(Action step, int parallelism)
    {
        if (parallelism == 1)
        {
            return step;
        }

        var task = Task.Run(step);
        return () => task.GetAwaiter().GetResult();
    }

    /// <summary>Does something for each item, for different ones at once.</summary>
    /// <param name="items">The items.</param>
    /// <param name="parallelism">The most threads at once.</param>
    /// <param name="step">What to do.</param>
    /// <param name="share">How many one thread takes at a time.</param>
    /// <remarks>A share ends at its first failure, the others go on; so of several failures it is always the first item's
    /// that comes through, as it was thrown, however fast the threads were.</remarks>
    internal static void ForEach<T>(IEnumerable<T> items, int parallelism, Action<T> step, int share = Share)
    {
        T[] all = [.. items];
        if (all.Length == 0)
        {
            return;
        }

        var failures = new ConcurrentBag<(int Item, Exception What)>();
        Parallel.ForEach(
            Partitioner.Create(0, all.Length, share),
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism) },
            range =>
            {
                var item = range.Item1;
                try
                {
                    for (; item < range.Item2; item++)
                    {
                        step(all[item]);
                    }
                }
#pragma warning disable CA1031 // Thrown again below, once all threads have ended.
                catch (Exception e)
#pragma warning restore CA1031
                {
                    failures.Add((item, e));
                }
            });
        if (!failures.IsEmpty)
        {
            ExceptionDispatchInfo.Throw(failures.MinBy(f => f.Item).What);
        }
    }
}
