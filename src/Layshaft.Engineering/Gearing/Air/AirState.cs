using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The air at a place: temperature, pressure, water vapour, and so its density. Immutable.</summary>
/// <remarks>
/// Density of moist air is that of its dry part and its vapour: ρ = (p − e)/(R_d·T) + e/(R_v·T), with R_d 287.05287 and
/// R_v 461.495 J/(kg·K). Saturation vapour pressure: the Magnus formula with the coefficients of WMO-No. 8,
/// e_w = 611.2 Pa · exp(17.62·t/(243.12 + t)), t in °C (from memory), used from −40 to 60 °C.
/// </remarks>
public sealed class AirState
{
    private const double VapourGasConstant = 461.495;

    private AirState(double kelvin, double pascal, double vapourPascal)
    {
        Kelvin = kelvin;
        Pascal = pascal;
        VapourPascal = vapourPascal;
        DensityKgPerM3 = ((pascal - vapourPascal) / (StandardAtmosphere.DryAirGasConstant * kelvin))
            + (vapourPascal / (VapourGasConstant * kelvin));
    }

    /// <summary>Air temperature.</summary>
    public Temperature Temperature => Temperature.FromKelvins(Kelvin);

    /// <summary>Pressure at the place (not reduced to sea level), vapour included.</summary>
    public Pressure Pressure => Pressure.FromPascals(Pascal);

    /// <summary>Partial pressure of the water vapour.</summary>
    public Pressure VapourPressure => Pressure.FromPascals(VapourPascal);

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(DensityKgPerM3);

    internal double Kelvin { get; }

    internal double Pascal { get; }

    internal double VapourPascal { get; }

    internal double DensityKgPerM3 { get; }

    /// <summary>Dry standard air at an altitude above sea level (ISO 2533).</summary>
    /// <param name="altitude">Geometric altitude, −1000 to 11 000 m.</param>
    public static Outcome<AirState> Standard(Length altitude) => StandardGeopotential(
        Length.FromMeters(StandardAtmosphere.Geopotential(Math.Clamp(altitude.Meters, -1e5, 1e5))));

    /// <summary>Dry standard air at a geopotential altitude, as tables of the standard print it (ISO 2533).</summary>
    /// <param name="altitude">Geopotential altitude, −1000 to 11 000 m.</param>
    public static Outcome<AirState> StandardGeopotential(Length altitude)
    {
        var faults = new FaultList();
        faults.Range("altitude", altitude.Meters, StandardAtmosphere.LowestM, StandardAtmosphere.HighestM, "m");
        return faults.Finish(() => new AirState(
            StandardAtmosphere.TemperatureKelvin(altitude.Meters), StandardAtmosphere.PressurePascal(altitude.Meters), 0));
    }

    /// <summary>Air from an altitude and a thermometer, pressure as the standard atmosphere has it there.</summary>
    /// <param name="altitude">Geometric altitude, −1000 to 11 000 m.</param>
    /// <param name="temperature">Air temperature, −40 to 60 °C.</param>
    /// <param name="relativeHumidity">0 (dry) to 1 (saturated).</param>
    public static Outcome<AirState> AtAltitude(Length altitude, Temperature temperature, double relativeHumidity = 0)
    {
        Outcome<AirState> standard = Standard(altitude);
        return standard.TryGet(out AirState? air) ? FromReadings(air.Pressure, temperature, relativeHumidity) : standard;
    }

    /// <summary>Air from readings at the place.</summary>
    /// <param name="pressure">Pressure at the place, not reduced to sea level, 200 to 1100 hPa.</param>
    /// <param name="temperature">Air temperature, −40 to 60 °C.</param>
    /// <param name="relativeHumidity">0 (dry) to 1 (saturated).</param>
    public static Outcome<AirState> FromReadings(Pressure pressure, Temperature temperature, double relativeHumidity = 0)
    {
        var faults = new FaultList();
        faults.Range("humidity", relativeHumidity, 0, 1);
        double vapour = relativeHumidity * SaturationPascal(temperature.Kelvins);
        return Create(pressure.Pascals, temperature, vapour, faults);
    }

    /// <summary>Air from readings at the place, with the dew point for the moisture.</summary>
    /// <param name="pressure">Pressure at the place, not reduced to sea level, 200 to 1100 hPa.</param>
    /// <param name="temperature">Air temperature, −40 to 60 °C.</param>
    /// <param name="dewPoint">Dew point, −40 °C to the air temperature.</param>
    public static Outcome<AirState> FromDewPoint(Pressure pressure, Temperature temperature, Temperature dewPoint)
    {
        var faults = new FaultList();
        faults.Range("dew_point", dewPoint.DegreesCelsius, -40, temperature.DegreesCelsius, "°C");
        return Create(pressure.Pascals, temperature, SaturationPascal(dewPoint.Kelvins), faults);
    }

    /// <summary>
    /// Air from a weather report, whose pressure is reduced to sea level: the altimeter setting (QNH) is taken back to the
    /// place through the standard atmosphere.
    /// </summary>
    /// <param name="seaLevelPressure">Pressure reduced to sea level, 850 to 1100 hPa.</param>
    /// <param name="altitude">Altitude of the place, −500 to 5000 m.</param>
    /// <param name="temperature">Air temperature at the place, −40 to 60 °C.</param>
    /// <param name="relativeHumidity">0 (dry) to 1 (saturated).</param>
    public static Outcome<AirState> FromWeatherReport(
        Pressure seaLevelPressure, Length altitude, Temperature temperature, double relativeHumidity = 0)
    {
        var faults = new FaultList();
        faults.Range("sea_level_pressure", seaLevelPressure.Hectopascals, 850, 1100, "hPa");
        faults.Range("altitude", altitude.Meters, -500, 5000, "m");
        if (!faults.IsEmpty)
        {
            return faults.Finish<AirState>(() => null!);
        }

        double height = StandardAtmosphere.Geopotential(altitude.Meters) + StandardAtmosphere.AltitudeM(seaLevelPressure.Pascals);
        return FromReadings(Pressure.FromPascals(StandardAtmosphere.PressurePascal(height)), temperature, relativeHumidity);
    }

    /// <summary>The same air, warmer or colder, with the same pressure and the same vapour in it.</summary>
    /// <param name="by">How much warmer; negative for colder.</param>
    public Outcome<AirState> Warmer(TemperatureDelta by) =>
        Create(Pascal, Temperature.FromKelvins(Kelvin + by.Kelvins), VapourPascal, new FaultList());

    private static Outcome<AirState> Create(double pascal, Temperature temperature, double vapourPascal, FaultList faults)
    {
        faults.Range("pressure", pascal / 100, 200, 1100, "hPa");
        faults.Range("temperature", temperature.DegreesCelsius, -40, 60, "°C");
        if (faults.IsEmpty && vapourPascal >= pascal)
        {
            faults.Add(new GearingFault(GearingFaultKind.VapourAbovePressure, "humidity", vapourPascal, High: pascal, Unit: "Pa"));
        }

        return faults.Finish(() => new AirState(temperature.Kelvins, pascal, vapourPascal));
    }

    private static double SaturationPascal(double kelvin)
    {
        double celsius = Math.Clamp(kelvin - 273.15, -100, 100);
        return 611.2 * Math.Exp(17.62 * celsius / (243.12 + celsius));
    }
}
