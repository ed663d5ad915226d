using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Book.Checks;

internal static class UnitChecks
{
    public static void Run(Checker check, Unit unit)
    {
        check.Refers(unit.Gearbox, check.Draft.Gearboxes, unit.Origin.At("gearbox"), "gearbox");
        check.Refers(unit.Car, check.Draft.Cars, unit.Origin.At("car"), "car");
        for (var i = 0; i < unit.Owners.Count; i++)
        {
            check.Refers(unit.Owners[i].Customer, check.Draft.Customers, unit.Owners[i].Origin.At("customer"), "customer");
            if (i > 0)
            {
                check.InOrder(unit.Owners[i - 1].From, unit.Owners[i].From, unit.Owners[i].Origin.At("from"), "The owners are not in date order");
            }
        }

        CountsAlike(check, unit, unit.UseAtStart, unit.Origin.At("use_at_start"));
        if (check.Draft.Gearboxes.Get(unit.Gearbox) is { } box)
        {
            UnitKindChecks.Run(check, unit, box);
            check.Names(unit.RatioSet, box.RatioSets.Select(r => r.Id), unit.Origin.At("ratio_set"), "ratio set", box.Name, box.Origin.Place.File);
            DropPair(check, box, unit, unit.DropPair, unit.Origin.At("drop_pair"));
            FinalDrive(check, box, unit, unit.FinalDrive, unit.Origin.At("final_drive"));
            foreach (var kit in unit.Owners.Select(o => o.Kit).OfType<Kit>())
            {
                GearChoiceChecks.Kit(check, box, kit);
            }

            Efficiencies(check, unit, box);
            check.Unique(unit.Fitted, p => p.Part, "fitted parts", "part");
            foreach (var fitted in unit.Fitted)
            {
                check.Names(fitted.Part, box.Parts.Select(p => p.Id), fitted.Origin.At("part"), "part", box.Name, box.Origin.Place.File);
            }
        }
    }

    // One of the two says nothing without the other.
    private static void Efficiencies(Checker check, Unit unit, Gearbox box)
    {
        if (check.Draft.Cars.Get(unit.Car) is { } car && car.AxleEfficiency is null != box.MeshEfficiency is null)
        {
            check.Problems.Note(
                "half-efficiency",
                unit.Origin.At("car"),
                box.MeshEfficiency is null
                    ? $"The axle_efficiency of {car.Name} is not used: the {box.Name} has no mesh_efficiency."
                    : $"The mesh_efficiency of the {box.Name} is not used: {car.Name} has no axle_efficiency.",
                "Give both, or neither.");
        }
    }

    /// <summary>Serials distinguish the units of one gearbox, and a file copied for the next unit easily keeps the old one. A note only, since a worn case may not show its serial.</summary>
    public static void Serials(Checker check)
    {
        foreach (var same in check.Draft.Units.Records.Values.GroupBy(u => (u.Gearbox, u.Serial)))
        {
            Unit[] units = [.. same.OrderBy(u => u.Id, StringComparer.Ordinal)];
            foreach (var unit in units.Skip(1))
            {
                check.Problems.Note("duplicate-serial", unit.Origin.At("serial"), $"Unit '{units[0].Id}' also has the serial '{unit.Serial}'.", "Check the serial on the case.");
            }
        }
    }

    /// <summary>The usage of one unit is counted in one unit only.</summary>
    public static void CountsAlike(Checker check, Unit unit, Use use, Place place)
    {
        if (check.Draft.Shop is not { } shop)
        {
            return;
        }

        var counted = unit.UseCountedIn ?? shop.UseCountedIn;
        if (use.Unit != counted)
        {
            var unitOfUse = counted.ToString().ToLowerInvariant();
            check.Problems.Add(
                "mixed-use",
                place,
                $"The usage of this unit is counted in {unitOfUse}, not as '{use}'.",
                $"Write the usage in {unitOfUse}, or set 'use_counted_in' in the unit file.");
        }
    }

    /// <summary>A drop pair that the gearbox or an owner's kit has.</summary>
    public static void DropPair(Checker check, Gearbox box, Unit unit, Teeth? pair, Place place)
    {
        if (pair is not { } teeth)
        {
            return;
        }

        if (box.DropGears is not { } drop)
        {
            check.Problems.Add("no-drop-gears", place, $"{box.Name} has no drop gears.", "Remove this line.");
            return;
        }

        var swapped = new Teeth(teeth.Driven, teeth.Driver);
        Teeth[] known = [.. drop.Pairs, .. unit.Owners.SelectMany(o => o.Kit?.DropPairs ?? [])];
        if (!known.Contains(teeth) && !(drop.Swappable && known.Contains(swapped)))
        {
            check.Problems.Add("no-such-pair", place, $"{box.Name} has no drop pair {teeth}.", $"In stock: {string.Join(", ", known)}.");
        }
    }

    /// <summary>A final drive that the gearbox or an owner's kit has.</summary>
    public static void FinalDrive(Checker check, Gearbox box, Unit unit, Teeth? pair, Place place)
    {
        Teeth[] known = [.. box.FinalDrives, .. unit.Owners.SelectMany(o => o.Kit?.FinalDrives ?? [])];
        if (pair is { } teeth && box.FinalDrives.Count > 0 && !known.Contains(teeth))
        {
            check.Problems.Add("no-such-pair", place, $"{box.Name} has no final drive {teeth}.", $"In stock: {string.Join(", ", known)}.");
        }
    }
}
