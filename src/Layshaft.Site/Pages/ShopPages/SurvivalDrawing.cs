using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>Draws the share of a kind of part still good over use.</summary>
internal static class SurvivalDrawing
{
    private const int CurvePoints = 40;

    // A bound farther out than this, in times of the longest life seen, would squeeze the drawing into a corner.
    private const double FarthestBound = 1.5;

    public static RawHtml Of(KindLife kind, string name, Composition composition)
    {
        var (sample, curve) = (kind.All.Sampling.Sample, kind.All.Curve);
        var fit = kind.All.Estimate as WeibullFit;
        var id = $"life-{kind.Kind}-{kind.Measure}".ToLowerInvariant();
        var frame = new ChartFrame(id, name, composition.Say("shop.lives.description", ("count", sample.Lives.Count), ("failures", sample.Failures)));
        var input = new SurvivalInput(
            frame,
            [.. curve.Steps.Select(s => new SurvivalStep(s.From, s.To, s.Survival))],
            [.. sample.Lives.Where(l => !l.Failed).Select(l => l.LastGood)],
            curve.SeenTo,
            fit is null ? null : new NamedPoints([.. Enumerable.Range(0, CurvePoints + 1).Select(i => curve.SeenTo * i / CurvePoints).Select(u => new ChartPoint(u, fit.SurvivalAt(u)))], composition.Say("shop.lives.fit")),
            fit is null ? null : B10(fit, kind.All.TenthBounds!.Value, curve.SeenTo, composition),
            new Axis(composition.Say("history.axis.use", ("unit", UseWords.AxisUnit(kind.Measure, composition))), v => composition.Figures.Number(v, v == Math.Floor(v) ? 0 : 1).Text),
            new Axis(composition.Say("shop.lives.surviving"), v => composition.Figures.Percent(v).Text),
            composition.Say("shop.lives.steps"),
            composition.Say("shop.lives.still_good"));
        return ChartPair.Of(input, (i, size) => SurvivalChart.Draw(i with { Frame = frame with { IdPrefix = $"{id}-{size.ToString().ToLowerInvariant()}" } }, size));
    }

    private static BoundedMark B10(WeibullFit fit, Bounds bounds, double seenTo, Composition composition) =>
        new(fit.LifeAt(GroupLife.Tenth), bounds.Lower, bounds.Upper <= FarthestBound * seenTo ? bounds.Upper : null, composition.Say("shop.lives.b10_mark", ("use", UseWords.Of(new Use(Math.Round(fit.LifeAt(GroupLife.Tenth)), fit.Measure), composition))));
}
