using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>Says which gears to fit, why, what that gives, and when others would be better.</summary>
internal static class GearingAnswer
{
    /// <summary>The answer in one sentence.</summary>
    public static string Lead(EventGearing gearing, Composition composition) => gearing.Advice.Recommended is { } best
        ? composition.Say(gearing.Advice.KeepsFitted ? "gearing.keep" : "gearing.fit", ("gears", GearingWords.Gears(best.Set, composition, gearing.Case)))
        : composition.Say("gearing.none", ("choices", Choices(gearing)), ("venue", gearing.Case.Venue.Name));

    /// <summary>Why, what comes of it, and what there is to change.</summary>
    public static IReadOnlyList<string> Lines(EventGearing gearing, Composition composition)
    {
        var advice = gearing.Advice;
        string?[] lines = advice.Recommended is { } best
            ? [Gain(gearing, composition), .. ChangeWords.Of(gearing, composition), Why(gearing, composition), Searched(gearing, composition), Gives(best, gearing, composition), Fitted(gearing, composition), gearing.Case.Plan?.Note]
            : [.. Eng.LimitShortfall.Of(gearing.Ranking).Select(s => GuardWords.Shortfall(s, composition)), Stuck(gearing, composition), Fitted(gearing, composition)];
        return [.. lines.OfType<string>()];
    }

    /// <summary>When another combination is better than the recommended one.</summary>
    public static IReadOnlyList<string> Better(EventGearing gearing, Composition composition) => gearing.Advice.Recommended is null
        ? []
        :
        [
            .. gearing.Advice.Better.Select(b => composition.Say(
                b.Loss is null ? "gearing.better.unfinished" : "gearing.better.row",
                ("change", GearingWords.Change(b.Change, composition)),
                ("gears", GearingWords.Short(b.Set.Set, composition, gearing.Case)),
                ("loss", b.Loss is { } loss ? GearingWords.Difference(loss, composition) : string.Empty))),
        ];

    /// <summary>In which conditions no other combination is better, and which were left out.</summary>
    public static IReadOnlyList<string> NotBetter(EventGearing gearing, Composition composition)
    {
        Eng.ConditionChange[] same = [.. gearing.Ranking.Changes.Select(c => c.Change).Where(c => !gearing.Advice.Better.Any(b => b.Change == c))];
        string?[] lines =
        [
            same.Length == 0 ? null : composition.Say("gearing.better.none", ("changes", GearingWords.Changes(same, composition))),
            gearing.Ranking.ChangesLeftOut is { Count: > 0 } left ? composition.Say("gearing.better.left_out", ("changes", GearingWords.Changes(left, composition))) : null,
        ];
        return [.. lines.OfType<string>()];
    }

    private static int Choices(EventGearing gearing) => gearing.Ranking.Candidates.Count(c => c.IsStocked);

    private static string? Gain(EventGearing gearing, Composition composition)
    {
        var advice = gearing.Advice;
        if (advice.KeepsFitted || advice.Recommended is null || advice.Fitted is not { } fitted)
        {
            return null;
        }

        var name = GearingWords.Short(fitted.Set, composition, gearing.Case);
        return fitted.IsUsable && advice.Gain is { } gain
            ? composition.Say("gearing.gain", ("fitted", name), ("gain", GearingWords.Difference(gain, composition)))
            : composition.Say(fitted.IsFinished ? "gearing.fitted_past" : "gearing.fitted_stuck", ("fitted", name));
    }

    private static string Why(EventGearing gearing, Composition composition) => gearing.Advice.AsGood.Count == 1
        ? composition.Say("gearing.why.alone", ("count", Choices(gearing)))
        : composition.Say(gearing.Advice.KeepsFitted ? "gearing.why.keep" : "gearing.why.fit", ("count", gearing.Advice.AsGood.Count), ("choices", Choices(gearing)));

    private static string? Searched(EventGearing gearing, Composition composition) => gearing.Case.Combinations is > 0 and var count
        ? composition.Say("gearing.searched", ("count", composition.Figures.Number(count).Text))
        : null;

    private static string Gives(Eng.GearingCandidate best, EventGearing gearing, Composition composition)
    {
        var figures = composition.Figures;
        string[] corners = [.. best.CornersBetweenGears.Select(s => gearing.Case.Track.Before(s)?.Corner).OfType<string>()];
        string?[] parts =
        [
            composition.Say(
                "gearing.gives",
                ("speed", figures.Speed(best.TopSpeed).Both),
                ("where", composition.Say("gearing.where", ("straight", best.TopSpeedStraight), ("gear", best.TopSpeedGear))),
                ("rpm", figures.Rpm(best.EngineSpeedAtTop).Text)),
            best.OnLimiter > Duration.FromMilliseconds(50) ? composition.Say("gearing.gives_limiter", ("time", figures.Seconds(best.OnLimiter, 1).Text)) : null,
            corners.Length > 0 ? composition.Say("gearing.gives_corners", ("corners", string.Join(", ", corners))) : null,
        ];
        return string.Join(' ', parts.OfType<string>());
    }

    private static string? Fitted(EventGearing gearing, Composition composition) => gearing.Advice.Fitted is { } fitted && fitted.Set != gearing.AsItLeft
        ? composition.Say("gearing.as_left", ("gears", GearingWords.Short(gearing.AsItLeft, composition, gearing.Case)), ("fitted", GearingWords.Short(fitted.Set, composition, gearing.Case)))
        : null;

    private static string? Stuck(EventGearing gearing, Composition composition) => gearing.Ranking.Candidates.Count(c => c.IsStocked && !c.IsFinished) is > 0 and var count
        ? composition.Say("gearing.none.stuck", ("count", count))
        : null;
}
