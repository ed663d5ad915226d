using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One sliding dog ring and the gears that it engages.</summary>
/// <param name="Name">Its name, such as <c>3-4</c>.</param>
/// <param name="Gears">The numbers of its gears, from 1.</param>
public sealed record DogRing(string Name, IReadOnlyList<int> Gears);

/// <summary>The inertias on the two sides of the dogs.</summary>
/// <param name="InputSide">
/// All that changes speed with the engaged gear, at the input shaft: with the clutch shut that includes engine, flywheel and
/// clutch; with it open, the clutch plate, input shaft and layshaft only.
/// </param>
/// <param name="OutputSide">
/// All that turns with the ring, at the mainshaft; null to take the car's mass and wheels through tyre and final drive. The
/// first blow is felt by less than that, since shafts twist: a measured or estimated smaller figure may be given.
/// </param>
public sealed record DogInertias(MassMomentOfInertia InputSide, MassMomentOfInertia? OutputSide = null);

/// <summary>How the shifts are made.</summary>
/// <param name="ResidualMismatch">
/// The engine speed by which a driver who matches the throttle still misses, not negative.
/// </param>
/// <param name="DownshiftAt">
/// Engine speed in the lower gear at which it is engaged under braking; null for 90 % of the limiter (Layshaft's own convention).
/// </param>
public sealed record ShiftStyle(RotationalSpeed ResidualMismatch, RotationalSpeed? DownshiftAt = null);
