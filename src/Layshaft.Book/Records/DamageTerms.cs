using Layshaft.Book.Problems;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>Where a damage term comes from.</summary>
public enum TermFamily
{
    /// <summary>Gear teeth: headings of ISO 10825.</summary>
    GearTooth,

    /// <summary>Rolling bearings: groups of ISO 15243.</summary>
    Bearing,

    /// <summary>Dog rings, selectors and hubs: the trade's words (common practice, no source).</summary>
    Engagement,

    /// <summary>Friction plates, ramps and springs: the trade's words (common practice, no source).</summary>
    Friction,

    /// <summary>Synchronisers, selector drums, pumps, chains and sensors: the trade's words (common practice, no source).</summary>
    Mechanism,
}

/// <summary>A word for damage.</summary>
/// <param name="Word">As written in a finding.</param>
/// <param name="Family">Where it comes from.</param>
public sealed record DamageTerm(string Word, TermFamily Family);

/// <summary>The words for damage that a finding may use. Sentences and drawings for them belong to the pages.</summary>
public static class DamageTerms
{
    // Many in the trade say undercut, which these pages keep for the root of a tooth.
    private const string BackCutWorn = "back-cut worn";

    /// <summary>All of them, by family.</summary>
    public static IReadOnlyList<DamageTerm> All { get; } =
    [
        .. Of(
            TermFamily.GearTooth,
            "polishing", "normal wear", "moderate wear", "excessive wear", "abrasive wear", "scratching", "interference wear", "chemical corrosion",
            "fretting corrosion", "scaling", "overheating", "cavitation", "electric erosion", "scuffing", "indentation",
            "plastic deformation", "rippling", "ridging", "burrs", "initial pitting", "progressive pitting", "micropitting",
            "flake pitting", "spalling", "case crushing", "hardening crack", "grinding crack", "fatigue crack",
            "overload breakage", "tooth shear", "fatigue breakage"),
        .. Of(
            TermFamily.Bearing,
            "subsurface fatigue", "surface fatigue", "abrasive bearing wear", "adhesive wear", "moisture corrosion",
            "false brinelling", "bearing fretting", "electrical erosion", "brinelling", "debris dents", "handling dents",
            "forced fracture", "fatigue fracture", "thermal cracking", "heat discolouration"),
        .. Of(
            TermFamily.Engagement,
            "rounded dogs", "chipped dog", BackCutWorn, "blued dogs", "dog corner radius", "burred dogs", "worn fork pads", "blued fork",
            "bent fork", "worn detent", "worn hub splines", "ring tight on hub", "cracked ring"),
        .. Of(
            TermFamily.Friction,
            "worn plate", "glazed plate", "burnt plate", "warped plate", "broken tab", "worn ramp", "dented ramp", "weak spring"),
        .. Of(
            TermFamily.Mechanism,
            "worn synchro cone", "rounded synchro teeth", "cracked synchro ring", "worn drum groove", "chipped ratchet", "worn interlock",
            "scored pump", "stretched chain", "damaged sensor"),
    ];

    /// <summary>One of the words, as a finding writes it.</summary>
    public static Shape<string> Shape { get; } = new ScalarShape<string>(
        "a term of the glossary",
        "rounded dogs",
        "unknown-word",
        t => Words.Contains(t) ? Parsed.Good(t) : Parsed.Bad<string>(
            $"'{t[..Math.Min(t.Length, 60)]}' is not a term of the glossary.",
            t.Contains("undercut", StringComparison.OrdinalIgnoreCase) ? $"Did you mean '{BackCutWorn}'?" : NearestWord.Advice(t, Words)),
        () => SchemaParts.OneOf(Words));

    private static IReadOnlyCollection<string> Words => [.. All.Select(t => t.Word)];

    private static IEnumerable<DamageTerm> Of(TermFamily family, params string[] words) => words.Select(w => new DamageTerm(w, family));
}
