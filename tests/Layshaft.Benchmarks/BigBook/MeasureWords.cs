using System.Globalization;
using Layshaft.Book.Records;
using UnitsNet;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>Readings of a worn part, with the instrument that suits the size.</summary>
internal static class MeasureWords
{
    /// <summary>Instrument and readings as a job writes them; null for a size that is not a length or an angle.</summary>
    /// <param name="measure">What is measured.</param>
    /// <param name="wear">How far the part is worn, as a share of its allowance.</param>
    /// <param name="random">Chance.</param>
    public static string? Of(Measure measure, double wear, Random random)
    {
        var (whenNew, limit, unit, step, instrument) = measure switch
        {
            { New: Length n, Limit: Length l } => (n.Millimeters, l.Millimeters, " mm", n.Millimeters > 5 || l.Millimeters < 0.5 ? "0.000" : "0.00", InstrumentOf(measure, n.Millimeters)),
            { New: Angle n, Limit: Angle l } => (n.Degrees, l.Degrees, "°", "0.0", "microscope-angle"),
            _ => (0, 0, "", "", ""),
        };
        if (unit.Length == 0)
        {
            return null;
        }

        var value = whenNew + ((limit - whenNew) * Math.Clamp(wear * (0.8 + (0.2 * random.NextDouble())), 0.03, 1.1));
        var readings = Enumerable.Range(0, 4).Select(_ => (value + ((limit - whenNew) * 0.02 * (random.NextDouble() - 0.5))).ToString(step, CultureInfo.InvariantCulture) + unit);
        return $"instrument: {instrument}, readings: [{string.Join(", ", readings)}]";
    }

    private static string InstrumentOf(Measure measure, double millimetres) => measure.Id switch
    {
        _ when measure.Id.StartsWith("radius", StringComparison.Ordinal) || measure.Id == "dog-radius" => "microscope",
        "span-loss" => "disc-50",
        "float-bearing" => "bore-gauge",
        "groove" or "free-length" => "calliper",
        "pad-thickness" => "mic-25",
        "span" => millimetres > 25 ? "disc-50" : "disc-25",
        _ => "lever-gauge",
    };
}
