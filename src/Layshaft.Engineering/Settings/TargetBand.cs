using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>The band in which a shimmed value has to lie; negative values are preload where float is positive.</summary>
/// <param name="Low">Least value allowed.</param>
/// <param name="High">Greatest value allowed, not below <paramref name="Low"/>.</param>
public sealed record TargetBand(Length Low, Length High)
{
    /// <summary>Greatest value allowed.</summary>
    public Length High { get; } = High >= Low
        ? High
        : throw new ArgumentException($"the band runs from {Low} to {High}: write the smaller value first", nameof(High));

    /// <summary>Middle of the band.</summary>
    public Length Middle => Low + ((High - Low) / 2);
}
