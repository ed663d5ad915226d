using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Horsepower by definition. The units library rounds the mechanical horsepower in the fifth figure; use these instead.
/// </summary>
public static class Horsepower
{
    /// <summary>One mechanical horsepower, 550 ft·lbf/s, in watts: 745.699 871 582 270 22.</summary>
    public const double MechanicalWatts = 550 * 0.3048 * 0.45359237 * 9.80665;

    /// <summary>One metric horsepower (PS), 75 kgf·m/s, in watts: 735.498 75.</summary>
    public const double MetricWatts = 75 * 9.80665;

    /// <summary>A power in mechanical horsepower (hp).</summary>
    /// <param name="power">The power.</param>
    public static double Mechanical(Power power) => (double)power.Watts / MechanicalWatts;

    /// <summary>A power in metric horsepower (PS).</summary>
    /// <param name="power">The power.</param>
    public static double Metric(Power power) => (double)power.Watts / MetricWatts;

    /// <summary>A power of so many mechanical horsepower (hp).</summary>
    /// <param name="horsepower">Mechanical horsepower.</param>
    public static Power FromMechanical(double horsepower) => Power.FromWatts(horsepower * MechanicalWatts);

    /// <summary>A power of so many metric horsepower (PS).</summary>
    /// <param name="horsepower">Metric horsepower.</param>
    public static Power FromMetric(double horsepower) => Power.FromWatts(horsepower * MetricWatts);
}
