using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>What one ring bears in a lap.</summary>
/// <param name="Ring">The ring's name.</param>
/// <param name="UpshiftsPerLap">Upshifts onto it.</param>
/// <param name="DownshiftsPerLap">Downshifts onto it.</param>
/// <param name="Share">Its share of the work of all rings, not matched; 0 to 1, all together 1 (0 when no shift is made).</param>
/// <param name="MatchedShare">The same with a matched throttle.</param>
public record RingWork(string Ring, int UpshiftsPerLap, int DownshiftsPerLap, double Share, double MatchedShare);

/// <summary>What one ring bears in a lap and in an event, in joules: the inertias are known.</summary>
/// <param name="Ring">The ring's name.</param>
/// <param name="UpshiftsPerLap">Upshifts onto it.</param>
/// <param name="DownshiftsPerLap">Downshifts onto it.</param>
/// <param name="Share">Its share of the work of all rings, not matched.</param>
/// <param name="MatchedShare">The same with a matched throttle.</param>
/// <param name="PerLap">Energy a lap, not matched.</param>
/// <param name="MatchedPerLap">The same with a matched throttle.</param>
/// <param name="PerEvent">Energy over all laps of the event, not matched.</param>
/// <param name="MatchedPerEvent">The same with a matched throttle.</param>
public sealed record RingEnergy(
    string Ring,
    int UpshiftsPerLap,
    int DownshiftsPerLap,
    double Share,
    double MatchedShare,
    Energy PerLap,
    Energy MatchedPerLap,
    Energy PerEvent,
    Energy MatchedPerEvent)
    : RingWork(Ring, UpshiftsPerLap, DownshiftsPerLap, Share, MatchedShare);
