namespace Layshaft.Site.Photos;

/// <summary>Lets work begin only while its memory fits beside what already runs; the largest piece alone always may.</summary>
internal sealed class MemoryBudget(long bytes)
{
    private readonly object _gate = new();
    private long _taken;

    /// <summary>Runs the work when there is room for it, and gives the room back.</summary>
    public T Within<T>(long need, Func<T> work)
    {
        need = Math.Min(need, bytes);
        lock (_gate)
        {
            while (_taken + need > bytes)
            {
                Monitor.Wait(_gate); // What runs will end, so this does too
            }

            _taken += need;
        }

        try
        {
            return work();
        }
        finally
        {
            lock (_gate)
            {
                _taken -= need;
                Monitor.PulseAll(_gate);
            }
        }
    }
}
