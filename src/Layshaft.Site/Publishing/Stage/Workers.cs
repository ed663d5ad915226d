using System.Runtime.ExceptionServices;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Works on several things at once, on a few threads that stay the same. Threads of a pool change as they please, and the C library
/// keeps a heap for each that ever held an image.
/// </summary>
internal static class Workers
{
    /// <summary>How many neighbours, which mostly are in one folder, one thread takes at a time.</summary>
    internal const int Share = 256;

    /// <summary>Begins a step on another thread, if there is to be any.</summary>
    /// <param name="step">What to do.</param>
    /// <param name="threads">The most threads at once; with a single one the step is done when its end is waited for.</param>
    /// <returns>Waits for its end, and throws what it threw.</returns>
    internal static Action Begin(Action step, int threads)
    {
        if (threads == 1)
        {
            return step;
        }

        var task = Task.Run(step);
        return () => task.GetAwaiter().GetResult();
    }

    /// <summary>Does something for each item, for different ones at once; the caller's own thread takes part.</summary>
    /// <param name="items">The items; handed out one after the other.</param>
    /// <param name="threads">The most threads at once.</param>
    /// <param name="step">What to do. Once it fails for one, no further ones are begun.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="AggregateException">What failed.</exception>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    internal static void ForEach<T>(IReadOnlyList<T> items, int threads, Action<T> step, CancellationToken cancel)
    {
        var (next, failures) = (-1, new List<Exception>());
        var others = new Thread[Math.Clamp(threads, 1, Math.Max(1, items.Count)) - 1];
        for (var i = 0; i < others.Length; i++)
        {
            others[i] = new Thread(Work) { IsBackground = true };
            others[i].Start();
        }

        Work();
        foreach (var other in others)
        {
            other.Join();
        }

        cancel.ThrowIfCancellationRequested();
        if (failures.Count > 0)
        {
            throw new AggregateException(failures);
        }

        void Work()
        {
            try
            {
                while (!cancel.IsCancellationRequested && !HasFailed() && Interlocked.Increment(ref next) is var item && item < items.Count)
                {
                    step(items[item]);
                }
            }
#pragma warning disable CA1031 // Thrown again above, once all threads have ended.
            catch (Exception e)
#pragma warning restore CA1031
            {
                lock (failures)
                {
                    failures.Add(e);
                }
            }
        }

        bool HasFailed()
        {
            lock (failures)
            {
                return failures.Count > 0;
            }
        }
    }

    /// <summary>Does the same to many files: a step on one file waits for the disk's book-keeping most of its time.</summary>
    /// <param name="items">The items.</param>
    /// <param name="threads">The most threads at once.</param>
    /// <param name="step">What to do.</param>
    /// <param name="share">How many one thread takes at a time.</param>
    /// <remarks>A share ends at its first failure, the others go on; so of several failures it is always the first item's
    /// that comes through, as it was thrown, however fast the threads were.</remarks>
    internal static void ForEachInShares<T>(IEnumerable<T> items, int threads, Action<T> step, int share = Share)
    {
        T[][] shares = [.. items.Chunk(share)];
        var failures = new Exception?[shares.Length];
        ForEach([.. Enumerable.Range(0, shares.Length)], threads, at =>
        {
            try
            {
                Array.ForEach(shares[at], step);
            }
#pragma warning disable CA1031 // Thrown again below, once all shares have ended.
            catch (Exception e)
#pragma warning restore CA1031
            {
                failures[at] = e;
            }
        }, CancellationToken.None);
        if (Array.Find(failures, f => f is not null) is { } first)
        {
            ExceptionDispatchInfo.Throw(first);
        }
    }
}
