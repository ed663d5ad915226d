using System.Globalization;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Charts.Photos;

namespace Layshaft.Site.Tests.Charts;

internal static partial class Samples
{
    public static TrendInput Trend()
    {
        // A line by eye through the points; the band widens away from their middle as a prediction band does.
        static double Fit(double hours) => 9.01 - (0.0119 * hours);
        static double Half(double hours) => 0.055 * Math.Sqrt(1 + 0.2 + ((hours - 20) * (hours - 20) / 900));
        double[] grid = [.. Enumerable.Range(0, 15).Select(k => k * 5.0)];
        return new TrendInput(
            Frame("trend", "Dog width over hours"),
            [new(0, 9.0, 0.02), new(8, 8.93, 0.02), new(17, 8.79, 0.02), new(26, 8.72, 0.02), new(38, 8.55, 0.02)],
            new Axis("hours run", Whole),
            new Axis("dog width, mm", v => v.ToString("0.0", CultureInfo.InvariantCulture)),
            new NamedPoints([new(0, Fit(0)), new(70, Fit(70))], string.Empty),
            new Band([.. grid.Select(h => new ChartPoint(h, Fit(h) + Half(h)))], [.. grid.Select(h => new ChartPoint(h, Fit(h) - Half(h)))], string.Empty),
            new LevelMark(8.3, "limit 8.30 mm"),
            new LevelMark(9.0, "new 9.00 mm"),
            new BoundedMark(59.7, 53, 67, "limit at 60 h (53 to 67)"));
    }

    public static SurvivalInput Survival()
    {
        const double scale = 62;
        const double shape = 2.4;
        static double Surviving(double h) => Math.Exp(-Math.Pow(h / scale, shape));
        return new SurvivalInput(
            Frame("life", "Life of dog rings"),
            [
                new(14, 21, 0.93), new(25, 29, 0.85), new(34, 38, 0.75),
                new(41, 47, 0.62), new(55, 55, 0.50), new(58, 66, 0.33),
            ],
            [12, 25, 34, 41, 58, 72],
            72,
            new NamedPoints([.. Enumerable.Range(0, 41).Select(k => new ChartPoint(k * 2, Surviving(k * 2)))], "Weibull fit"),
            new BoundedMark(scale * Math.Pow(-Math.Log(0.9), 1 / shape), 13, 34, "B10: 24 h (13 to 34)"),
            new Axis("hours run", Whole),
            new Axis("share surviving", Percent),
            "from inspections of 12 rings",
            "last seen good");
    }

    public static SeasonLineInput Seasons() => new(
        Frame("seasons", "Jobs season by season"),
        [new ChartSeason(60, 300, "first"), new ChartSeason(425, 665, "second"), new ChartSeason(790, 1030, "third")],
        [
            new JobMark(20, "20 January: received, first strip", "jobs/1/", "Job of 20 January: received, first strip", Reuse),
            new JobMark(190, "9 July: hard to select third, dog ring renewed", "jobs/2/", "Job of 9 July: dog ring renewed", Renew),
            new JobMark(200, "19 July: oil leak at the output, seal", "jobs/3/", "Job of 19 July: seal", Watch),
            new JobMark(370, "winter rebuild", "jobs/4/", "Job: winter rebuild", Renew),
            new JobMark(900, "check after contact, nothing found; measured again on the same day", null, string.Empty, null),
        ]);

    public static PhotoCalloutsInput Photo() => new(
        Frame("photo", "Dog ring, drive side"),
        4000,
        3000,
        [
            new Callout(0.3, 0.4, 0.09, "rounded corner, 1.2 mm"),
            new Callout(0.72, 0.62, null, "pitting on the flank"),
            new Callout(0.96, 0.05, 0.03, "arrow and words kept inside the picture"),
        ]);
}
