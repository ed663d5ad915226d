using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.History;

/// <summary>Draws a trend: readings, line, prediction band, limit, and where they meet.</summary>
internal static class TrendDrawing
{
    private const int BandPoints = 24;

    // The axis ends here at the latest, in times of what was run: a line says little so far from its readings.
    private const double FarthestLook = 2.5;

    public static string Heading(TrendAssessment trend, Composition composition) =>
        composition.Say("history.trend.heading", ("part", trend.Part.Name), ("measure", trend.Measure.Name));

    public static RawHtml Of(TrendAssessment trend, Composition composition)
    {
        var (line, unit) = (trend.Line!, ShownUnit.For(trend.Measure.New, composition));
        var seenTo = Math.Max(trend.UseNow.Amount, trend.Readings[^1].PartUse);
        var far = Math.Min(seenTo * FarthestLook, Math.Max(seenTo * 1.15, (line.UseAtLimitBounds.Upper ?? line.UseAtLimit) * 1.05));
        var crossing = line.UseAtLimit <= far && line.UseAtLimit > 0 ? Crossing(trend, far, composition) : null;
        double[] grid = [.. Enumerable.Range(0, BandPoints + 1).Select(i => far * i / BandPoints)];
        Bounds[] band = [.. grid.Select(line.PredictionAt)];

        // A line and its band know no bounds; a gap or a thickness cannot be less than none.
        var least = Math.Min(unit.Of(trend.Measure.New), unit.Of(trend.Measure.Limit)) >= 0 ? 0 : double.NegativeInfinity;
        double InBounds(double si) => Math.Max(least, unit.OfSi(trend.Measure.New, si));
        var decimals = Measured.DecimalsWritten(trend.Measure.New, trend.Measure.Limit);
        var id = string.Concat($"trend-{trend.Part.Id}-{trend.Measure.Id}".Select(c => char.IsAsciiLetterOrDigit(c) || c == '-' ? c : '-'));
        var frame = new ChartFrame(
            id,
            Heading(trend, composition),
            composition.Say("history.trend.description", ("count", trend.Readings.Count)));
        var input = new TrendInput(
            frame,
            [.. trend.Readings.Select(r => Point(r, unit))],
            new Axis(composition.Say("history.axis.use", ("unit", UseWords.AxisUnit(trend.UseNow.Measure, composition))), v => composition.Figures.Number(v, v == Math.Floor(v) ? 0 : 1).Text),
            new Axis(composition.Say("history.axis.size", ("measure", trend.Measure.Name), ("unit", unit.Symbol)), v => composition.Figures.Number(v, 4).Text) { WithDecimals = (v, decimals) => composition.Figures.Number(v, decimals).Text },
            new NamedPoints([.. Drawn(line, grid).Select(use => new ChartPoint(use, InBounds(line.ValueAt(use))))], string.Empty),
            band.All(b => b is { Lower: not null, Upper: not null })
                ? new Band(
                    [.. band.Select((b, i) => new ChartPoint(grid[i], InBounds(b.Upper!.Value)))],
                    [.. band.Select((b, i) => new ChartPoint(grid[i], InBounds(b.Lower!.Value)))],
                    string.Empty)
                : null,
            new LevelMark(unit.Of(trend.Measure.Limit), composition.Say("history.trend.limit", ("limit", Measured.Figure(trend.Measure.Limit, decimals, composition.Figures).Text))),
            new LevelMark(unit.Of(trend.Measure.New), composition.Say("history.trend.new", ("new", Measured.Figure(trend.Measure.New, decimals, composition.Figures).Text))),
            crossing);
        return ChartPair.Of(input, (i, size) => TrendChart.Draw(i with { Frame = frame with { IdPrefix = $"{id}-{size.ToString().ToLowerInvariant()}" } }, size));
    }

    // A straight line needs its ends only.
    private static double[] Drawn(WearTrendLine line, double[] grid) => line.Curve.IsStraight ? [grid[0], grid[^1]] : grid;

    private static MeasuredPoint Point(TrendReading reading, ShownUnit unit)
    {
        var measured = reading.Measured.Wear.Measured;
        var value = unit.Of(measured.Value);
        return new MeasuredPoint(reading.PartUse, value, measured.Number.UncertaintyIsKnown ? Math.Abs(unit.Of(measured.ExpandedUncertainty)) : 0);
    }

    private static BoundedMark Crossing(TrendAssessment trend, double far, Composition composition)
    {
        var line = trend.Line!;
        string Use(double amount) => UseWords.Of(trend.UseNow with { Amount = Math.Round(amount) }, composition);
        double? Within(double? bound) => bound is { } b && b <= far && b >= 0 ? b : null;
        return new BoundedMark(line.UseAtLimit, Within(line.UseAtLimitBounds.Lower), Within(line.UseAtLimitBounds.Upper), composition.Say("history.trend.crossing", ("use", Use(line.UseAtLimit))));
    }
}
