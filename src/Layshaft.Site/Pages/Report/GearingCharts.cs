using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>The charts of the recommended gears.</summary>
internal static class GearingCharts
{
    private const int FirstRows = 6;
    private const int PastRows = 2;

    public static RawHtml Speeds(Eng.GearingCandidate best, Eng.Car car, GearingCase made, Composition composition)
    {
        var frame = new ChartFrame(
            "gear-speeds",
            composition.Say("gearing.chart.speeds"),
            composition.Say("gearing.chart.speeds_words", ("gears", GearingWords.Gears(best.Set, composition, made)), ("speed", composition.Figures.Speed(best.TopSpeed).Both), ("rpm", composition.Figures.Rpm(best.EngineSpeedAtTop).Text)));
        return ChartPair.Of(
            SpeedPerGear.Input(frame, TableOf(car), Eng.UpshiftPlan.For(car.Drivetrain, car.Engine), (best.TopSpeed, best.TopSpeedGear), composition),
            SpeedPerGearChart.Draw);
    }

    public static RawHtml Forces(Eng.Car car, Composition composition)
    {
        var frame = new ChartFrame("gear-forces", composition.Say("gearing.chart.forces"), composition.Say("gearing.chart.forces_words"));
        return ChartPair.Of(WheelForces.Input(frame, car, TableOf(car), composition), WheelForceChart.Draw);
    }

    /// <summary>The recommended combination among the fastest ones, the fitted one, and those that only a limit forbids.</summary>
    public static RawHtml? Ranking(EventGearing gearing, Composition composition)
    {
        if (gearing.Advice.Recommended is not { } best)
        {
            return null;
        }

        var all = gearing.Ranking.Candidates;
        Eng.GearingCandidate[] shown =
        [
            .. all.Where(c => c.IsUsable && c.IsStocked).Take(FirstRows)
                .Concat(all.Where(c => c.IsFinished && !c.IsUsable && c.StraightsTime < best.StraightsTime).Take(PastRows))
                .Append(best)
                .Concat(gearing.Advice.Fitted is { IsFinished: true } fitted ? [fitted] : [])
                .DistinctBy(c => c.Set)
                .OrderBy(c => c.StraightsTime.Seconds),
        ];
        RankedChoice[] choices = [.. shown.Select(c => Choice(c, best, gearing, composition)).OfType<RankedChoice>()];
        var frame = new ChartFrame(
            "gear-ranking",
            composition.Say("gearing.chart.ranking", ("gears", GearingWords.Short(best.Set, composition, gearing.Case))),
            string.Join(' ', choices.Select(c => composition.Say("gearing.chart.ranking_row", ("choice", c.Label), ("loss", c.LossText)))));
        return ChartPair.Of(
            new RankingInput(frame, choices, new Axis(composition.Say("gearing.axis.loss"), v => composition.Figures.Number(v, 2).Text)), RankingChart.Draw);
    }

    public static Eng.SpeedTable TableOf(Eng.Car car) => Eng.SpeedTable.For(car);

    private static RankedChoice? Choice(Eng.GearingCandidate candidate, Eng.GearingCandidate best, EventGearing gearing, Composition composition)
    {
        var (isBest, isFitted) = (candidate.Set == best.Set, candidate.Set == gearing.Advice.Fitted?.Set);
        string?[] label =
        [
            GearingWords.Short(candidate.Set, composition, gearing.Case),
            isBest ? composition.Say("gearing.row.best") : null,
            isFitted ? composition.Say("gearing.row.fitted") : null,
            candidate.PassedLimits.Count > 0 ? composition.Say("gearing.row.past", ("limits", GuardWords.Limits(candidate, composition))) : null,
        ];
        return gearing.Ranking.Difference(candidate, best) is { } loss
            ? new RankedChoice(
                string.Join(", ", label.OfType<string>()),
                loss.Value.Seconds,
                loss.Expanded.Seconds,
                isBest ? composition.Figures.Seconds(loss.Value, 0).Text : GearingWords.Signed(loss, composition),
                candidate.PassedLimits.Count > 0 ? ChoiceMark.PastLimit : isBest ? ChoiceMark.Recommended : isFitted ? ChoiceMark.Fitted : ChoiceMark.Other)
            : null;
    }
}

/// <summary>One gear: when to leave it, and the speed above which it must never be engaged.</summary>
/// <param name="Gear">The gear.</param>
/// <param name="Never">The speed above which a downshift into it over-revs the engine.</param>
/// <param name="Upshift">Engine speed at which to leave it.</param>
/// <param name="Lands">Engine speed in the next gear then.</param>
public sealed record ShiftRow(string Gear, string Never, string Upshift, string Lands)
{
    internal static IReadOnlyList<ShiftRow> Of(Eng.Car car, Composition composition)
    {
        var shifts = Eng.UpshiftPlan.For(car.Drivetrain, car.Engine);
        return
        [
            .. GearingCharts.TableOf(car).Rows.Select(row => new ShiftRow(
                row.Name,
                composition.Figures.Speed(row.OverRevAbove).Both,
                row.Number <= shifts.Count ? composition.Figures.Rpm(shifts[row.Number - 1].At).Text : composition.Say("gearing.top_gear"),
                row.Number <= shifts.Count ? composition.Figures.Rpm(shifts[row.Number - 1].Lands).Text : string.Empty)),
        ];
    }
}
