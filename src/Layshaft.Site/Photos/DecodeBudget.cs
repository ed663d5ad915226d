namespace Layshaft.Site.Photos;

/// <summary>
/// Bounds the memory of the photos that are decoded at the same moment. One that needs more than the whole budget is decoded alone.
/// For many threads at once.
/// </summary>
/// <param name="bytes">The budget.</param>
internal sealed class DecodeBudget(long bytes)
{
    private readonly Lock _door = new();
    private readonly object _gate = new();
    private long _taken;

    /// <summary>The one of this process: with it a publish of photos of any size stays under 400 MB.</summary>
    public static DecodeBudget Shared { get; } = new(160L << 20);

    /// <summary>Waits until the memory is free, in the order of asking, and takes it.</summary>
    /// <param name="wanted">What <see cref="PhotoFacts.WorkingBytes"/> says.</param>
    /// <returns>Gives it back.</returns>
    public Share Take(long wanted)
    {
        var share = new Share(this, Math.Min(wanted, bytes));

        // Whoever waits for much keeps the door shut, so that small ones cannot go before it for ever.
        lock (_door)
        {
            lock (_gate)
            {
                while (_taken + share.Bytes > bytes)
                {
                    Monitor.Wait(_gate);
                }

                _taken += share.Bytes;
            }
        }

        return share;
    }

    /// <summary>A part of the budget.</summary>
    /// <param name="budget">Which.</param>
    /// <param name="bytes">How much.</param>
    internal sealed class Share(DecodeBudget budget, long bytes) : IDisposable
    {
        /// <summary>How much.</summary>
        public long Bytes => bytes;

        public void Dispose()
        {
            lock (budget._gate)
            {
                budget._taken -= bytes;
                Monitor.PulseAll(budget._gate);
            }
        }
    }
}
