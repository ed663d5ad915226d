using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Names gears.</summary>
public static class GearWords
{
    /// <summary>The name of a gear: 1 is first, 0 or less reverse.</summary>
    public static string Of(int gear, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var key = string.Create(CultureInfo.InvariantCulture, $"life.gear.{gear}");
        return gear is 0 or GearWear.Reverse ? composition.Say("life.gear.reverse")
            : composition.Texts.Has(key) ? composition.Say(key)
            : composition.Say("life.gear.other", ("number", gear));
    }
}
