using Layshaft.Book.Records;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using UnitsNet;

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
        var composition = history.Composition;
        foreach (var setting in history.Gearbox.Settings.Where(s => s.Shims is not null))
        {
            (Job Job, Length Pack)[] packs = [.. Of(history, setting).Where(r => r.Set.Pack.Count > 0).Select(r => (r.Job, Sum(r.Set.Pack)))];
            if (packs.Length < 2)
            {
                yield return composition.Say("history.pack.one", ("setting", setting.Name));
                continue;
            }

            var grown = Length.FromMillimeters(Math.Round(packs[^1].Pack.Millimeters - packs[0].Pack.Millimeters, 4));
            var (from, to) = (composition.Figures.Date(packs[0].Job.Received), composition.Figures.Date(packs[^1].Job.Received));
            yield return grown.Millimeters == 0
                ? composition.Say("history.pack.same", ("setting", setting.Name), ("pack", Thickness(packs[^1].Pack, composition)), ("from", from), ("to", to))
                : composition.Say(
                    grown > Length.Zero ? "history.pack.grown" : "history.pack.shrunk",
                    ("setting", setting.Name),
                    ("first", Thickness(packs[0].Pack, composition)),
                    ("last", Thickness(packs[^1].Pack, composition)),
                    ("by", Thickness(grown.Abs(), composition)),
                    ("from", from),
                    ("to", to));
        }
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
