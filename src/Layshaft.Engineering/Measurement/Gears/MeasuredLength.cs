using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>A measured length as a length, and results that follow from it.</summary>
internal static class MeasuredLength
{
    /// <summary>The value as a length.</summary>
    /// <exception cref="ArgumentException">The measurement is of another kind.</exception>
    public static Length AsLength(this MeasuredQuantity measured) => measured.Unit is LengthUnit unit
        ? Length.From(measured.Number.Value, unit)
        : throw new ArgumentException($"a length is needed; this was measured in {measured.Unit}", nameof(measured));

    /// <summary>A result in the same unit that follows from the measurement with a sensitivity (JCGM 100:2008, 5.1.3).</summary>
    public static MeasuredQuantity Derived(this MeasuredQuantity measured, double value, double sensitivity) => measured with
    {
        Number = measured.Number with
        {
            Value = value,
            Budget = measured.Number.Budget.Scaled(sensitivity),
            StandardDeviation = measured.Number.StandardDeviation * Math.Abs(sensitivity),
            Resolution = measured.Number.Resolution * Math.Abs(sensitivity),
        },
    };
}
