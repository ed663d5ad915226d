using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Dogs;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Charts.Photos;
using Layshaft.Site.Charts.Stack;
using Layshaft.Site.Charts.Wear;
using Layshaft.Site.Html;

namespace Layshaft.Site.Tests.Charts;

/// <summary>Every chart with its sample input, for the tests that hold for all of them.</summary>
internal static class EveryChart
{
    private static readonly Dictionary<string, Func<ChartSize, RawHtml>> Drawings = new()
    {
        ["speed-per-gear"] = size => SpeedPerGearChart.Draw(Samples.SpeedPerGear(), size),
        ["wheel-force"] = size => WheelForceChart.Draw(Samples.WheelForce(), size),
        ["lap"] = size => LapChart.Draw(Samples.Lap(), size),
        ["gear-work"] = size => GearWorkBars.Draw(Samples.GearWork(), size),
        ["ranking"] = size => RankingChart.Draw(Samples.Ranking(), size),
        ["life-bars"] = size => LifeBars.Draw(Samples.Life(), size),
        ["trend"] = size => TrendChart.Draw(Samples.Trend(), size),
        ["survival"] = size => SurvivalChart.Draw(Samples.Survival(), size),
        ["season-line"] = size => SeasonLine.Draw(Samples.Seasons(), size),
        ["photo-callouts"] = size => PhotoCallouts.Draw(Samples.Photo(), size),
        ["dog-engagement"] = size => DogEngagementDrawing.Draw(Samples.Dogs(), size),
        ["gear-stack"] = size => GearStackDrawing.Draw(Samples.Stack(), size),
    };

    public static TheoryData<string, ChartSize> Cases()
    {
        TheoryData<string, ChartSize> cases = [];
        foreach (var name in Drawings.Keys)
        {
            cases.Add(name, ChartSize.Wide);
            cases.Add(name, ChartSize.Compact);
        }

        return cases;
    }

    public static RawHtml Draw(string name, ChartSize size) => Drawings[name](size);
}
