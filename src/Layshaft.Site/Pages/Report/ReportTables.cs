using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using UnitsNet;

namespace Layshaft.Site.Pages.Report;

/// <summary>The figures of a report for a program: what was measured, renewed, set and charged.</summary>
public static class ReportTables
{
    /// <summary>The tables of every report, by their short names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["measured", "renewed", "settings", "differential", "estimate", "charged", "totals", .. GearingTables.Names];

    /// <summary>The tables of one report; what its reader may not see is left empty.</summary>
    public static IReadOnlyList<TableView> Of(Composition composition, OwnerView view, Book.Records.Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        return [.. Drafts(new ReportContext(composition, view, composition.Assessment.Jobs[job.Number])).Select(t => t.Make())];
    }

    /// <summary>The section that leads to the files beside a report or an estimate.</summary>
    internal static SectionView Section(ReportContext report) => DataFiles.Section(report.Page, Drafts(report), report.Composition);

    private static TableDraft[] Drafts(ReportContext report) =>
        [Measurements(report), Renewed(report), Settings(report), DifferentialSection.Table(report), Estimated(report), Charged(report), OfferTables.Totals(report.Job, ShowsPrices(report) ? JobMoney.Of(report.Job, report.Gearbox, report.Composition.Shop) : null, report.Composition), .. GearingTables.Of(report)];

    private static TableDraft Measurements(ReportContext report)
    {
        var composition = report.Composition;
        return new TableDraft(
            "measured",
            composition.Say("report.findings"),
            [
                composition.Say("work.part"), composition.Say("history.measure"), composition.Say("history.value"), composition.Say("history.uncertainty"),
                composition.Say("life.data.new"), composition.Say("life.data.limit"), composition.Say("history.share"), composition.Say("life.data.grade"),
            ],
            report.Assessment.Findings.SelectMany(f => f.Measures.Count == 0
                ? [[Cell.Of(f.Part.Name), Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty, Cell.Of(GradeViews.Of(f.Grade, composition))]]
                : f.Measures.Select(m => Row(f, m, composition))));
    }

    private static IReadOnlyList<Cell> Row(FindingAssessment finding, MeasureAssessment measure, Composition composition)
    {
        var decimals = Measured.DecimalsOf(measure.Instrument?.Resolution, measure.Measure.New, measure.Measure.Limit);
        var measured = measure.Wear.Measured;
        var share = measure.Wear.ShareUsed.Value;
        return
        [
            Cell.Of(finding.Part.Name),
            Cell.Of(measure.Measure.Name),
            Size(measured.Value, decimals, composition),
            measured.Number.UncertaintyIsKnown ? Size(measured.ExpandedUncertainty, decimals, composition) : Cell.Empty,
            Size(measure.Measure.New, decimals, composition),
            Size(measure.Measure.Limit, decimals, composition),
            Cell.Of(composition.Figures.Percent(share), share * 100),
            Cell.Of(GradeViews.Of(finding.Grade, composition)),
        ];
    }

    private static TableDraft Renewed(ReportContext report)
    {
        var composition = report.Composition;
        return new TableDraft(
            "renewed",
            composition.Say("report.work"),
            [composition.Say("work.part"), composition.Say("work.serial"), composition.Say("life.data.used")],
            report.Job.Renewed.Select(r => (IReadOnlyList<Cell>)
            [
                Cell.Of(report.Gearbox.PartOf(r.Part)!.Name), Cell.Of(r.Serial), Cell.Use(r.Use?.Counted(), composition),
            ]));
    }

    private static TableDraft Settings(ReportContext report)
    {
        var composition = report.Composition;
        return new TableDraft(
            "settings",
            composition.Say("settings.caption"),
            [composition.Say("history.setting"), composition.Say("history.found"), composition.Say("history.built"), composition.Say("life.data.least"), composition.Say("life.data.most")],
            report.Job.Settings.Select(s => (Set: s, Asked: report.Gearbox.SettingOf(s.Setting)!)).Select(s => (IReadOnlyList<Cell>)
            [
                Cell.Of(s.Asked.Name), Mean(s.Set.Found, composition), Mean(s.Set.Built, composition), End(s.Asked.Target.Low, composition), End(s.Asked.Target.High, composition),
            ]));
    }

    private static TableDraft Charged(ReportContext report)
    {
        var composition = report.Composition;
        return new TableDraft(
            "charged",
            composition.Say("report.money"),
            [composition.Say("money.what"), composition.Say("money.quantity"), composition.Say("money.price"), composition.Say("money.amount")],
            (ShowsPrices(report) && report.Job.Finished is not null ? Account.Of(report.Job.Charged, report.Gearbox, composition.Shop).Lines : []).Select(l => Line(l, report)));
    }

    private static TableDraft Estimated(ReportContext report)
    {
        var composition = report.Composition;
        return new TableDraft(
            "estimate",
            composition.Say("life.data.estimate"),
            [
                composition.Say("money.what"), composition.Say("money.quantity"), composition.Say("money.price"), composition.Say("money.amount"),
                composition.Say("life.data.need"), composition.Say("life.data.if_left"), composition.Say("offer.what"), composition.Say("offer.answer"),
            ],
            (ShowsPrices(report) ? report.Job.Offers : []).SelectMany(o => Account.Of(o.Lines, report.Gearbox, composition.Shop).Lines.Select(l => (IReadOnlyList<Cell>)
            [
                .. Line(l, report), Cell.Of(composition.Say(EstimateComposer.NeedKey(l.Line.Need))), Cell.Of(l.Line.IfLeft),
                Cell.Of(OfferWords.Name(o, composition)), Cell.Of(OfferWords.Answer(o, l.Line, composition)),
            ])));
    }

    // Who has to answer an estimate sees what it costs, whether or not reports show prices.
    private static bool ShowsPrices(ReportContext report) => report.IsOwn && (report.Composition.Shop.ShowPrices || EstimateComposer.IsOpen(report.Job));

    private static IReadOnlyList<Cell> Line(PricedLine line, ReportContext report) =>
    [
        Cell.Of(MoneyTable.Name(line.Line, report.Gearbox)),
        Cell.Exact(line.Quantity, report.Composition) with { Unit = line.IsHours ? "h" : null },
        Cell.Money(line.Price, report.Composition),
        Cell.Money(line.Amount, report.Composition),
    ];

    private static Cell Size(IQuantity size, Decimals decimals, Composition composition) =>
        Cell.Of(Measured.Figure(size, decimals, composition.Figures), ShownUnit.For(size, composition).Of(size));

    private static Cell End(IQuantity? end, Composition composition) => end is null ? Cell.Empty : Size(end, Measured.DecimalsWritten(end), composition);

    private static Cell Mean(IReadOnlyList<IQuantity> readings, Composition composition) => readings.Count == 0
        ? Cell.Empty
        : Size(MeasuredQuantity.From(readings, Instrument.Unknown).Value, new Decimals(3, 5), composition);
}
