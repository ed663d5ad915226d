using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One gear of a <see cref="SpeedTable"/>.</summary>
/// <param name="Number">Gear number from 1.</param>
/// <param name="Name">The gear's name.</param>
/// <param name="OverallRatio">Engine turns for one turn of the wheels.</param>
/// <param name="SpeedPer1000Rpm">Road speed at 1000 rpm.</param>
/// <param name="SpeedAtLimit">
/// Road speed at the engine's limit. It is also the speed above which a downshift into this gear over-revs the engine.
/// </param>
/// <param name="StepToNext">This gear's ratio over the next one's; null in top gear.</param>
/// <param name="EngineSpeedAfterUpshift">Engine speed in the next gear after an upshift at the limit; null in top gear.</param>
public sealed record SpeedTableRow(
    int Number,
    string Name,
    double OverallRatio,
    Speed SpeedPer1000Rpm,
    Speed SpeedAtLimit,
    double? StepToNext,
    RotationalSpeed? EngineSpeedAfterUpshift)
{
    /// <summary>The speed above which a downshift into this gear over-revs the engine: the speed at the limit.</summary>
    public Speed OverRevAbove => SpeedAtLimit;
}
