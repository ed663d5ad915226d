namespace Layshaft.Engineering.Gearing;

/// <summary>
/// The troposphere of the standard atmosphere (ISO 2533:1975; ICAO Doc 7488/3): temperature and pressure at an altitude.
/// </summary>
internal static class StandardAtmosphere
{
    internal const double LowestM = -1000;
    internal const double HighestM = 11_000;
    internal const double GravityMps2 = 9.80665;

    /// <summary>Specific gas constant of dry air, J/(kg·K), ISO 2533.</summary>
    internal const double DryAirGasConstant = 287.05287;

    private const double SeaLevelKelvin = 288.15;
    private const double SeaLevelPascal = 101_325;
    private const double LapseKelvinPerM = 0.0065;
    private const double EarthRadiusM = 6_356_766;

    private const double Exponent = GravityMps2 / (DryAirGasConstant * LapseKelvinPerM);

    /// <summary>Geopotential altitude of a geometric one: H = r·h/(r + h).</summary>
    internal static double Geopotential(double geometricM) => EarthRadiusM * geometricM / (EarthRadiusM + geometricM);

    internal static double TemperatureKelvin(double geopotentialM) => SeaLevelKelvin - (LapseKelvinPerM * geopotentialM);

    internal static double PressurePascal(double geopotentialM) =>
        SeaLevelPascal * Math.Pow(TemperatureKelvin(geopotentialM) / SeaLevelKelvin, Exponent);

    /// <summary>The geopotential altitude at which the standard atmosphere has this pressure.</summary>
    internal static double AltitudeM(double pressurePascal) =>
        SeaLevelKelvin / LapseKelvinPerM * (1 - Math.Pow(pressurePascal / SeaLevelPascal, 1 / Exponent));
}
