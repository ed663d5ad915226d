using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using UnitsNet;
using Eng = Layshaft.Engineering.Settings;

namespace Layshaft.Site.Pages.History;

/// <summary>The settings through time: does a pack grow?</summary>
internal static class SettingsSection
{
    public static SectionView? Compose(HistoryContext history, TableView table) => table.Rows.Count == 0
        ? null
        : BlocksView.Section(
            "settings",
            history.Composition.Say("history.settings"),
            new Block { Lines = [.. Packs(history)] },
            new Block { Table = table, Fold = history.Composition.Say("history.settings.fold") });

    public static TableView Table(HistoryContext history)
    {
        var composition = history.Composition;
        return TableView.Of(
            "settings",
            composition.Say("history.settings.caption"),
            [
                composition.Say("history.setting"), composition.Say("history.job"), composition.Say("history.received"), composition.Say("history.found"),
                composition.Say("history.built"), composition.Say("history.pack_found"), composition.Say("history.pack_built"),
            ],
            history.Gearbox.Settings.SelectMany(s => Of(history, s).Select(r => (IReadOnlyList<Cell>)
            [
                Cell.Of(s.Name), Cell.Of(r.Job.Number), Cell.Day(r.Job.Received, composition), Mean(r.Set.Found, r.Set, composition),
                Mean(r.Set.Built, r.Set, composition), Pack(r.Set.FoundPack, composition), Pack(r.Set.Pack, composition),
            ])));
    }

    private static IEnumerable<(Job Job, JobSetting Set)> Of(HistoryContext history, Setting setting) =>
        history.View.Jobs.SelectMany(j => j.Settings.Where(s => s.Setting == setting.Id).Select(s => (j, s)));

    private static IEnumerable<string> Packs(HistoryContext history)
    {
        foreach (var setting in history.Gearbox.Settings.Where(s => s.Shims is not null))
        {
            (Job Job, JobSetting Set)[] packs = [.. Of(history, setting).Where(r => r.Set.Pack.Count > 0)];
            yield return packs.Length < 2
                ? history.Composition.Say("history.pack.one", ("setting", setting.Name))
                : Change(history, setting, packs[0], packs[^1]);
        }
    }

    // What a pack's change means depends on the float that it left and on how well that was measured.
    private static string Change(HistoryContext history, Setting setting, (Job Job, JobSetting Set) first, (Job Job, JobSetting Set) last)
    {
        var composition = history.Composition;
        var change = Eng.PackChange.Between(
            Built(history, setting, first),
            Built(history, setting, last),
            setting.Sense == ShimSense.MoreShimLess ? Eng.ShimEffect.Reduces : Eng.ShimEffect.Increases,
            StepOf(history.Gearbox.Shims.FirstOrDefault(s => s.Id == setting.Shims)));
        var (from, to) = (composition.Figures.Date(first.Job.Received), composition.Figures.Date(last.Job.Received));
        var (firstPack, lastPack, by) = (Thickness(Sum(first.Set.Pack), composition), Thickness(Sum(last.Set.Pack), composition), Thickness(change.Thickness.Abs(), composition));
        (string, object)[] packs = [("setting", setting.Name), ("first", firstPack), ("last", lastPack), ("from", from), ("to", to)];
        (string, object)[] measured = change is { Space: { } space, Uncertainty: { } around }
            ? [("space", Thickness(space.Abs(), composition)), ("uncertainty", composition.Figures.Length(around, 2).Text)]
            : [];
        var clear = ("measured", (object)(measured.Length == 0 ? composition.Say("history.pack.step")
            : Equals(measured[0].Item2, measured[1].Item2) ? composition.Say("history.pack.space_just", measured[0])
            : composition.Say("history.pack.space", measured)));
        return change.Verdict switch
        {
            Eng.PackVerdict.Same => composition.Say("history.pack.same", ("setting", setting.Name), ("pack", lastPack), ("from", from), ("to", to)),
            Eng.PackVerdict.NotClear when measured.Length > 0 => composition.Say("history.pack.within", [.. packs, .. measured]),
            Eng.PackVerdict.NotClear => composition.Say("history.pack.one_step", packs),
            Eng.PackVerdict.Grown when change.Thickness > Length.Zero => composition.Say("history.pack.grown", [.. packs, ("by", by), clear]),
            Eng.PackVerdict.Shrunk when change.Thickness < Length.Zero => composition.Say("history.pack.shrunk", [.. packs, ("by", by), clear]),
            _ => composition.Say("history.pack.moved", [.. packs, clear]),
        };
    }

    // Only an end float changes by as much as its pack; a preload is no length, and backlash follows the shape of the teeth.
    private static Eng.BuiltPack Built(HistoryContext history, Setting setting, (Job Job, JobSetting Set) build) => new(
        Sum(build.Set.Pack),
        setting.Kind == SettingKind.EndFloat
            ? SettingAssessment.Of(build.Job, history.Gearbox, history.Composition.Shop).First(s => s.Setting.Id == setting.Id).Built.Recorded
            : null);

    // The smallest difference between two shims of a kind.
    private static Length StepOf(ShimStock? shims)
    {
        Length[] thicknesses = [.. (shims?.Stock ?? []).Select(t => t.Thickness).Order()];
        return thicknesses.Length < 2 ? Length.Zero : thicknesses.Zip(thicknesses.Skip(1), (a, b) => b - a).Where(d => d > Length.Zero).DefaultIfEmpty(Length.Zero).Min();
    }

    private static Length Sum(IReadOnlyList<Length> pack) => Length.FromMillimeters(Math.Round(pack.Sum(p => p.Millimeters), 4));

    private static Length Abs(this Length length) => Length.FromMillimeters(Math.Abs(length.Millimeters));

    private static string Thickness(Length length, Composition composition) => composition.Figures.Length(length, 2).Text;

    private static Cell Pack(IReadOnlyList<Length> pack, Composition composition) => pack.Count == 0
        ? Cell.Empty
        : Cell.Of(composition.Figures.Length(Sum(pack), 2), ShownUnit.For(pack[0], composition).Of(Sum(pack)));

    private static Cell Mean(IReadOnlyList<IQuantity> readings, JobSetting set, Composition composition)
    {
        if (readings.Count == 0)
        {
            return Cell.Empty;
        }

        var instrument = composition.Shop.Instruments.FirstOrDefault(i => i.Id == set.Instrument);
        var mean = Engineering.Measurement.MeasuredQuantity.From(readings, Engineering.Measurement.Instrument.Unknown).Value;
        var decimals = Measured.DecimalsOf(instrument?.Resolution, [.. readings]);
        return Cell.Of(Measured.Figure(mean, decimals, composition.Figures), ShownUnit.For(mean, composition).Of(mean));
    }
}
