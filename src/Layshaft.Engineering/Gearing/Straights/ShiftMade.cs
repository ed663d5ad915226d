using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One shift made on a straight.</summary>
/// <param name="From">The gear that was left, from 1.</param>
/// <param name="To">The gear that was engaged, from 1.</param>
/// <param name="Position">Distance from the corner exit at which the drive was interrupted.</param>
/// <param name="SpeedBefore">Road speed when the drive was interrupted.</param>
/// <param name="SpeedAfter">Road speed when the next gear engages, before the engine's momentum speeds the car up.</param>
public sealed record ShiftMade(int From, int To, Length Position, Speed SpeedBefore, Speed SpeedAfter);
