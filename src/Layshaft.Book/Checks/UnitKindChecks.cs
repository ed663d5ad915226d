using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

/// <summary>What a kind of unit needs and what it cannot have.</summary>
internal static class UnitKindChecks
{
    /// <summary>The gears of a type against its kind.</summary>
    public static void Run(Checker check, Gearbox box)
    {
        var (ratios, finals) = Needs(box.Kind);
        One(check, box, "ratio_sets", ratios, box.RatioSets.Count > 0, "a list, each item a ratio set");
        One(check, box, "final_drives", finals, box.FinalDrives.Count > 0, "a list, each item crown wheel/pinion teeth");
        if (box.Kind == UnitKind.Differential)
        {
            Refuse(check, box, "drop_gears", box.DropGears is not null);
            Refuse(check, box, "main_gears", box.MainGears is not null);
        }
    }

    /// <summary>The gears of a unit against the kind of its type.</summary>
    public static void Run(Checker check, Unit unit, Gearbox box)
    {
        var (ratios, finals) = Needs(box.Kind);
        foreach (var (key, needed, given) in new[] { ("ratio_set", ratios, unit.RatioSet is not null), ("final_drive", finals, unit.FinalDrive is not null) })
        {
            if (needed && !given && !unit.Origin.Has(key))
            {
                check.Problems.Add("missing-field", unit.Origin.Place, $"'{key}' is missing from a unit.", $"Add '{key}: …': {box.Name} is {Words(box.Kind)}.");
            }
            else if (!needed && given)
            {
                check.Problems.Add("wrong-kind-of-unit", unit.Origin.At(key), $"{box.Name} is {Words(box.Kind)}, which has no '{key}'.", "Remove this line.");
            }
        }
    }

    /// <summary>What a job says of gears against the kind of its unit's type.</summary>
    public static void Run(Checker check, Job job, Gearbox box)
    {
        if (job.Trace is not null && !Needs(box.Kind).Ratios)
        {
            check.Problems.Add("wrong-kind-of-unit", job.Origin.At("trace"), $"{box.Name} is {Words(box.Kind)}; a trace shows the gears of a gearbox.", "Name the trace in a job of the car's gearbox.");
        }
    }

    private static (bool Ratios, bool Finals) Needs(UnitKind kind) => (kind == UnitKind.Gearbox, kind != UnitKind.Differential);

    private static void One(Checker check, Gearbox box, string key, bool needed, bool given, string words)
    {
        if (needed && !given && !box.Origin.Has(key))
        {
            check.Problems.Add("missing-field", box.Origin.Place, $"'{key}' is missing from {Words(box.Kind)}.", $"Add '{key}: …' ({words}), or write the 'kind' of the unit.");
        }
        else if (needed && !given)
        {
            check.Problems.Add("too-few", box.Origin.At(key), $"'{key}' is empty.", "Write at least one.");
        }
        else if (!needed)
        {
            Refuse(check, box, key, given);
        }
    }

    private static void Refuse(Checker check, Gearbox box, string key, bool given)
    {
        if (given)
        {
            check.Problems.Add("wrong-kind-of-unit", box.Origin.At(key), $"This is {Words(box.Kind)}, which has no '{key}'.", "Remove it, or correct 'kind'.");
        }
    }

    private static string Words(UnitKind kind) => kind switch
    {
        UnitKind.Axle => "an axle",
        UnitKind.Differential => "a differential",
        _ => "a gearbox",
    };
}
