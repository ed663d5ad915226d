using Layshaft.Book.Values;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Use = Layshaft.Book.Values.Use;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Writes amounts of use.</summary>
public static class UseWords
{
    /// <summary>An amount of use that was worked out: hours to a tenth, kilometres and events whole.</summary>
    public static string Of(Engineering.Life.Use use, Composition composition) =>
        Of(new Use(decimal.Round((decimal)use.Amount, use.Measure == UseMeasure.Hours ? 1 : 0), use.Measure.Unit()), composition);

    /// <summary>The symbol of the unit, for data.</summary>
    public static string UnitOf(UseMeasure measure) => measure switch
    {
        UseMeasure.Hours => "h",
        UseMeasure.Kilometres => "km",
        UseMeasure.Events => "events",
    };

    /// <summary>The unit as an axis names it.</summary>
    public static string AxisUnit(UseMeasure measure, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return composition.Say(measure switch
        {
            UseMeasure.Hours => "use.unit.hours",
            UseMeasure.Kilometres => "use.unit.kilometres",
            UseMeasure.Events => "use.unit.events",
        });
    }

    /// <summary>An amount of use with its unit.</summary>
    public static string Of(Use use, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var decimals = use.Amount == decimal.Truncate(use.Amount) ? 0 : 1;
        var number = composition.Figures.Number((double)use.Amount, decimals).Text;
        return use.Unit switch
        {
            UseUnit.Hours => composition.Say("use.hours", ("amount", number)),
            UseUnit.Kilometres => composition.Say("use.kilometres", ("amount", number)),
            _ => composition.Say(use.Amount == 1 ? "use.event" : "use.events", ("amount", number)),
        };
    }
}
