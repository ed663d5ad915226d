using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Measurement.Gears;

/// <summary>Short ways to write gears in tests: millimetres and degrees.</summary>
internal static class Gear
{
    public static SpurGear Of(int teeth, double moduleMm, double shift = 0, double angleDeg = 20) =>
        new(teeth, Length.FromMillimeters(moduleMm), Angle.FromDegrees(angleDeg), shift);

    public static Length Mm(double value) => Length.FromMillimeters(value);
}
