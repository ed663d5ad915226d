using Layshaft.Site.Pages.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>Which limits a speed on a public page exceeds: the tyre's rating and the gearbox output shaft. A car's propshaft limit is its owner's.</summary>
internal static class PublicLimits
{
    /// <summary>The limits in words; null for none.</summary>
    /// <param name="row">The speed at the engine's limit in one gear.</param>
    /// <param name="train">Gears, drop pair, final drive.</param>
    /// <param name="choice">The ratio set and the tyre.</param>
    /// <param name="subject">What the page is about.</param>
    /// <param name="composition">What pages are composed from.</param>
    public static string? Exceeded(Eng.SpeedTableRow row, Eng.Drivetrain train, Choice choice, ReferenceSubject subject, Composition composition)
    {
        var guards = new Eng.GearingGuards(GearboxOutput: subject.Boxes[choice.Set].Gearbox.OutputLimit);
        Eng.GearingCaution[] past = [.. guards.AtSpeed(train, subject.Tyres[choice.Tyre].Tyre, row.Number, row.SpeedAtLimit, subject.Limit).Where(c => c.IsLimit)];
        return past.Length == 0 ? null : composition.Say("gearing.row.past", ("limits", string.Join(", ", past.Select(c => GuardWords.Limit(c.Kind, composition)))));
    }
}
