namespace Layshaft.Site.Figures;

/// <summary>Which of the two customary units stands first.</summary>
public enum UnitFamily
{
    /// <summary>km/h, mm, N·m, kg, °C, bar, kW.</summary>
    Metric,

    /// <summary>mph, in, lbf·ft, lb, °F, psi, hp.</summary>
    Imperial,
}

/// <summary>How long numbers are broken up.</summary>
public enum DigitGrouping
{
    /// <summary>Not at all: 12500.</summary>
    None,

    /// <summary>Groups of three with a narrow space from five digits on, the practice of ISO 80000-1: 9500, 12 500.</summary>
    NarrowSpace,

    /// <summary>Groups of three with whichever of comma and point is not the decimal mark: 12,500 or 12.500.</summary>
    Mark,
}

/// <summary>How a shop wants its figures written: its customers' units and marks. Immutable.</summary>
public sealed record UnitChoice
{
    /// <summary>Metric units, a decimal point, narrow spaces between groups.</summary>
    public static UnitChoice Metric { get; } = new();

    /// <summary>Imperial units throughout, a decimal point.</summary>
    public static UnitChoice Imperial { get; } = new()
    {
        Speed = UnitFamily.Imperial,
        Length = UnitFamily.Imperial,
        Torque = UnitFamily.Imperial,
        Mass = UnitFamily.Imperial,
        Temperature = UnitFamily.Imperial,
        Pressure = UnitFamily.Imperial,
        Power = UnitFamily.Imperial,
        Grouping = DigitGrouping.Mark,
    };

    /// <summary>Speeds (km/h or mph) and distances on the road (m and km, or ft and mi).</summary>
    public UnitFamily Speed { get; init; }

    /// <summary>Sizes of parts: mm or in (or thou).</summary>
    public UnitFamily Length { get; init; }

    /// <summary>Whether sizes in inches that show a thousandth of one are written in thou.</summary>
    public bool Thousandths { get; init; }

    /// <summary>Torque (N·m or lbf·ft) and force (N or lbf).</summary>
    public UnitFamily Torque { get; init; }

    /// <summary>Mass: kg or lb.</summary>
    public UnitFamily Mass { get; init; }

    /// <summary>Temperature: °C or °F.</summary>
    public UnitFamily Temperature { get; init; }

    /// <summary>Pressure: bar or psi.</summary>
    public UnitFamily Pressure { get; init; }

    /// <summary>Power: kW or hp (mechanical, 550 ft·lbf/s).</summary>
    public UnitFamily Power { get; init; }

    /// <summary>Whether decimals follow a comma instead of a point.</summary>
    public bool DecimalComma { get; init; }

    /// <summary>How long numbers are broken up.</summary>
    public DigitGrouping Grouping { get; init; } = DigitGrouping.NarrowSpace;

    /// <summary>Whether dates are written as ISO 8601 has them (2026-03-14) instead of in words (14 March 2026).</summary>
    public bool IsoDates { get; init; }
}
