using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Tests.Charts;

/// <summary>Every chart with its sample input, for the tests that hold for all of them.</summary>
internal static class EveryChart
{
    private static readonly Dictionary<string, Func<ChartSize, RawHtml>> Drawings = new()
    {
        ["speed-per-gear"] = size => SpeedPerGearChart.Draw(Samples.SpeedPerGear(), size),
        ["wheel-force"] = size => WheelForceChart.Draw(Samples.WheelForce(), size),
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
