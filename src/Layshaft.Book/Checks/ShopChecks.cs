using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Book.Checks;

internal static class ShopChecks
{
    public static void Run(Checker check, Shop shop)
    {
        check.Unique(shop.Technicians, t => t.Id, "technicians");
        check.Unique(shop.Instruments, i => i.Id, "instruments");
        if (shop.Logo is { } logo && !check.Draft.Files.Has(logo))
        {
            check.Problems.Add("missing-file", shop.Origin.At("logo"), $"There is no file '{logo}' beside shop.yaml.", "Add the file, or remove this line.");
        }

        foreach (var instrument in shop.Instruments)
        {
            ErrorLimit(check, instrument);

            if (instrument.Resolution.InSi() <= 0)
            {
                check.Problems.Add("not-positive", instrument.Origin.At("resolution"), "A resolution must be more than 0.", "Write the smallest step the instrument shows.");
            }

            if (instrument.Repeatability is { } repeatability
                && check.Like(repeatability, instrument.Resolution, instrument.Origin.At("repeatability"), "its resolution")
                && repeatability.InSi() < 0)
            {
                check.Problems.Add(
                    "negative",
                    instrument.Origin.At("repeatability"),
                    "A repeatability cannot be negative.",
                    "Write the standard deviation of repeated readings, or remove the line.");
            }
        }
    }

    private static void ErrorLimit(Checker check, Instrument instrument)
    {
        if (instrument.ErrorLimit is null == instrument.Class is null)
        {
            check.Problems.Add(
                "error-limit",
                instrument.Origin.At(instrument.Class is null ? "id" : "class"),
                $"'{instrument.Name}' has {(instrument.Class is null ? "no error limit" : "both an error limit and a class")}.",
                "Write 'error_limit: …' from its calibration certificate, or for a torque wrench 'class: …', such as 4 %.");
        }

        if (instrument.ErrorLimit is { } limit && check.Like(limit, instrument.Resolution, instrument.Origin.At("error_limit"), "its resolution") && limit.InSi() <= 0)
        {
            check.Problems.Add("not-positive", instrument.Origin.At("error_limit"), "An error limit must be more than 0.", "Write the limit from the calibration certificate.");
        }

        if (instrument.Class is { } share && (share <= 0 || instrument.Resolution is not UnitsNet.Torque))
        {
            check.Problems.Add("wrench-class", instrument.Origin.At("class"), "A class is a share above 0 % and only for a torque wrench.", "Write 'error_limit: …' for other instruments.");
        }
    }
}
