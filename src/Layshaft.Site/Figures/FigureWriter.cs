using Layshaft.Site.Wording;
using UnitsNet;

namespace Layshaft.Site.Figures;

/// <summary>
/// Writes quantities for a page, once and in one place: units, decimals, marks. A page's record holds what comes out of
/// here. Knows no culture and no clock; immutable, threads share it.
/// </summary>
/// <remarks>
/// <c>decimals</c> given as one number are those of the metric unit, whichever comes first; the imperial unit gets as many as show the same
/// step at least as finely, except for speed, torque, mass, power and temperature, where the units are of one size and get
/// as many. <see cref="Decimals"/> has both, for a value that was written in either. Every method throws <see cref="ArgumentOutOfRangeException"/> for a number that is not finite or not below
/// 10^15, and for decimals outside 0 to 9.
/// </remarks>
public sealed partial class FigureWriter
{
    // A thousandth of an inch is the third decimal of one.
    private const int ThouDecimals = 3;

    private readonly UnitChoice _choice;
    private readonly Texts _texts;

    /// <summary>Figures in a shop's units and words.</summary>
    /// <param name="choice">The shop's units and marks.</param>
    /// <param name="texts">The words: names of months, teeth and the like.</param>
    public FigureWriter(UnitChoice choice, Texts texts)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(texts);
        _choice = choice;
        _texts = texts;
    }

    /// <summary>A part's size, a clearance, a shim: mm or in; 0.01 mm is shown beside 0.0001 in.</summary>
    /// <param name="value">The length.</param>
    /// <param name="decimals">Decimals of the millimetre.</param>
    /// <param name="withSign">Whether a positive number gets its sign, as a difference does.</param>
    public Figure Length(Length value, int decimals, bool withSign = false) =>
        Length(value, new Decimals(decimals, decimals + 2), withSign);

    /// <summary>The same with decimals for both units: mm or in; a shop that counts in thousandths of an inch gets thou where they are shown.</summary>
    /// <param name="value">The length.</param>
    /// <param name="decimals">Decimals of the millimetre and of the inch.</param>
    /// <param name="withSign">Whether a positive number gets its sign.</param>
    public Figure Length(Length value, Decimals decimals, bool withSign = false) => Two(
        new(value.Millimeters, "mm", decimals.Metric),
        _choice.Thousandths && decimals.Imperial >= ThouDecimals
            ? new(value.Mils, "thou", decimals.Imperial - ThouDecimals)
            : new(value.Inches, "in", decimals.Imperial),
        _choice.Length,
        withSign);

    /// <summary>A distance on the road or an altitude: m or ft.</summary>
    /// <param name="value">The distance.</param>
    /// <param name="decimals">Decimals of the metre.</param>
    public Figure Distance(Length value, int decimals = 0) =>
        Two(new(value.Meters, "m", decimals), new(value.Feet, "ft", decimals), _choice.Speed);

    /// <summary>A long distance: km or mi.</summary>
    /// <param name="value">The distance.</param>
    /// <param name="decimals">Decimals of the kilometre.</param>
    public Figure LongDistance(Length value, int decimals = 1) =>
        Two(new(value.Kilometers, "km", decimals), new(value.Miles, "mi", decimals), _choice.Speed);

    /// <summary>A speed on the road or of the wind: km/h or mph.</summary>
    /// <param name="value">The speed.</param>
    /// <param name="decimals">Decimals of either unit.</param>
    /// <param name="withSign">Whether a positive number gets its sign.</param>
    public Figure Speed(Speed value, int decimals = 0, bool withSign = false) =>
        Two(new(value.KilometersPerHour, "km/h", decimals), new(value.MilesPerHour, "mph", decimals), _choice.Speed, withSign);

    /// <summary>A torque: N·m or lbf·ft.</summary>
    /// <param name="value">The torque.</param>
    /// <param name="decimals">Decimals of either unit.</param>
    public Figure Torque(Torque value, int decimals = 0) => Torque(value, new Decimals(decimals, decimals));

    /// <summary>A torque: N·m or lbf·ft.</summary>
    /// <param name="value">The torque.</param>
    /// <param name="decimals">Decimals of each unit.</param>
    public Figure Torque(Torque value, Decimals decimals) =>
        Two(new(value.NewtonMeters, "N·m", decimals.Metric), new(value.PoundForceFeet, "lbf·ft", decimals.Imperial), _choice.Torque);

    /// <summary>A force: N or lbf.</summary>
    /// <param name="value">The force.</param>
    /// <param name="decimals">Decimals of the newton.</param>
    public Figure Force(Force value, int decimals = 0) => Force(value, new Decimals(decimals, decimals));

    /// <summary>A force: N or lbf.</summary>
    /// <param name="value">The force.</param>
    /// <param name="decimals">Decimals of each unit.</param>
    public Figure Force(Force value, Decimals decimals) =>
        Two(new(value.Newtons, "N", decimals.Metric), new(value.PoundsForce, "lbf", decimals.Imperial), _choice.Torque);

    /// <summary>A mass: kg or lb.</summary>
    /// <param name="value">The mass.</param>
    /// <param name="decimals">Decimals of either unit.</param>
    public Figure Mass(Mass value, int decimals = 0) => Mass(value, new Decimals(decimals, decimals));

    /// <summary>A mass: kg or lb.</summary>
    /// <param name="value">The mass.</param>
    /// <param name="decimals">Decimals of each unit.</param>
    public Figure Mass(Mass value, Decimals decimals) =>
        Two(new(value.Kilograms, "kg", decimals.Metric), new(value.Pounds, "lb", decimals.Imperial), _choice.Mass);

    /// <summary>A temperature: °C or °F.</summary>
    /// <param name="value">The temperature.</param>
    /// <param name="decimals">Decimals of either unit.</param>
    public Figure Temperature(Temperature value, int decimals = 0) =>
        Two(new(value.DegreesCelsius, "°C", decimals), new(value.DegreesFahrenheit, "°F", decimals), _choice.Temperature);

    /// <summary>A pressure: bar or psi; 0.01 bar is shown beside 0.1 psi, which is about as large.</summary>
    /// <param name="value">The pressure.</param>
    /// <param name="decimals">Decimals of the bar.</param>
    public Figure Pressure(Pressure value, int decimals = 2) =>
        Two(new(value.Bars, "bar", decimals), new(value.PoundsForcePerSquareInch, "psi", Math.Max(0, decimals - 1)), _choice.Pressure);

    /// <summary>A power: kW or hp.</summary>
    /// <param name="value">The power.</param>
    /// <param name="decimals">Decimals of either unit.</param>
    public Figure Power(Power value, int decimals = 0) =>
        Two(new((double)value.Kilowatts, "kW", decimals), new((double)value.MechanicalHorsepower, "hp", decimals), _choice.Power);

    /// <summary>An energy in joule.</summary>
    /// <param name="value">The energy.</param>
    /// <param name="decimals">Decimals of the joule.</param>
    public Figure Energy(Energy value, int decimals = 0) => One(value.Joules, "J", decimals);

    /// <summary>The density of air in kg/m³.</summary>
    /// <param name="value">The density.</param>
    /// <param name="decimals">Decimals.</param>
    public Figure Density(Density value, int decimals = 3) => One(value.KilogramsPerCubicMeter, "kg/m³", decimals);

    /// <summary>A speed of rotation in revolutions a minute.</summary>
    /// <param name="value">The speed of rotation.</param>
    /// <param name="decimals">Decimals.</param>
    public Figure Rpm(RotationalSpeed value, int decimals = 0) => One(value.RevolutionsPerMinute, _texts.Say("figures.rpm"), decimals);

    /// <summary>A running time in hours.</summary>
    /// <param name="value">The time.</param>
    /// <param name="decimals">Decimals of the hour.</param>
    public Figure Hours(Duration value, int decimals = 1) => One(value.Hours, "h", decimals);

    /// <summary>A lap time or part of one in seconds.</summary>
    /// <param name="value">The time.</param>
    /// <param name="decimals">Decimals of the second.</param>
    /// <param name="withSign">Whether a positive number gets its sign, as a gap does.</param>
    public Figure Seconds(Duration value, int decimals = 2, bool withSign = false) => One(value.Seconds, "s", decimals, withSign);

    /// <summary>A share in per cent.</summary>
    /// <param name="share">The share; 1 is the whole.</param>
    /// <param name="decimals">Decimals of the per cent.</param>
    public Figure Percent(double share, int decimals = 0) => One(share * 100, "%", decimals);

    /// <summary>A number without a unit: a ratio, a count.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals.</param>
    /// <param name="withSign">Whether a positive number gets its sign.</param>
    public Figure Number(double value, int decimals = 0, bool withSign = false) => One(value, string.Empty, decimals, withSign);

    /// <summary>An exact number with as many decimals as it has, up to 9: a quantity, a rate in per cent.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">What follows it; empty for nothing.</param>
    public Figure Exact(decimal value, string unit = "")
    {
        var decimals = 0;
        while (decimals < 9 && decimal.Round(value, decimals) != value)
        {
            decimals++;
        }

        var number = NumberText.Write(value, decimals, _choice);
        return new(number, unit, Figure.Join(number, unit));
    }

    private Figure One(double value, string unit, int decimals, bool withSign = false)
    {
        var number = NumberText.Write(value, decimals, _choice, withSign);
        return new(number, unit, Figure.Join(number, unit));
    }

    private Figure Two(Sized metric, Sized imperial, UnitFamily first, bool withSign = false)
    {
        var (one, other) = first == UnitFamily.Metric ? (metric, imperial) : (imperial, metric);
        var figure = One(one.Value, one.Unit, one.Decimals, withSign);
        var second = One(other.Value, other.Unit, other.Decimals, withSign);
        return figure with { Both = _texts.Say("figures.both", ("first", figure.Text), ("second", second.Text)) };
    }

    private readonly record struct Sized(double Value, string Unit, int Decimals);
}
