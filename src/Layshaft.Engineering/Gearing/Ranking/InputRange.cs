using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>How far one input of the calculation may be off, as days with the input a standard uncertainty away from what was planned.</summary>
/// <param name="Key">Short name of the input, such as <c>drag</c>.</param>
/// <param name="HalfWidth">Half the range: a share of the input, or kelvins for the air and metres a second for the wind.</param>
/// <param name="Days">The input one standard uncertainty off: one day where times follow it smoothly, both sides where gears change over it.</param>
/// <param name="EachStraight">Whether it may be off on each straight by itself as well as on all together, as corner speeds are.</param>
public sealed record InputRange(string Key, double HalfWidth, IReadOnlyList<ConditionChange> Days, bool EachStraight = false)
{
    /// <summary>
    /// What no input covers, such as the driver's own shift points: ±0.02 s a lap between two sets. Common practice, no source.
    /// </summary>
    public static readonly Duration Model = Duration.FromSeconds(0.02);

    /// <summary>
    /// The ranges by default, each common practice, no source: torque at the wheels ±4 %, drag ±10 %, rolling circumference ±0.5 %
    /// if it was measured, else ±2 %, mass ±3 %, corner speeds ±3 %, shift time ±25 %, grip ±10 %, air ±5 K, wind ±2 m/s.
    /// </summary>
    /// <param name="basis">What the rolling circumference rests on.</param>
    public static IReadOnlyList<InputRange> Usual(CircumferenceBasis basis) =>
    [
        Of("torque", 0.04, x => new("torque") { TorqueFactor = 1 + x }),
        Of("drag", 0.10, x => new("drag", DragFactor: 1 + x)),
        Of("circumference", basis == CircumferenceBasis.Measured ? 0.005 : 0.02, x => new("circumference") { CircumferenceFactor = 1 + x }, bothSides: true),
        Of("mass", 0.03, x => new("mass") { MassFactor = 1 + x }),
        Of("corner_speeds", 0.03, x => new("corner_speeds") { CornerSpeedFactor = 1 + x }, bothSides: true) with { EachStraight = true },
        Of("shift_time", 0.25, x => new("shift_time") { ShiftTimeFactor = 1 + x }),
        Of("grip", 0.10, x => new("grip") { GripFactor = 1 - x }),
        Of("air", 5, x => new("air", Warmer: TemperatureDelta.FromKelvins(-x))),
        Of("wind", 2, x => new("wind", HeadWind: Speed.FromMetersPerSecond(x)), bothSides: true),
    ];

    /// <summary>The standard uncertainty of a range of equal chance: its half-width / √3 (JCGM 100:2008, 4.3.7).</summary>
    /// <param name="halfWidth">Half the distance between the bounds.</param>
    public static double Standard(double halfWidth) => halfWidth / Math.Sqrt(3);

    private static InputRange Of(string key, double halfWidth, Func<double, ConditionChange> day, bool bothSides = false)
    {
        double standard = Standard(halfWidth);
        return new InputRange(key, halfWidth, bothSides ? [day(-standard), day(standard)] : [day(standard)]);
    }
}
