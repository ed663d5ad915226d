using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>
/// Units whose parts may have sat in one another: one gave a part to the other, or both name the same serial. What
/// the book says of a part's life is said within one cluster, so units of different clusters know nothing of each other.
/// </summary>
public sealed class UnitClusters
{
    private readonly Dictionary<string, string> above = new(StringComparer.Ordinal);

    private UnitClusters()
    {
    }

    /// <summary>The clusters, each by the ordinal order of its units' ids, in order of their first.</summary>
    public IReadOnlyList<IReadOnlyList<string>> All { get; private set; } = [];

    /// <summary>Finds the clusters of a book.</summary>
    public static UnitClusters Of(ShopBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Of(book.Units, book.Jobs.Select(JobLinks.Of));
    }

    /// <summary>Finds the clusters of some units.</summary>
    /// <param name="units">The units, by id.</param>
    /// <param name="jobs">The links of all their jobs, in any order.</param>
    public static UnitClusters Of(IReadOnlyDictionary<string, Unit> units, IEnumerable<JobLinks> jobs)
    {
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(jobs);
        var clusters = new UnitClusters();
        var serials = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var unit in units.Values)
        {
            foreach (var fitted in unit.Fitted)
            {
                clusters.JoinBySerial(unit.Id, fitted.Serial, serials);
            }
        }

        foreach (var job in jobs)
        {
            foreach (var serial in job.Serials)
            {
                clusters.JoinBySerial(job.Unit, serial, serials);
            }

            foreach (var donor in job.Donors)
            {
                clusters.Join(job.Unit, donor);
            }
        }

        clusters.All = [.. units.Keys.Order(StringComparer.Ordinal).GroupBy(clusters.Top, StringComparer.Ordinal).Select(c => (IReadOnlyList<string>)[.. c])];
        return clusters;
    }

    /// <summary>Whether two units are in one cluster.</summary>
    public bool AreJoined(string one, string other) => Top(one) == Top(other);

    private void JoinBySerial(string unit, string? serial, Dictionary<string, string> serials)
    {
        if (serial is not null && !serials.TryAdd(serial, unit))
        {
            Join(unit, serials[serial]);
        }
    }

    private void Join(string one, string other)
    {
        var (a, b) = (Top(one), Top(other));
        if (a != b)
        {
            above[a] = b;
        }
    }

    private string Top(string unit)
    {
        while (above.TryGetValue(unit, out var next))
        {
            // Every other step of the way is cut short, so that long chains do not stay long.
            if (above.TryGetValue(next, out var further))
            {
                above[unit] = further;
            }

            unit = next;
        }

        return unit;
    }
}
