namespace Layshaft.Engineering.Gearing;

/// <summary>By what an engine's output in this air is multiplied to give its output in the standard's reference air.</summary>
public static class PowerCorrection
{
    /// <summary>The least factor for which ISO 1585 and SAE J1349 are meant: 0.93 (from memory).</summary>
    public const double Least = 0.93;

    /// <summary>The greatest factor for which ISO 1585 and SAE J1349 are meant: 1.07 (from memory).</summary>
    public const double Greatest = 1.07;

    private const double PascalPerInchOfMercury = 3386.389;

    /// <summary>
    /// The correction factor; above 1 in thin or warm air. The output on the day is the standard's output divided by it.
    /// </summary>
    /// <param name="standard">The standard.</param>
    /// <param name="air">The air of the day.</param>
    /// <exception cref="ArgumentOutOfRangeException">The standard is none of the known ones.</exception>
    public static double Factor(PowerStandard standard, AirState air)
    {
        ArgumentNullException.ThrowIfNull(air);
        double dryPascal = air.Pascal - air.VapourPascal;
        double celsius = air.Kelvin - 273.15;
        return standard switch
        {
            PowerStandard.None => 1,
            PowerStandard.Iso1585 => Math.Pow(99_000 / dryPascal, 1.2) * Math.Pow((celsius + 273) / 298, 0.6),
            PowerStandard.SaeJ1349 => (1.180 * (99_000 / dryPascal) * Math.Sqrt((celsius + 273) / 298)) - 0.180,
            PowerStandard.Std => 29.92 * PascalPerInchOfMercury / dryPascal * Math.Sqrt(((celsius * 1.8) + 32 + 459.7) / 519.7),
            PowerStandard.Din70020 => 101_300 / air.Pascal * Math.Sqrt((celsius + 273) / 293),
            _ => throw new ArgumentOutOfRangeException(nameof(standard), standard, "Not a known standard."),
        };
    }

    /// <summary>
    /// Whether the factor lies where the standard means it to be used: ISO 1585 and SAE J1349 from
    /// <see cref="Least"/> to <see cref="Greatest"/>; the others set no bounds.
    /// </summary>
    /// <param name="standard">The standard.</param>
    /// <param name="factor">The factor.</param>
    public static bool IsWithinStandard(PowerStandard standard, double factor) =>
        standard is not (PowerStandard.Iso1585 or PowerStandard.SaeJ1349) || factor is >= Least and <= Greatest;
}
