using System.Globalization;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Charts.Wear;

namespace Layshaft.Site.Tests.Charts;

internal static partial class Samples
{
    public static readonly GradeMark Reuse = new(GradeShape.Circle, "U", "use again");
    public static readonly GradeMark Watch = new(GradeShape.Triangle, "W", "watch");
    public static readonly GradeMark Renew = new(GradeShape.Square, "N", "renew");

    public static WearGaugeInput Gauge(double share = 1.05, double? lower = 1.0, double? upper = 1.1) => new(
        share, lower, upper, new LevelMark(0, "new 8.50 mm"), new LevelMark(0.6, "monitor"), 0.9, new LevelMark(1, "limit 8.00 mm"));

    public static GearWorkInput GearWork() => new(
        Frame("work", "Work of the dogs and wear found"),
        [
            new GearWork("1", 0.05, "5 %", 0.12, "12 %"),
            new GearWork("2", 0.29, "29 %", 0.41, "41 %"),
            new GearWork("3", 0.38, "38 %", 0.74, "74 %"),
            new GearWork("4", 0.19, "19 %", 0.33, "33 %"),
            new GearWork("5", 0.09, "9 %", null, "not measured"),
        ],
        new Axis("share", Percent),
        "work done by the dogs",
        "wear allowance used");

    public static RankingInput Ranking() => new(
        Frame("rank", "What each combination costs"),
        [
            new RankedChoice("30/23 with 37/11, exceeds propshaft limit", -0.09, 0.05, "-0.09 ± 0.05 s", ChoiceMark.PastLimit),
            new RankedChoice("28/25 with 37/11", -0.02, 0.08, "-0.02 ± 0.08 s", ChoiceMark.Other),
            new RankedChoice("29/23 with 35/11, recommended", 0, 0, "0 s", ChoiceMark.Recommended),
            new RankedChoice("28/24 with 39/11", 0.08, 0.11, "+0.08 ± 0.11 s", ChoiceMark.Other),
            new RankedChoice("26/26 with 34/11, fitted", 0.21, 0.07, "+0.21 ± 0.07 s", ChoiceMark.Fitted),
        ],
        new Axis("seconds a lap slower", v => v.ToString("0.00", CultureInfo.InvariantCulture)));

    public static LifeBarsInput Life() => new(
        Frame("life", "What served where, season by season"),
        [
            new LifeBar("2nd / 3rd dog ring", [new(5, 190, BarStart.Fitted, BarEnd.Renewed, "31 h"), new(190, 470, BarStart.Fitted, BarEnd.Renewed, "38 h"), new(470, 760, BarStart.Fitted, BarEnd.Running, "29 h")]),
            new LifeBar("4th / 5th dog ring", [new(5, 470, BarStart.Fitted, BarEnd.MovedOut, "69 h"), new(480, 760, BarStart.MovedIn, BarEnd.Running, "12 + 29 h")]),
            new LifeBar("layshaft", [new(5, 760, BarStart.Fitted, BarEnd.Running, "98 h")]),
        ],
        0,
        780,
        [new AxisTick(0, "first season"), new AxisTick(365, "second season"), new AxisTick(730, "third")],
        string.Empty,
        new LifeWords("fitted new", "moved in", "still running", "renewed", "moved out"));
}
