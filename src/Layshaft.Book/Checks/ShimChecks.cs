using Layshaft.Book.Records;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>What keeps a shim pack from being worked out, or makes it wrong, told before anybody asks for one.</summary>
internal static class ShimChecks
{
    /// <summary>A setting whose target no pack can be picked for. Backlash with shims is usual, and has its own table in the manual.</summary>
    public static void Target(Checker check, Setting setting)
    {
        if (setting.Shims is not null && setting.Kind is not (Records.SettingKind.Backlash or Records.SettingKind.Breakaway) && setting.PackBand is { Wrong: { } wrong, Remedy: var remedy })
        {
            check.Problems.Note("shim-target", setting.Origin.At("target"), wrong, remedy ?? string.Empty);
        }
    }

    /// <summary>A stock in two kinds of unit: both are read as they are written, but one is easily a slip.</summary>
    public static void Stock(Checker check, Records.ShimStock stock)
    {
        var inches = stock.Stock.Where(s => IsInch(s.Thickness)).ToArray();
        var fewer = 2 * inches.Length <= stock.Stock.Count ? inches : [.. stock.Stock.Except(inches)];
        if (inches.Length > 0 && inches.Length < stock.Stock.Count)
        {
            var (other, most) = fewer == inches ? ("inches", "millimetres") : ("millimetres", "inches");
            check.Problems.Note("mixed-shims", fewer[0].Origin.At("thickness"), $"This thickness ({Slips.Text(fewer[0].Thickness)}) is in {other}, but most of '{stock.Name}' are in {most}.", "Check the unit.");
        }

        if (stock.Stock.Count > ShimPacks.MostThicknesses)
        {
            check.Problems.Note("too-many-shims", stock.Origin.At("stock"), FormattableString.Invariant($"'{stock.Name}' has more than {ShimPacks.MostThicknesses} thicknesses, too many to pick a pack from."), "Remove thicknesses you no longer buy.");
        }
    }

    /// <summary>A shim that the stock does not list.</summary>
    public static void Pack(Checker check, Gearbox box, Setting asked, JobSetting setting)
    {
        if (box.Shims.FirstOrDefault(s => s.Id == asked.Shims) is not { } stock)
        {
            return;
        }

        foreach (var (key, pack) in new[] { ("trial_pack", setting.TrialPack), ("pack", setting.Pack) })
        {
            foreach (var shim in pack.Where(p => !IsIn(stock, p)).Take(1))
            {
                check.Problems.Note(
                    "shim-not-in-stock",
                    setting.Origin.At(key),
                    $"'{stock.Name}' has no shim of {Slips.Text(shim)}.",
                    Slips.Meant(shim, v => v is Length length && IsIn(stock, length)) ?? "Check the value and its unit, or add the thickness to the gearbox file, with count: 0 if there are none left.");
            }
        }
    }

    private static bool IsIn(Records.ShimStock stock, Length shim) => stock.Stock.Any(s => Math.Abs(s.Thickness.Micrometers - shim.Micrometers) < 0.5);

    private static bool IsInch(Length length) => length.Unit is UnitsNet.Units.LengthUnit.Inch or UnitsNet.Units.LengthUnit.Mil;
}
