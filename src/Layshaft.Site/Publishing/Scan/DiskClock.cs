namespace Layshaft.Site.Publishing;

/// <summary>How far a file's time can be relied on.</summary>
internal static class DiskClock
{
    /// <summary>
    /// The coarsest step in which a disk keeps times (FAT: two seconds). In a file younger than that a change within the same step
    /// would not show in its time.
    /// </summary>
    internal static TimeSpan Coarsest { get; } = TimeSpan.FromSeconds(2);

    /// <summary>From this time on (UTC ticks) a file is so young, now.</summary>
    internal static long FreshFrom() => FreshFrom(DateTime.UtcNow.Ticks);

    /// <summary>From this time on (UTC ticks) a file was so young when it was looked at.</summary>
    /// <param name="looked">When that was, in ticks.</param>
    internal static long FreshFrom(long looked) => looked - Coarsest.Ticks;
}
