using System.Globalization;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Wear;
using Layshaft.Site.Html;

namespace Layshaft.Site.Pages.Report;

/// <summary>What the dogs of each gear bear beside the wear that was found on them.</summary>
/// <param name="Lead">Where the work was reckoned.</param>
/// <param name="Chart">The bars.</param>
public sealed record DogsView(string Lead, RawHtml Chart)
{
    internal static DogsView? Of(EventGearing gearing, ReportContext report)
    {
        if (gearing.Dogs is not { } dogs)
        {
            return null;
        }

        var composition = report.Composition;
        var wear = DogLoad.WearByGear(report.Assessment.Findings);
        var frame = new ChartFrame("gear-dogs", composition.Say("gearing.dogs.title"), composition.Say("gearing.dogs.words"));
        GearWork[] rows =
        [
            .. dogs.ByGear.Select((work, i) => new GearWork(
                composition.Say("gearing.dogs.gear", ("gear", work.Ring)),
                work.Share,
                composition.Figures.Percent(work.Share).Text,
                wear.TryGetValue(i + 1, out var used) ? used : null,
                wear.TryGetValue(i + 1, out var share) ? composition.Figures.Percent(share).Text : composition.Say("gearing.dogs.not_measured"))),
        ];
        var input = new GearWorkInput(
            frame,
            rows,
            new Axis(composition.Say("gearing.dogs.axis"), v => composition.Figures.Percent(v).Text),
            composition.Say("gearing.dogs.work"),
            composition.Say("gearing.dogs.wear"));
        return new DogsView(
            composition.Say(
                dogs.IsFromLastEvent ? "gearing.dogs.last" : "gearing.dogs.next",
                ("event", dogs.Case.Plan?.Name ?? dogs.Case.Venue.Name),
                ("shifts", dogs.ByGear.Sum(g => g.UpshiftsPerLap + g.DownshiftsPerLap).ToString(CultureInfo.InvariantCulture))),
            ChartPair.Of(input, GearWorkBars.Draw));
    }
}
