using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.History;

/// <summary>How the parts in a unit wear: each trend that can be said, and where nothing can be said, why.</summary>
internal sealed class TrendSection(HistoryContext history)
{
    // The most pressing one is drawn in the open; a dozen drawings in a row would hide what matters.
    private const int ShownOpen = 1;

    private readonly Composition composition = history.Composition;
    /// <summary>What is measured on the parts that are in the unit now, the most pressing first.</summary>
    public IReadOnlyList<TrendAssessment> Trends { get; } =
    [
        .. UnitTrends.Of(history.Unit, history.Lives, history.Composition.Assessment.Jobs, history.View.IsCurrent ? history.Composition.Others : null)
            .OrderBy(t => t.Line is null).ThenBy(t => t.Line?.LookAgainWithin ?? 0).ThenBy(t => t.Line?.Remaining ?? 0),
    ];

    public SectionView? Compose()
    {
        if (Trends.Count == 0)
        {
            return BlocksView.Section("trends", composition.Say("history.trends"), Block.Say(composition.Say("history.trends.none")));
        }

        TrendAssessment[] said = [.. Trends.Where(t => t.Line is not null)];
        return BlocksView.Section(
            "trends",
            composition.Say("history.trends"),
            [
                .. said.Length > 0 ? [Block.Say(composition.Say("history.trends.how"))] : Array.Empty<Block>(),
                .. said.Select((t, i) => Shown(t, folded: i >= ShownOpen)),
                .. Unsaid(),
            ]);
    }

    /// <summary>Every measurement of a part that is in the unit now.</summary>
    public TableView Readings() => TableView.Of(
        "readings",
        composition.Say("history.readings.caption"),
        [
            composition.Say("history.part"), composition.Say("history.measure"), composition.Say("history.job"), composition.Say("history.received"),
            composition.Say("history.part_use"), composition.Say("history.value"), composition.Say("history.uncertainty"), composition.Say("history.share"),
        ],
        Trends.SelectMany(t => t.Readings.Select(r => (IReadOnlyList<Cell>)
        [
            Cell.Of(t.Part.Name),
            Cell.Of(t.Measure.Name),
            Cell.Of(r.Job.Number),
            Cell.Day(r.Job.Received, composition),
            Cell.Use(new Use(r.PartUse, t.UseNow.Measure), composition),
            Size(t, r),
            r.Measured.Wear.Measured.Number.UncertaintyIsKnown ? Uncertainty(t, r) : Cell.Empty,
            Cell.Of(composition.Figures.Percent(r.Measured.Wear.ShareUsed.Value), r.Measured.Wear.ShareUsed.Value * 100),
        ])));

    /// <summary>The trends that can be said, the most pressing first.</summary>
    public TableView Table() => TableView.Of(
        "trends",
        composition.Say("history.trends.caption"),
        [
            composition.Say("history.part"), composition.Say("history.measure"), composition.Say("history.inspect_within"), composition.Say("history.inspect_by"),
            composition.Say("history.limit_in"), composition.Say("history.last_share"),
        ],
        Trends.Where(t => t.Line is not null).Select(t => (IReadOnlyList<Cell>)
        [
            Cell.Of(t.Part.Name),
            Cell.Of(t.Measure.Name),
            Cell.Use(t.UseNow with { Amount = Math.Floor(t.Line!.LookAgainWithin) }, composition),
            Cell.Day(t.LookAgain!.EarliestBy ?? t.LookAgain.By, composition),
            Cell.Use(t.UseNow with { Amount = Math.Floor(t.Line!.Remaining) }, composition),
            Cell.Percent(t.Readings[^1].Measured.Wear.ShareUsed.Value, composition),
        ]));

    private Block Shown(TrendAssessment trend, bool folded) => new()
    {
        Heading = folded ? null : TrendDrawing.Heading(trend, composition),
        Fold = folded ? TrendDrawing.Heading(trend, composition) : null,
        Lines = [.. Words(trend)],
        Chart = TrendDrawing.Of(trend, composition),
    };

    private IEnumerable<string> Words(TrendAssessment trend)
    {
        var line = trend.Line!;
        var now = IsNow(line);
        yield return line.LimitReached
            ? composition.Say("history.trend.reached")
            : now && line.RemainingBounds.Upper is null
                ? composition.Say("history.trend.vague", ("expected", Amount(trend, line.Remaining)))
            : now
                ? composition.Say("history.trend.within", ("expected", Amount(trend, line.Remaining)), ("most", Amount(trend, Math.Ceiling(line.RemainingBounds.Upper!.Value))))
            : line.RemainingBounds.Upper is { } latest
                ? composition.Say("history.trend.between", ("expected", Amount(trend, line.Remaining)), ("least", Amount(trend, line.LookAgainWithin)), ("most", Amount(trend, Math.Ceiling(latest))))
                : composition.Say("history.trend.open", ("expected", Amount(trend, line.Remaining)), ("least", Amount(trend, line.LookAgainWithin)));
        yield return Inspect(trend);
        if (!line.Curve.IsStraight && line.OtherUnits == 0)
        {
            yield return composition.Say(line.Curve.Power > 1 ? "history.trend.faster" : "history.trend.slower");
        }

        if (line.OtherUnits > 0)
        {
            yield return composition.Say("history.trend.pooled", ("count", trend.Readings.Count), ("units", line.OtherUnits), ("date", composition.Figures.Date(composition.Others.Before)));
        }

        if (line.Curve.Fit.ThroughOrigin)
        {
            yield return composition.Say("history.trend.held");
        }
    }

