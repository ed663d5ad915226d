using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>Says what was chosen and what it costs, the runner-up, and what would change the choice.</summary>
internal static class GearingVerdict
{
    public static IReadOnlyList<string> Lines(EventGearing gearing, Composition composition) =>
        [.. new[] { Why(gearing, composition), Chosen(gearing, composition), RunnerUp(gearing, composition), Changed(gearing, composition), Robust(gearing, composition), gearing.Case.Plan?.Note }.OfType<string>()];

    private static string Why(EventGearing gearing, Composition composition)
    {
        var fastest = gearing.Ranking.Best;
        return EventGearing.IsSame(gearing.Best, fastest)
            ? composition.Say("gearing.why_fastest", ("choices", gearing.Ranking.Candidates.Count))
            : composition.Say(
                gearing.Best.FinalDrive == fastest.FinalDrive ? "gearing.why_limiter" : "gearing.why_final",
                ("choices", gearing.Ranking.Candidates.Count),
                ("gears", GearingWords.Gears(fastest, composition)),
                ("loss", Small(gearing.LossOf(gearing.Best), composition)));
    }

    // Thousandths are as fine as the table has them; a smaller loss would read as none.
    internal static string Small(Duration loss, Composition composition) => loss.Seconds < 0.0005
        ? composition.Say("gearing.less_than", ("time", composition.Figures.Seconds(Duration.FromMilliseconds(1), 3).Text))
        : composition.Figures.Seconds(loss, 3).Text;

    private static string? Chosen(EventGearing gearing, Composition composition)
    {
        if (gearing.Chosen is not { } chosen)
        {
            return null;
        }

        if (EventGearing.IsSame(chosen, gearing.Best))
        {
            return composition.Say("gearing.chosen_same");
        }

        var loss = gearing.LossOf(chosen);
        var gears = GearingWords.Gears(chosen, composition);
        return loss < Duration.Zero
            ? composition.Say("gearing.chosen_faster", ("gears", gears), ("gain", composition.Figures.Seconds(-loss).Text))
            : loss <= Recommendation.Tie
                ? composition.Say("gearing.chosen_tie", ("gears", gears))
                : composition.Say(
                    "gearing.chosen_other",
                    ("gears", gears),
                    ("loss", composition.Figures.Seconds(loss).Text),
                    ("laps", gearing.Case.Laps),
                    ("all", composition.Figures.Seconds(loss * gearing.Case.Laps, 1).Text));
    }

    private static string? RunnerUp(EventGearing gearing, Composition composition)
    {
        var second = gearing.Ranking.Candidates.FirstOrDefault(c => c.IsFinished && !EventGearing.IsSame(c, gearing.Best) && c.FinalDrive == gearing.Best.FinalDrive);
        return second is null
            ? null
            : composition.Say("gearing.runner_up", ("gears", GearingWords.Gears(second, composition)), ("loss", Small(gearing.LossOf(second), composition)));
    }

    private static string Changed(EventGearing gearing, Composition composition)
    {
        string[] changing = [.. gearing.Ranking.Changes.Where(c => Loses(c, gearing.Best)).Select(c => GearingWords.Change(c.Change, composition))];
        return changing.Length == 0
            ? composition.Say("gearing.nothing_changes")
            : composition.Say("gearing.would_change", ("changes", string.Join(", ", changing)));
    }

    private static bool Loses(Eng.RankingUnderChange change, Eng.GearingCandidate best) => ChangeRow.LossOf(change, best) is not { } loss || loss > Recommendation.Tie;

    // Another choice is worth naming only where it risks noticeably less than the recommendation.
    private static string Robust(EventGearing gearing, Composition composition)
    {
        Duration?[] losses = [gearing.LossOf(gearing.Best), .. gearing.Ranking.Changes.Select(c => ChangeRow.LossOf(c, gearing.Best))];
        Duration? worst = losses.Contains(null) ? null : losses.OfType<Duration>().MaxBy(d => d.Seconds);
        var least = gearing.Ranking.WorstRegretOfRobust;
        return worst is { } risk && risk - least <= Recommendation.Tie
            ? composition.Say("gearing.robust_same", ("loss", Small(risk, composition)))
            : composition.Say(
                "gearing.robust",
                ("gears", GearingWords.Gears(gearing.Ranking.Robust, composition)),
                ("loss", Small(least, composition)));
    }
}

/// <summary>The ranking on a changed day.</summary>
/// <param name="Change">What changed.</param>
/// <param name="Best">The best gears on that day.</param>
/// <param name="Loss">What the recommendation loses on that day.</param>
public sealed record ChangeRow(string Change, string Best, string Loss)
{
    internal static ChangeRow Of(Eng.RankingUnderChange change, Eng.GearingCandidate best, Composition composition) => new(
        GearingWords.Change(change.Change, composition),
        GearingWords.Gears(change.Candidates[0], composition),
        LossOf(change, best) is { } loss ? composition.Figures.Seconds(loss, 3).Text : composition.Say("gearing.not_finished"));

    /// <summary>What a choice loses against the best of the changed day; null when it does not get round on it.</summary>
    internal static Duration? LossOf(Eng.RankingUnderChange change, Eng.GearingCandidate choice) =>
        change.Candidates.FirstOrDefault(c => EventGearing.IsSame(c, choice)) is { IsFinished: true } found ? found.LossToBest : null;
}
