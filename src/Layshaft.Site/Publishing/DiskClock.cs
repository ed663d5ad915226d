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
    internal static long FreshFrom() => (DateTime.UtcNow - Coarsest).Ticks;
}
