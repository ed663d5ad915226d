using Layshaft.Book.Values;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Writes amounts of use.</summary>
public static class UseWords
{
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
            _ => composition.Say("use.events", ("amount", number)),
        };
    }
}
