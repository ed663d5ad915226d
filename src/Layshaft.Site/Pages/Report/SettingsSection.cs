using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using Layshaft.Site.Assessment;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Shared;
using UnitsNet;

namespace Layshaft.Site.Pages.Report;

/// <summary>How the box was set: each value as found and as built against its target, and what was not recorded.</summary>
/// <param name="Summary">How many settings were recorded, and whether all are within target as built.</param>
/// <param name="IsFolded">Whether the table is folded away on a screen: every setting is within target as built.</param>
/// <param name="Caption">Caption of the table.</param>
/// <param name="Rows">What was recorded, in the order of the gearbox file.</param>
/// <param name="MissingHeading">Said over what is missing; null when nothing is.</param>
/// <param name="Missing">Settings that the gearbox file asks for and the job lacks.</param>
/// <param name="Notes">Further sentences.</param>
public sealed record SettingsSection(
    string Summary,
    bool IsFolded,
    string Caption,
    IReadOnlyList<SettingRowView> Rows,
    string? MissingHeading,
    IReadOnlyList<string> Missing,
    IReadOnlyList<string> Notes)
{
    /// <summary>Composes the section; null when the gearbox file asks for no setting.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var composition = report.Composition;
        var settings = SettingAssessment.Of(report.Job, report.Gearbox, composition.Shop);
        SettingAssessment[] missing = [.. settings.Where(s => s.Setting.Required && s.Built.Status == SettingStatus.NotRecorded)];
        SettingAssessment[] recorded = [.. settings.Where(s => s.Found.Recorded is not null || s.Built.Recorded is not null)];
        var sound = recorded.All(s => s.Built.Status == SettingStatus.Inside);
        return settings.Count == 0 || (recorded.Length == 0 && missing.Length == 0)
            ? null
            : new SectionView(
                "settings",
                composition.Say("settings.heading"),
                "sections/settings.html",
                new SettingsSection(
                    composition.Say(sound ? "settings.fold.inside" : "settings.fold", ("count", recorded.Length)),
                    sound,
                    report.Gearbox.Manual is { } manual ? composition.Say("settings.caption.manual", ("manual", manual)) : composition.Say("settings.caption"),
                    [.. recorded.Select(s => RowOf(s, composition))],
                    missing.Length > 0 ? composition.Say("settings.missing", ("count", missing.Length)) : null,
                    [.. missing.Select(s => composition.Say("settings.missing_item", ("setting", s.Setting.Name), ("target", Target(s.Setting, composition))))],
                    [.. recorded.SelectMany(s => NotesOf(s, report))]));
    }

    private static SettingRowView RowOf(SettingAssessment setting, Composition composition)
    {
        var recorded = setting.Recorded!;
        return new SettingRowView(
            setting.Setting.Name,
            setting.Setting.Condition,
            Target(setting.Setting, composition),
            ValueOf(setting.Found, recorded.FoundPack, setting, composition),
            ValueOf(setting.Built, recorded.Pack, setting, composition));
    }

    private static SettingValueView ValueOf(SettingResult result, IReadOnlyList<Length> pack, SettingAssessment setting, Composition composition) => new(
        result.Recorded is { } measured
            ? IsSet(setting) ? SetTo(measured, setting, composition) : Measured.WithUncertainty(measured, Shown(setting), composition.Figures)
            : composition.Say("settings.not_recorded"),
        result.Recorded is not null && setting.Instrument is null ? composition.Say("wear.no_uncertainty") : null,
        result.Status switch
        {
            SettingStatus.Inside => composition.Say("settings.inside"),
            SettingStatus.TooCloseToCall => composition.Say("settings.too_close"),
            SettingStatus.Outside => composition.Say("settings.outside"),
            _ => null,
        },
        result.Status == SettingStatus.Outside,
        pack.Count > 0 ? Pack(pack, composition) : null);

    // A wrench sets a torque and does not measure it: the set torque against the target, with the limits of the wrench beside it.
    private static bool IsSet(SettingAssessment setting) => setting is { Setting.Kind: Book.Records.SettingKind.Tightening, Instrument: not null };

    private static string SetTo(MeasuredQuantity torque, SettingAssessment setting, Composition composition)
    {
        var (figures, wrench) = (composition.Figures, setting.Instrument!);
        var value = Measured.Figure(torque.Value, Shown(setting), figures).Text;
        return wrench.Class is { } share
            ? composition.Say("settings.tightened_class", ("value", value), ("class", figures.Percent(share).Text))
            : composition.Say("settings.tightened", ("value", value), ("limit", Measured.Figure(wrench.ErrorLimit!, Measured.DecimalsWritten(wrench.ErrorLimit!), figures).Text));
    }

    private static Decimals Shown(SettingAssessment setting) => Measured.DecimalsOf(setting.Instrument?.Resolution, Ends(setting.Setting));

    private static string Pack(IReadOnlyList<Length> pack, Composition composition)
    {
        var decimals = Decimals.Max(new Decimals(2, 4), Measured.DecimalsWritten([.. pack]));
        var sum = composition.Figures.Length(PackThickness.Of(pack), decimals).Text;
        return pack.Count == 1
            ? composition.Say("settings.one_shim", ("sum", sum))
            : composition.Say("settings.pack", ("shims", string.Join(" + ", pack.Select(s => composition.Figures.Length(s, decimals).Number))), ("sum", sum));
    }

    internal static string Target(Setting setting, Composition composition)
    {
        var decimals = Measured.DecimalsWritten(Ends(setting));
        return setting.Target switch
        {
            { Low: { } low, High: { } high } => composition.Figures.Range(
                Measured.Figure(low, decimals, composition.Figures), Measured.Figure(high, decimals, composition.Figures)),
            { High: { } high } => composition.Say("settings.at_most", ("value", Measured.Figure(high, decimals, composition.Figures).Text)),
            { Low: { } low } => composition.Say("settings.at_least", ("value", Measured.Figure(low, decimals, composition.Figures).Text)),
            _ => string.Empty,
        };
    }

    private static IQuantity[] Ends(Setting setting) => [.. new[] { setting.Target.Low, setting.Target.High }.OfType<IQuantity>()];

    // The shop's note is a word to the owner of the day; what the figures say is for later owners too.
    private static IEnumerable<string> NotesOf(SettingAssessment setting, ReportContext report)
    {
        var composition = report.Composition;
        if (setting.Built.Status == SettingStatus.TooCloseToCall)
        {
            yield return composition.Say(
                setting.Built.BandTooNarrow ? "settings.note_narrow" : "settings.note_too_close", ("setting", setting.Setting.Name));
        }

        if (report.IsOwn && setting.Recorded?.Note is { } note)
        {
            yield return composition.Say("settings.note", ("setting", setting.Setting.Name), ("note", note));
        }
    }
}

/// <summary>A setting as the report shows it.</summary>
/// <param name="Name">What is set.</param>
/// <param name="Condition">What the target holds for; null when not said.</param>
/// <param name="Target">The target band.</param>
/// <param name="Found">As it came in.</param>
/// <param name="Built">As it left.</param>
public sealed record SettingRowView(string Name, string? Condition, string Target, SettingValueView Found, SettingValueView Built);

/// <summary>One value of a setting.</summary>
/// <param name="Value">The value with its uncertainty, or that it was not recorded.</param>
/// <param name="Remark">Said where the uncertainty is not known; null otherwise.</param>
/// <param name="Verdict">Inside, outside or too close to call; null where nothing was recorded.</param>
/// <param name="IsOutside">Whether it is proven outside.</param>
/// <param name="Pack">The shims; null for none.</param>
public sealed record SettingValueView(string Value, string? Remark, string? Verdict, bool IsOutside, string? Pack);
