using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>Whether a part is described with what its kind declares.</summary>
internal static class PartKindChecks
{
    /// <summary>The quantity of a measure.</summary>
    public static void Measures(Checker check, Part part)
    {
        foreach (var measure in part.Measures.Where(m => m.New is not (null or Temperature) && !PartKinds.Measures(part.Kind, m.New)))
        {
            check.Problems.Add(
                "wrong-quantity",
                measure.Origin.At("new"),
                $"'{part.Name}' is {Words(part.Kind)}, which is measured as {PartKinds.QuantitiesOf(part.Kind)}.",
                "Correct the unit, or the kind of the part.");
        }
    }

    /// <summary>The damage terms of a finding.</summary>
    public static void Terms(Checker check, Finding finding, Part part)
    {
        var families = PartKinds.TermsOf(part.Kind);
        foreach (var term in finding.Conditions.Select(c => DamageTerms.All.FirstOrDefault(t => t.Word == c)).OfType<DamageTerm>().Where(t => !families.Contains(t.Family)))
        {
            string[] words = [.. DamageTerms.All.Where(t => families.Contains(t.Family)).Select(t => t.Word)];
            check.Problems.Add(
                "wrong-term",
                finding.Origin.At("conditions"),
                $"'{term.Word}' is not a damage term for {Words(part.Kind)}.",
                NearestWord.Of(term.Word, words) is { } near ? $"Did you mean '{near}'?" : $"Write one of: {string.Join(", ", words.Take(12))}{(words.Length > 12 ? " …" : string.Empty)}.");
        }
    }

    /// <summary>What a setting of a breakaway torque needs.</summary>
    public static void Breakaway(Checker check, Gearbox box, Setting setting)
    {
        if (setting.Kind != SettingKind.Breakaway)
        {
            return;
        }

        if ((setting.Target.Low ?? setting.Target.High) is not Torque)
        {
            check.Problems.Add("wrong-quantity", setting.Origin.At("target"), "A breakaway torque must be a torque.", "Write it in N·m or lbf·ft, such as 60 N·m to 75 N·m.");
        }

        if (!box.Parts.Any(p => p.Kind == PartKind.FrictionPlate))
        {
            check.Problems.Add("no-plates", setting.Origin.At("kind"), $"{box.Name} has no part of the kind 'friction plate', so it has no breakaway torque.", "Add the plates under 'parts', or correct 'kind'.");
        }

        if (setting.Shims is not null && Missing(box.Differential) is { Length: > 0 } missing)
        {
            check.Problems.Note("shim-target", setting.Origin.At("shims"), $"No pack can be calculated for '{setting.Name}': {missing} missing under 'differential'.", "Add the values, or change the pack step by step and measure again.");
        }
    }

    private static string Missing(PlateDifferential? plates)
    {
        (string Key, bool Given)[] keys =
        [
            ("outer_diameter", plates?.OuterDiameter is not null), ("inner_diameter", plates?.InnerDiameter is not null),
            ("friction", plates?.Friction is not null), ("spring_rate", plates?.SpringRate is not null),
        ];
        string[] missing = [.. keys.Where(k => !k.Given).Select(k => $"'{k.Key}'")];
        return missing.Length == 0 ? string.Empty : $"{string.Join(", ", missing)} {(missing.Length == 1 ? "is" : "are")}";
    }

    private static string Words(PartKind kind) => Part.WordOf(kind) is var word && "aeiou".Contains(word[0], StringComparison.Ordinal) ? $"an {word}" : $"a {word}";
}