    // Said in whole hours: less than one is now.
    private static bool IsNow(WearTrendLine line) => Math.Floor(line.LookAgainWithin) <= 0;

    /// <summary>When a part with a trend is due for inspection, in one sentence.</summary>
    public string Inspect(TrendAssessment trend)
    {
        var (line, look) = (trend.Line!, trend.LookAgain!);
        return IsNow(line)
            ? composition.Say("history.trend.inspect_now")
            : look is { EarliestBy: { } earliest, LatestBy: { } latestBy } && earliest < latestBy
                ? composition.Say("history.trend.inspect_range", ("use", Amount(trend, line.LookAgainWithin)), ("earliest", composition.Figures.Date(earliest)), ("latest", composition.Figures.Date(latestBy)))
            : look.By is { } by
                ? composition.Say("history.trend.inspect", ("use", Amount(trend, line.LookAgainWithin)), ("date", composition.Figures.Date(by)))
                : composition.Say("history.trend.inspect_use", ("use", Amount(trend, line.LookAgainWithin)));
    }

    /// <summary>How fast a part wears against other gearboxes of the type, in one sentence; null if no clear difference is known.</summary>
    public string? Compared(TrendAssessment trend) => trend.Relative is not { } relative ? null : composition.Say(
        "history.relative",
        ("ratio", Tenths(Math.Round(relative.Ratio, 1))),
        ("units", trend.Others),
        ("low", Tenths(Math.Floor(relative.Bounds.Lower!.Value * 10) / 10)),
        ("high", Tenths(Math.Ceiling(relative.Bounds.Upper!.Value * 10) / 10)),
        ("date", composition.Figures.Date(composition.Others.Before)));

    private string Tenths(double number) => composition.Figures.Number(number, 1).Text;

    // One sentence for each reason, over the parts that it holds for.
    private IEnumerable<Block> Unsaid()
    {
        var groups = Trends.Where(t => t.Line is null).GroupBy(Reason).OrderBy(g => g.Key, StringComparer.Ordinal).ToArray();
        foreach (var (group, index) in groups.Select((g, i) => (g, i)))
        {
            yield return new Block
            {
                Heading = index == 0 ? composition.Say("history.no_trend") : null,
                Lines = [composition.Say(group.Key)],
                Items = [.. group.GroupBy(t => t.Part.Name).Select(p => composition.Say("history.no_trend.part", ("part", p.Key), ("measures", string.Join(", ", p.Select(t => t.Measure.Name)))))],
            };
        }
    }

    private static string Reason(TrendAssessment trend) => trend.Result is not WearTrendUnsaid unsaid ? "history.no_trend.doubtful" : unsaid.Reason switch
    {
        WearTrendUnsaidReason.Flat => "history.no_trend.flat",
        WearTrendUnsaidReason.Shrinking => "history.no_trend.shrinking",
        WearTrendUnsaidReason.Vague => "history.no_trend.vague",
        WearTrendUnsaidReason.Bent => "history.no_trend.bent",
        WearTrendUnsaidReason.OneUse => "history.no_trend.one_use",
        WearTrendUnsaidReason.TwoReadings => "history.no_trend.two",
        WearTrendUnsaidReason.NoReading or WearTrendUnsaidReason.OneReading => "history.no_trend.one",
    };

    // Whole hours, dropped to the safe side.
    private string Amount(TrendAssessment trend, double amount) => UseWords.Of(trend.UseNow with { Amount = Math.Floor(amount) }, composition);

    private Cell Size(TrendAssessment trend, TrendReading reading)
    {
        var measured = reading.Measured.Wear.Measured.Value;
        var decimals = Measured.DecimalsOf(reading.Measured.Instrument?.Resolution, trend.Measure.New, trend.Measure.Limit);
        return Cell.Of(Measured.Figure(measured, decimals, composition.Figures), ShownUnit.For(measured, composition).Of(measured));
    }

    private Cell Uncertainty(TrendAssessment trend, TrendReading reading)
    {
        var around = reading.Measured.Wear.Measured.ExpandedUncertainty;
        var decimals = Measured.DecimalsOf(reading.Measured.Instrument?.Resolution, trend.Measure.New, trend.Measure.Limit);
        return Cell.Of(Measured.Figure(around, decimals, composition.Figures), ShownUnit.For(around, composition).Of(around));
    }
}
