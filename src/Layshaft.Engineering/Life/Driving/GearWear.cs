namespace Layshaft.Engineering.Life;

/// <summary>Wear of one side of a gear's dogs.</summary>
/// <param name="Share">Share of the wear allowance used: 0 new, 1 at the limit; below 0 for better than new.</param>
/// <param name="Uncertainty">Expanded uncertainty of the share, 0 or more; 0 if it is not known.</param>
/// <param name="WatchFrom">Share from which the part is graded watch.</param>
public sealed record DogWear(double Share, double Uncertainty, double WatchFrom)
{
    /// <summary>Whether it has reached the watch level beyond its uncertainty.</summary>
    public bool IsWorn => Share - Uncertainty >= WatchFrom;

    /// <summary>Whether it is below the watch level beyond its uncertainty.</summary>
    public bool IsSound => Share + Uncertainty < WatchFrom;
}

/// <summary>Wear of the dogs of one gear.</summary>
/// <param name="Gear">The gear: 1, 2, 3 …, or <see cref="Reverse"/>.</param>
/// <param name="Drive">The flanks that carry power; <c>null</c> if not measured.</param>
/// <param name="Coast">The flanks that carry the overrun; <c>null</c> if not measured.</param>
/// <param name="Either">Wear for which no side is recorded; <c>null</c> if there is none.</param>
public sealed record GearWear(int Gear, DogWear? Drive, DogWear? Coast, DogWear? Either)
{
    /// <summary>The number that stands for reverse.</summary>
    public const int Reverse = -1;

    /// <summary>The most worn of them.</summary>
    /// <exception cref="InvalidOperationException">None is measured.</exception>
    public DogWear Worst => All.MaxBy(wear => wear.Share) ?? throw new InvalidOperationException("No wear is given for this gear.");

    /// <summary>Whether one of them is worn beyond the uncertainty.</summary>
    public bool IsWorn => All.Any(wear => wear.IsWorn);

    /// <summary>Whether all of them are sound beyond the uncertainty.</summary>
    public bool IsSound => All.All(wear => wear.IsSound);

    private IEnumerable<DogWear> All => new[] { Drive, Coast, Either }.OfType<DogWear>();
}
