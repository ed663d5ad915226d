using CsCheck;
using Layshaft.Site.Charts.Wear;

namespace Layshaft.Site.Tests.Charts;

/// <summary>The gauge from new to the wear limit beside each measurement.</summary>
public sealed class WearGaugeTests
{
    // From new at 1 to 125 % at 332, as every gauge.
    private static double Share(double x) => (x - 1) / 331 * 1.25;

    [Fact]
    public void The_bar_ends_at_the_share_used_and_is_solid_beyond_the_mark_for_renewal()
    {
        Drawing drawing = new(WearGauge.Draw(Samples.Gauge()));
        Assert.Equal(0.9, Share(Right(Assert.Single(drawing.Elements("bar")))), 0.001);
        Assert.Equal(1.05, Share(Right(Assert.Single(drawing.Elements("bar-over")))), 0.001);
        Assert.Equal(0.9, Share(DrawnText.Number(Assert.Single(drawing.Elements("renew-mark")), "x1")), 0.001);
        Assert.Equal(0.6, Share(DrawnText.Number(Assert.Single(drawing.Elements("marker-line")), "x1")), 0.001);
    }

    [Fact]
    public void A_whisker_spans_the_uncertainty_and_is_missing_if_that_is_unknown()
    {
        var whisker = new Drawing(WearGauge.Draw(Samples.Gauge())).Paths("whisker")[0];
        Assert.Equal(1.0, Share(whisker[0].X), 0.001);
        Assert.Equal(1.1, Share(whisker[1].X), 0.001);
        Assert.Empty(new Drawing(WearGauge.Draw(Samples.Gauge(0.5, null, null))).Paths("whisker"));
    }

    [Fact]
    public void A_reading_far_beyond_the_limit_ends_in_an_arrow()
    {
        Assert.Single(new Drawing(WearGauge.Draw(Samples.Gauge(2.3, 2.2, 2.4))).Elements("mark-cut"));
        Assert.Empty(new Drawing(WearGauge.Draw(Samples.Gauge())).Elements("mark-cut"));
    }

    [Fact]
    public void Everything_stays_in_the_picture_and_no_label_meets_another() =>
        Gen.Select(Gen.Double[-0.5, 3], Gen.Double[0, 0.5], Gen.OneOf(new[] { "0.3 mm", "32.461 mm", "0.0118 in", "0.3 mm (0.012 in)", "32.461 mm (1.2780 in)" }.Select(Gen.Const).ToArray<Gen<string>>())).Sample((share, around, size) =>
        {
            var input = Samples.Gauge(share, share - around, share + around) with { New = new(0, "new " + size), Limit = new(1, "limit " + size) };
            Drawing drawing = new(WearGauge.Draw(input));
            var labels = drawing.Elements("quiet").ToArray();
            return labels.Length is 2 or 3
                && labels.Select(DrawnText.Span).All(s => s is { Left: >= -1, Right: <= 341 })
                && labels.Zip(labels.Skip(1)).All(p => !DrawnText.Overlap(p.First, p.Second))
                && drawing.Elements("bar").Concat(drawing.Elements("bar-over")).All(b => DrawnText.Number(b, "x") >= 0 && Right(b) <= 340);
        });

    [Fact]
    public void A_share_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => WearGauge.Draw(Samples.Gauge(double.NaN)));

    private static double Right(System.Xml.Linq.XElement bar) => DrawnText.Number(bar, "x") + DrawnText.Number(bar, "width");
}
