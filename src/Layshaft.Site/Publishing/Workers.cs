namespace Layshaft.Site.Publishing;

/// <summary>
/// Works through things that take very different times on a few threads that stay the same. Threads of a pool change as they please, and
/// the C library keeps a heap for each that ever held a picture.
/// </summary>
internal static class Workers
{
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
}
