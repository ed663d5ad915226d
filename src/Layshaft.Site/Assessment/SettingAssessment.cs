using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Site.Assessment;

/// <summary>What one setting of a job comes to.</summary>
/// <param name="Setting">What the gearbox asks for.</param>
/// <param name="Recorded">What the job says; null when it says nothing.</param>
/// <param name="Found">The value as it came in, against the target.</param>
/// <param name="Built">The value as it left, against the target.</param>
/// <param name="Instrument">What it was measured with; null when the job does not say.</param>
public sealed record SettingAssessment(
    Setting Setting, JobSetting? Recorded, SettingResult Found, SettingResult Built, Book.Records.Instrument? Instrument)
{
    /// <summary>Judges all settings of a job, in the order of the gearbox file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="gearbox">The type of its unit.</param>
    /// <param name="shop">The shop, for its instruments.</param>
    public static IReadOnlyList<SettingAssessment> Of(Job job, Gearbox gearbox, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(gearbox);
        ArgumentNullException.ThrowIfNull(shop);
        return [.. gearbox.Settings.Select(s => Of(s, job.Settings.FirstOrDefault(r => r.Setting == s.Id), shop))];
    }

    private static SettingAssessment Of(Setting setting, JobSetting? recorded, Shop shop)
    {
        var instrument = shop.Instruments.FirstOrDefault(i => i.Id == recorded?.Instrument);
        return new SettingAssessment(
            setting, recorded, Judge(setting, recorded?.Found, instrument), Judge(setting, recorded?.Built, instrument), instrument);
    }

    private static SettingResult Judge(Setting setting, IReadOnlyList<IQuantity>? readings, Book.Records.Instrument? instrument) => SettingSheet.Check(
        new RequiredSetting(setting.Name, KindOf(setting.Kind), setting.Target.Low, setting.Target.High),
        readings is { Count: > 0 }
            ? MeasuredQuantity.From(readings, instrument?.Figures ?? Engineering.Measurement.Instrument.Unknown)
            : null);

    private static Engineering.Settings.SettingKind KindOf(Book.Records.SettingKind kind) => kind switch
    {
        Book.Records.SettingKind.EndFloat => Engineering.Settings.SettingKind.EndFloat,
        Book.Records.SettingKind.Preload => Engineering.Settings.SettingKind.Preload,
        Book.Records.SettingKind.Backlash => Engineering.Settings.SettingKind.Backlash,
        Book.Records.SettingKind.RunOut => Engineering.Settings.SettingKind.RunOut,
        Book.Records.SettingKind.Breakaway => Engineering.Settings.SettingKind.Breakaway,
        Book.Records.SettingKind.DragTorque => Engineering.Settings.SettingKind.DragTorque,
        Book.Records.SettingKind.Tightening => Engineering.Settings.SettingKind.TighteningTorque,
        _ => Engineering.Settings.SettingKind.Position,
    };
}
