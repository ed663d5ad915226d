using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>Takes the question for a shim pack from a book: the newest job of a unit with a trial of the setting.</summary>
internal static class ShimFromBook
{
    public static Parsed<ShimQuestion> Read(ShopBook book, string unitName, string settingName)
    {
        var unit = book.Units.Values.FirstOrDefault(u => u.Id == unitName || u.Serial == unitName);
        if (unit is null)
        {
            return Parsed.Bad<ShimQuestion>($"There is no unit '{unitName}'.", NearestWord.Advice(unitName, [.. book.Units.Keys]));
        }

        var box = book.GearboxOf(unit);
        if (box.SettingOf(settingName) is not { } setting)
        {
            return Parsed.Bad<ShimQuestion>($"'{box.Name}' has no setting '{settingName}'.", NearestWord.Advice(settingName, [.. box.Settings.Where(s => s.Shims is not null).Select(s => s.Id)]));
        }

        if (setting.Shims is null || box.Shims.FirstOrDefault(s => s.Id == setting.Shims) is not { } shims)
        {
            return Parsed.Bad<ShimQuestion>($"'{setting.Name}' is not set with shims.", "Name a setting that has 'shims' in the gearbox file.");
        }

        if (setting.PackBand is { Wrong: { } why, Remedy: var instead })
        {
            return Parsed.Bad<ShimQuestion>(why, instead);
        }

        var target = Bands.Of(setting.Target, $"The target of '{setting.Name}'");
        var trials = book.JobsOf(unit.Id).OrderByDescending(j => j.Received).ThenByDescending(j => j.Number, StringComparer.Ordinal)
            .Select(j => (Job: j, Setting: j.Settings.FirstOrDefault(s => s.Setting == settingName && s.TrialPack.Count > 0 && s.Trial.Count > 0)));
        var (job, trial) = trials.FirstOrDefault(t => t.Setting is not null);
        return target.Wrong is { } wrong ? Parsed.Bad<ShimQuestion>(wrong, target.Remedy)
            : trial is null ? Parsed.Bad<ShimQuestion>($"No job of {unit.Serial} has a trial of '{setting.Name}'.", "Add 'trial_pack' and 'trial' to the setting in the job, or write --trial-pack, --measured, --target and --stock.")
            : trial.Trial.Any(v => v is not Length) ? Parsed.Bad<ShimQuestion>($"The trial of '{setting.Name}' is not a length.", "Write a setting that is measured as a length.")
            : Parsed.Good(Question(book, unit, job, setting, shims, trial, target.Value!));
    }

    private static ShimQuestion Question(
        ShopBook book, Book.Records.Unit unit, Job job, Setting setting, Book.Records.ShimStock shims, JobSetting trial, TargetBand target)
    {
        var tolerance = shims.Tolerance ?? ShimQuestion.UsualTolerance;
        var instrument = book.Shop.Instruments.FirstOrDefault(i => i.Id == trial.Instrument)?.Figures ?? Engineering.Measurement.Instrument.Unknown;
        return new ShimQuestion(
            $"{setting.Name}, {unit.Serial}, job {job.Number}",
            trial.TrialPack,
            new ShimTask(
                new TrialBuild(
                    PackThickness.Of(trial.TrialPack),
                    PackThickness.StandardUncertainty(trial.TrialPack.Count, tolerance),
                    MeasuredQuantity.From(trial.Trial, instrument)),
                target,
                setting.Sense == ShimSense.MoreShimLess ? ShimEffect.Reduces : ShimEffect.Increases,
                ShimQuestion.WithTrial(shims.Stock.Select(s => (s.Thickness, s.Count)), trial.TrialPack, tolerance)));
    }
}
