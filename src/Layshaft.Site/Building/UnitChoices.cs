using Layshaft.Book.Records;
using Layshaft.Site.Figures;

namespace Layshaft.Site.Building;

/// <summary>The shop's choice of units as figures are written.</summary>
internal static class UnitChoices
{
    public static UnitChoice Of(Shop shop) => new()
    {
        Speed = shop.Units.Speed == SpeedUnit.MilesPerHour ? UnitFamily.Imperial : UnitFamily.Metric,
        Length = shop.Units.Length == LengthUnit.Inches ? UnitFamily.Imperial : UnitFamily.Metric,
        Torque = shop.Units.Torque == TorqueUnit.PoundForceFeet ? UnitFamily.Imperial : UnitFamily.Metric,
    };
}
