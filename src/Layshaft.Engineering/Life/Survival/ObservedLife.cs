namespace Layshaft.Engineering.Life;

/// <summary>
/// One part's life as far as it was seen. Wear is seen only when a gearbox is open, so a failure lies between two
/// inspections: after <paramref name="LastGood"/> and not after <paramref name="FirstWorn"/> (interval censoring).
/// </summary>
/// <param name="LastGood">Usage since new at which it was last known to be good; from <paramref name="Entry"/> up.</param>
/// <param name="FirstWorn">
/// Usage since new at which it was found worn, damaged or broken; equal to <paramref name="LastGood"/> when the moment
/// itself is known; <c>null</c> while it is still good or was removed while good (right censoring).
/// </param>
/// <param name="Entry">
/// Usage since new from which its life was watched: 0 for a part fitted new, what it had run before for one fitted used. A part that
/// failed earlier could not have come into the sample (left truncation).
/// </param>
public readonly record struct ObservedLife(double LastGood, double? FirstWorn, double Entry = 0)
{
    /// <summary>Whether it was found worn, damaged or broken.</summary>
    public bool Failed => FirstWorn is not null;

    /// <summary>Whether the moment of failure itself is known.</summary>
    public bool IsExact => FirstWorn == LastGood;

    /// <summary>The greatest usage at which anything is known of it.</summary>
    public double SeenTo => FirstWorn ?? LastGood;

    /// <summary>A life that ended at a known moment.</summary>
    /// <param name="usage">Usage since new, greater than 0.</param>
    public static ObservedLife FailedAt(double usage) => new(usage, usage);

    /// <summary>A life that ended between two inspections.</summary>
    /// <param name="lastGood">Usage at the last inspection that found it good; 0 if there was none.</param>
    /// <param name="firstWorn">Usage at the inspection that found it worn; greater.</param>
    public static ObservedLife FailedBetween(double lastGood, double firstWorn) => new(lastGood, firstWorn);

    /// <summary>A life that had not ended when it was last seen.</summary>
    /// <param name="usage">Usage since new, greater than 0.</param>
    public static ObservedLife GoodAt(double usage) => new(usage, null);

    internal bool IsValid =>
        Entry >= 0 && LastGood >= Entry && double.IsFinite(LastGood)
        && (FirstWorn is { } worn ? worn >= LastGood && worn > Entry && double.IsFinite(worn) : LastGood > Entry);
}
