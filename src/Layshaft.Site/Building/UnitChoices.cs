using Layshaft.Book.Records;
using Layshaft.Site.Figures;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Building;

/// <summary>The shop's choice of units and marks as figures are written; what it leaves open the language decides.</summary>
internal static class UnitChoices
{
    public static UnitChoice Of(Shop shop, Texts texts) => new()
    {
        Speed = shop.Units.Speed == SpeedUnit.MilesPerHour ? UnitFamily.Imperial : UnitFamily.Metric,
        Length = shop.Units.Length == LengthUnit.Millimetres ? UnitFamily.Metric : UnitFamily.Imperial,
        Thousandths = shop.Units.Length == LengthUnit.Thousandths,
        Torque = shop.Units.Torque == TorqueUnit.PoundForceFeet ? UnitFamily.Imperial : UnitFamily.Metric,
        DecimalComma = shop.Numbers.Decimals is { } mark ? mark == DecimalMark.Comma : texts.DecimalComma,
        Grouping = shop.Numbers.Thousands switch
        {
            ThousandsMark.None => DigitGrouping.None,
            ThousandsMark.Mark => DigitGrouping.Mark,
            _ => DigitGrouping.NarrowSpace,
        },
        IsoDates = shop.IsoDates,
    };
}
