using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Book.Checks;

/// <summary>Pairs of gears that can be changed one by one.</summary>
internal static class GearChoiceChecks
{
    /// <summary>Each position is one of the gearbox's and is written once, and its pairs mesh.</summary>
    public static void Run(Checker check, Gearbox box, IReadOnlyList<GearChoices> choices)
    {
        var most = box.RatioSets.Select(r => r.Gears.Count).DefaultIfEmpty().Max();
        foreach (var (choice, i) in choices.Select((c, i) => (c, i)))
        {
            if (choice.Gear > most)
            {
                check.Problems.Add("no-such-gear", choice.Origin.At("gear"), $"This gearbox has no gear {choice.Gear}.", $"Write a gear from 1 to {most}.");
            }
            else if (choices.Take(i).Any(c => c.Gear == choice.Gear))
            {
                check.Problems.Add("gear-twice", choice.Origin.At("gear"), $"The pairs for gear {choice.Gear} are given twice.", "Write them in one list.");
            }

            if (box.MainGears is { } cut)
            {
                MeshChecks.Pairs(check, cut, choice.Pairs, choice.Origin.At("pairs"));
            }
        }
    }

    /// <summary>An owner's own gears for a unit.</summary>
    public static void Kit(Checker check, Gearbox box, Kit kit)
    {
        Run(check, box, kit.GearPairs);
        if (kit.DropPairs.Count > 0 && box.DropGears is null)
        {
            check.Problems.Add("no-drop-gears", kit.Origin.At("drop_pairs"), $"{box.Name} has no drop gears.", "Remove this line.");
        }
        else if (box.DropGears is { } drop)
        {
            MeshChecks.Pairs(check, drop.Cut, kit.DropPairs, kit.Origin.At("drop_pairs"));
        }
    }

    /// <summary>The gears that a job leaves in a unit: as many as it has, each longer than the one before, and each of them known.</summary>
    public static void Fitted(Checker check, Job job, Unit unit, Gearbox box)
    {
        if (job.Gears.Count == 0 || box.RatioSetOf(unit.RatioSet) is not { } set)
        {
            return;
        }

        var place = job.Origin.At("gears");
        if (job.Gears.Count != set.Gears.Count)
        {
            check.Problems.Add("wrong-number-of-gears", place, $"{box.Name} with the {set.Name} has {set.Gears.Count} gears, but {job.Gears.Count} are given.", "Write every gear, first gear first, also those that were not changed.");
            return;
        }

        GearboxChecks.InOrder(check, job.Gears, place);
        for (var i = 0; i < job.Gears.Count; i++)
        {
            Teeth[] known =
            [
                .. box.RatioSets.Where(r => r.Gears.Count > i).Select(r => r.Gears[i])
                    .Concat(box.GearPairs.Concat(unit.Owners.SelectMany(o => o.Kit?.GearPairs ?? [])).Where(c => c.Gear == i + 1).SelectMany(c => c.Pairs))
                    .Distinct(),
            ];
            if (!known.Contains(job.Gears[i]))
            {
                check.Problems.Add("no-such-pair", place, $"{box.Name} has no pair {job.Gears[i]} for gear {i + 1}.", $"In stock or in the owner's kit: {string.Join(", ", known)}.");
            }
        }
    }
}
