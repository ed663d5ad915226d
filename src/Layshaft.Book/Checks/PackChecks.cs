using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>Whether the trial, the pack fitted after it and the value as built agree.</summary>
internal static class PackChecks
{
    // Where the gearbox file does not give the shims' tolerance (common practice, no source).
    private static readonly Length UsualTolerance = Length.FromMicrometers(5);

    public static void Run(Checker check, Gearbox box, Setting asked, JobSetting setting)
    {
        // Backlash does not follow its shims one for one, and only lengths can be added to shims.
        if (asked.Kind is not (Records.SettingKind.EndFloat or Records.SettingKind.Preload or Records.SettingKind.Position)
            || asked.Shims is null || setting.TrialPack.Count == 0 || setting.Pack.Count == 0
            || !AllLengths(setting.Trial) || !AllLengths(setting.Built)
            || setting.TrialPack.Concat(setting.Pack).Any(IsTooThick))
        {
            return;
        }

        var instrument = check.Draft.Shop?.Instruments.FirstOrDefault(i => i.Id == setting.Instrument)?.Figures;
        if (instrument is { ErrorLimit: not (null or Length) } or { Resolution: not Length } or { Repeatability: not (null or Length) })
        {
            return;
        }

        var compared = PackCheck.Of(
            setting.TrialPack,
            MeasuredQuantity.From(setting.Trial, instrument ?? Engineering.Measurement.Instrument.Unknown),
            setting.Pack,
            MeasuredQuantity.From(setting.Built, instrument ?? Engineering.Measurement.Instrument.Unknown),
            asked.Sense == ShimSense.MoreShimLess ? ShimEffect.Reduces : ShimEffect.Increases,
            box.Shims.FirstOrDefault(s => s.Id == asked.Shims)?.Tolerance ?? UsualTolerance);
        if (compared.Contradicts)
        {
            check.Problems.Note(
                "pack-contradicts",
                setting.Origin.At("built"),
                FormattableString.Invariant($"By the trial, {Name(asked)} should be {Mm(compared.Expected):0.000} mm with this pack, but it is {Mm(compared.Built):0.000} mm. The difference exceeds the measurement uncertainty of {compared.Difference.Number.ExpandedUncertainty:0.000} mm."),
                "Check both packs and both values.");
        }
    }

    /// <summary>Whether a shim is thicker than any pack, which the arithmetic of packs refuses.</summary>
    public static bool IsTooThick(Length shim) => shim > PackThickness.ThickestShim;

    /// <summary>Reports such a shim.</summary>
    public static void TooThick(Checker check, Place place) => check.Problems.Add(
        "unlikely-shim", place, FormattableString.Invariant($"A shim must not be thicker than {PackThickness.ThickestShim.Millimeters} mm."), "Check the value and its unit.");

    private static bool AllLengths(IReadOnlyList<IQuantity> values) => values.Count > 0 && values.All(v => v is Length);

    private static string Name(Setting asked) => $"'{asked.Name}'";

    private static double Mm(MeasuredQuantity measured) => measured.Number.Value;
}
