using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using Layshaft.Engineering.Settings.Differentials;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>Whether a plate differential can be built as written, and whether its breakaway follows from its shims.</summary>
internal static class DifferentialChecks
{
    // Where the gearbox file does not give the shims' tolerance (common practice, no source).
    private static readonly Length UsualTolerance = Length.FromMicrometers(5);

    /// <summary>The sizes of the type.</summary>
    public static void Run(Checker check, Gearbox box)
    {
        if (box.Differential is not { } plates)
        {
            return;
        }

        if (plates is { OuterDiameter: { } outer, InnerDiameter: { } inner } && inner >= outer)
        {
            check.Problems.Add("diameters-swapped", plates.Origin.At("inner_diameter"), "The inner diameter of the friction faces is not below the outer one.", "Swap the two diameters.");
        }

        if (plates.Friction > 1)
        {
            check.Problems.Add("unlikely-friction", plates.Origin.At("friction"), "A coefficient of friction of plates in oil is below 1.", "Write it as a number, such as 0.10.");
        }
    }

    /// <summary>The build of a job.</summary>
    public static void Run(Checker check, Job job, Gearbox box)
    {
        if (job.Differential is { } recorded)
        {
            if (box.Differential is not { } plates)
            {
                check.Problems.Add("no-differential", recorded.Origin.Place, $"{box.Name} has no plate differential.", "Remove this section, or add 'differential: …' to the gearbox file.");
                return;
            }

            Build(check, recorded.Found, plates, box);
            Build(check, recorded.Built, plates, box);
            if (recorded is { Found: { } found, Built: { } built, Why: null } && (found.Ramps != built.Ramps || found.Plates != built.Plates))
            {
                check.Problems.Note("differential-changed", built.Origin.Place, $"The differential was changed from {Text(found)} to {Text(built)}, but the report gives no reason.", "Add 'why: …' to 'differential'.");
            }

            foreach (var setting in job.Settings)
            {
                Shims(check, box, plates, recorded.Built?.Plates ?? recorded.Found?.Plates, setting);
            }
        }

        if (job.Finished is not null && box is { Kind: UnitKind.Differential, Differential: not null } && job.Differential?.Built is null)
        {
            check.Problems.Note("differential-not-recorded", job.Origin.At("differential"), "Ramps and plates as built are not recorded. The report will state this.", "Add 'differential: { built: { ramps: …, plates: … } }'.");
        }
    }

    /// <summary>As found against the build that the last job left.</summary>
    public static void Between(Checker check, Job? before, Job job)
    {
        if (before?.Differential?.Built is { } left && job.Differential?.Found is { } found && (left.Ramps != found.Ramps || left.Plates != found.Plates))
        {
            check.Problems.Note("differential-differs", found.Origin.Place, $"Job {before.Number} left the differential as {Text(left)}, but it was found as {Text(found)}.", "Check both jobs. If another workshop opened it, write that in 'notes'.");
        }
    }

    private static void Build(Checker check, DifferentialBuild? build, PlateDifferential plates, Gearbox box)
    {
        if (build is null)
        {
            return;
        }

        if (!plates.Ramps.Contains(build.Ramps))
        {
            check.Problems.Add("no-such-ramps", build.Origin.At("ramps"), $"{box.Name} has no ramps {build.Ramps}.", $"Available: {string.Join(", ", plates.Ramps)} (drive/coast).");
        }

        if (build.Plates.Faces == 0)
        {
            check.Problems.Add("no-friction-face", build.Origin.At("plates"), "These plates have no friction face: there is no inner plate.", "Write O for an outer and I for an inner plate, such as O-I-O-I-O.");
        }
    }

    private static void Shims(Checker check, Gearbox box, PlateDifferential plates, Values.PlateSequence? stack, JobSetting setting)
    {
        if (box.SettingOf(setting.Setting) is not { Kind: Records.SettingKind.Breakaway, Shims: { } stock } asked
            || stack is not { } order || plates.PackOf(order) is not { } pack || plates.SpringRate is not { } rate
            || setting is { TrialPack.Count: 0 } or { Pack.Count: 0 } or { Trial.Count: 0 } or { Built.Count: 0 }
            || setting.Trial.Concat(setting.Built).Any(v => v is not Torque)
            || setting.TrialPack.Concat(setting.Pack).Any(PackChecks.IsTooThick))
        {
            return;
        }

        var instrument = check.Draft.Shop?.Instruments.FirstOrDefault(i => i.Id == setting.Instrument)?.Figures;
        if (instrument is { ErrorLimit: not (null or Torque) } or { Resolution: not (null or Torque) } or { Repeatability: not (null or Torque) })
        {
            return;
        }

        var tolerance = box.Shims.FirstOrDefault(s => s.Id == stock)?.Tolerance ?? UsualTolerance;
        var compared = BreakawayCheck.Of(
            pack,
            rate,
            new TrialBuild(PackThickness.Of(setting.TrialPack), PackThickness.StandardUncertainty(setting.TrialPack.Count, tolerance), Measured(setting.Trial, instrument)),
            PackThickness.Of(setting.Pack),
            Measured(setting.Built, instrument),
            asked.Sense == ShimSense.MoreShimLess ? ShimEffect.Reduces : ShimEffect.Increases);
        if (compared.Contradicts)
        {
            check.Problems.Note(
                "pack-contradicts",
                setting.Origin.At("built"),
                FormattableString.Invariant($"By the trial, plates and spring rate, '{asked.Name}' should be about {compared.Expected.NewtonMeters:0} N·m with this pack, but it is {compared.Built.NewtonMeters:0} N·m. The difference exceeds the uncertainty of {compared.Uncertainty.NewtonMeters:0} N·m."),
                "Check both packs, both values and the direction of 'more_shim'.");
        }
    }

    private static MeasuredQuantity Measured(IReadOnlyList<IQuantity> values, Layshaft.Engineering.Measurement.Instrument? instrument) =>
        MeasuredQuantity.From(values, instrument ?? Engineering.Measurement.Instrument.Unknown);

    private static string Text(DifferentialBuild build) => $"{build.Ramps}, {build.Plates}";
}
