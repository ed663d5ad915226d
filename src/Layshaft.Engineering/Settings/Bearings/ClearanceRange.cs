using UnitsNet;

namespace Layshaft.Engineering.Settings.Bearings;

/// <summary>Radial internal clearance of a new bearing before it is fitted: interference fits and heat take some of it away.</summary>
/// <param name="Low">Least clearance.</param>
/// <param name="High">Greatest clearance.</param>
public sealed record ClearanceRange(Length Low, Length High);
