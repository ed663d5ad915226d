using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Checks;

internal static class GearboxChecks
{
    public static void Run(Checker check, Gearbox box)
    {
        UnitKindChecks.Run(check, box);
        DifferentialChecks.Run(check, box);
        check.Unique(box.RatioSets, r => r.Id, "ratio sets");
        check.Unique(box.Parts, p => p.Id, "parts");
        check.Unique(box.Shims, s => s.Id, "shim stocks");
        foreach (var shim in box.Shims.SelectMany(s => s.Stock).Where(s => PackChecks.IsTooThick(s.Thickness)))
        {
            PackChecks.TooThick(check, shim.Origin.At("thickness"));
        }

        foreach (var stock in box.Shims)
        {
            ShimChecks.Stock(check, stock);
        }

        check.Unique(box.Settings, s => s.Id, "settings");
        check.Unique(box.Strip, s => s.Id, "steps");
        check.Unique(box.Build, s => s.Id, "steps");
        foreach (var set in box.RatioSets)
        {
            Ratios(check, box, set);
        }

        if (box.DropGears is { } drop)
        {
            MeshChecks.Pairs(check, drop.Cut, drop.Pairs, drop.Origin.At("pairs"));
        }

        GearChoiceChecks.Run(check, box, box.GearPairs);
        foreach (var part in box.Parts)
        {
            PartOf(check, box, part);
        }

        foreach (var work in box.UsualWork.Where(w => w.Hours is null && w.Price is null))
        {
            check.Problems.Add("no-price", work.Origin.At("work"), "This work has neither hours nor a price.", "Add 'hours: …' or 'price: …'.");
        }

        MeshChecks.Spans(check, box);
        foreach (var setting in box.Settings)
        {
            if ((setting.Target.Low ?? setting.Target.High) is Temperature)
            {
                check.Problems.Add("wrong-quantity", setting.Origin.At("target"), "A setting cannot be a temperature.", "Write it under 'condition' of the setting it applies to.");
            }

            Instrument(check, setting.Instrument, setting.Target.Low ?? setting.Target.High, setting.Origin.At("instrument"), "the target");
            ShimChecks.Target(check, setting);
            PartKindChecks.Breakaway(check, box, setting);
            check.Names(setting.Shims, box.Shims.Select(s => s.Id), setting.Origin.At("shims"), "shim stock", box.Name);
        }
    }

    private static void Instrument(Checker check, string? id, IQuantity? model, Place place, string what)
    {
        if (check.Draft.Shop is { } shop && check.Names(id, shop.Instruments.Select(i => i.Id), place, "instrument", "shop.yaml") && model is not null && shop.InstrumentOf(id) is { } instrument)
        {
            check.Like(instrument.Resolution, model, place, what, "The instrument's resolution");
        }
    }

    private static void Ratios(Checker check, Gearbox box, RatioSet set)
    {
        InOrder(check, set.Gears, set.Origin.At("gears"));
        if (box.MainGears is { } cut)
        {
            MeshChecks.Pairs(check, cut, set.Gears, set.Origin.At("gears"));
        }
    }

    /// <summary>Each gear must be longer than the one before.</summary>
    public static void InOrder(Checker check, IReadOnlyList<Teeth> gears, Place place)
    {
        for (var i = 1; i < gears.Count; i++)
        {
            if ((long)gears[i].Driven * gears[i - 1].Driver >= (long)gears[i - 1].Driven * gears[i].Driver)
            {
                check.Problems.Add(
                    "gears-out-of-order",
                    place,
                    $"Gear {i + 1} ({gears[i]}) is not taller than gear {i} ({gears[i - 1]}).",
                    "Write first gear first, each as driven/driver.");
            }
        }
    }

    private static void PartOf(Checker check, Gearbox box, Part part)
    {
        check.Unique(part.Measures, m => m.Id, "measures");
        PartKindChecks.Measures(check, part);
        foreach (var measure in part.Measures)
        {
            MeasureOf(check, measure);
        }

        if (part.Grading.WatchFrom >= part.Grading.RenewFrom)
        {
            check.Problems.Add("grading-out-of-order", part.Grading.Origin.At("watch_from"), "'watch_from' is not below 'renew_from'.", "Write a smaller share in 'watch_from'.");
        }

        var most = box.RatioSets.Select(r => r.Gears.Count).DefaultIfEmpty().Max();
        foreach (var (gear, place) in part.Measures.Select(m => (m.Gear, m.Origin.At("gear"))).Prepend((part.Gear, part.Origin.At("gear"))).Where(g => g.Item1 > most))
        {
            check.Problems.Add("no-such-gear", place, $"This gearbox has no gear {gear}.", most == 0 ? "Remove this line." : $"Write a gear from 1 to {most}, or 0 for reverse.");
        }
    }

    private static void MeasureOf(Checker check, Measure measure)
    {
        if (!check.Like(measure.Limit, measure.New, measure.Origin.At("limit"), "the new size"))
        {
            return;
        }

        if (measure.New is Temperature)
        {
            check.Problems.Add("wrong-quantity", measure.Origin.At("new"), "A measure cannot be a temperature.", "Write a length, an angle, a force or a torque.");
            return;
        }

        Instrument(check, measure.Instrument, measure.New, measure.Origin.At("instrument"), "the new size");
        var grows = measure.Limit.InSi() > measure.New.InSi();
        if (measure.Limit.InSi() == measure.New.InSi())
        {
            check.Problems.Add("no-allowance", measure.Origin.At("limit"), "The limit equals the new size, which leaves no wear allowance.", "Correct 'new' or 'limit'.");
        }
        else if (measure.Wear is { } wear && grows != (wear == WearSense.Larger))
        {
            check.Problems.Add(
                "limit-on-wrong-side",
                measure.Origin.At("limit"),
                $"Wear makes this {(wear == WearSense.Larger ? "larger" : "smaller")}, but the limit is {(grows ? "above" : "below")} the new size.",
                "Swap 'new' and 'limit', or correct 'wear_makes_it'.");
        }
        else if (grows && (measure.Span ?? (measure.Pin is null ? null : 1)) is not null)
        {
            check.Problems.Add("limit-on-wrong-side", measure.Origin.At("limit"), "Teeth get thinner as they wear, but the limit is above the new size.", "Swap 'new' and 'limit'.");
        }
    }
}
