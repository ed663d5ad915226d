using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>The profile shift of a new gear, from a span that its maker states.</summary>
public static class ShiftFromSpan
{
    /// <summary>Works out the gear: x = (s/m - π/2)/(2 tan α), s from the span. Backlash cut into the teeth counts as shift.</summary>
    /// <param name="teeth">Number of teeth, 5 or more.</param>
    /// <param name="module">Module, above 0.</param>
    /// <param name="pressureAngle">Pressure angle, 10° to 35°.</param>
    /// <param name="teethSpanned">k, 1 or more.</param>
    /// <param name="span">The span over k teeth.</param>
    /// <returns>The gear; <see langword="null"/> where no gear of these teeth has such a span, a shift beyond ±2 or k not below the number of teeth.</returns>
    public static SpurGear? GearOf(int teeth, Length module, Angle pressureAngle, int teethSpanned, Length span)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(teethSpanned, 1);
        if (teethSpanned >= teeth)
        {
            return null;
        }

        var thickness = BaseTangentSpan.ToothThickness(new SpurGear(teeth, module, pressureAngle), teethSpanned, span);
        var shift = ((thickness / module) - (Math.PI / 2)) / (2 * Math.Tan(pressureAngle.Radians));
        return Math.Abs(shift) <= 2 ? new SpurGear(teeth, module, pressureAngle, shift) : null;
    }
}
