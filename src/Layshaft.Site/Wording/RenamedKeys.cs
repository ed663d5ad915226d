using Layshaft.Site.Templates;

namespace Layshaft.Site.Wording;

/// <summary>Keys of texts that have a new name. A shop's own files may still use the old one; a note names the new one.</summary>
internal static class RenamedKeys
{
    /// <summary>The new name of each old one.</summary>
    public static IReadOnlyDictionary<string, string> NewNames { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["gearing.change.head_wind"] = "gearing.change.headwind",
        ["gearing.chart.drag"] = "gearing.chart.resistance",
        ["gearing.head.lands"] = "gearing.head.drops_to",
        ["gearing.head.never"] = "gearing.head.maximum_speed",
        ["history.look_by"] = "history.inspect_by",
        ["history.look_within"] = "history.inspect_within",
        ["history.trend.look"] = "history.trend.inspect",
        ["history.trend.look_now"] = "history.trend.inspect_now",
        ["history.trend.look_range"] = "history.trend.inspect_range",
        ["history.trend.look_use"] = "history.trend.inspect_use",
        ["history.unsaid"] = "history.no_trend",
        ["history.unsaid.doubtful"] = "history.no_trend.doubtful",
        ["history.unsaid.flat"] = "history.no_trend.flat",
        ["history.unsaid.one"] = "history.no_trend.one",
        ["history.unsaid.one_use"] = "history.no_trend.one_use",
        ["history.unsaid.part"] = "history.no_trend.part",
        ["history.unsaid.shrinking"] = "history.no_trend.shrinking",
        ["history.unsaid.two"] = "history.no_trend.two",
        ["money.total"] = "money.gross",
        ["reference.head.lands"] = "reference.head.next_gear",
        ["shop.looks"] = "shop.wear_due",
        ["shop.looks.caption"] = "shop.wear_due.caption",
        ["shop.looks.words"] = "shop.wear_due.words",
        ["shop.run_out"] = "shop.expired",
        ["term.bearing_overload"] = "term.brinelling",
        ["term.bearing_overload.name"] = "term.brinelling.name",
        ["term.current_leakage"] = "term.electrical_erosion",
        ["term.current_leakage.name"] = "term.electrical_erosion.name",
        ["term.heat_coloured_dogs"] = "term.blued_dogs",
        ["term.heat_coloured_dogs.name"] = "term.blued_dogs.name",
        ["term.heat_coloured_fork"] = "term.blued_fork",
        ["term.heat_coloured_fork.name"] = "term.blued_fork.name",
        ["term.undercut_lost"] = "term.back_cut_worn",
        ["term.undercut_lost.name"] = "term.back_cut_worn.name",
    };

    /// <summary>A note for each old key that a shop's texts file uses, at its place.</summary>
    public static IEnumerable<TemplateProblem> In(TextsFile file) =>
        file.Renamed.Select(old => new TemplateProblem(file.Name, file.Places[old].Line, file.Places[old].Column, Message(old)));

    /// <summary>A note for each old key in quotes in a template, at its place.</summary>
    public static IEnumerable<TemplateProblem> In(string template, string text)
    {
        var line = 0;
        foreach (var words in text.Split('\n'))
        {
            line++;
            foreach (var old in NewNames.Keys)
            {
                var at = Math.Max(words.IndexOf($"\"{old}\"", StringComparison.Ordinal), words.IndexOf($"'{old}'", StringComparison.Ordinal));
                if (at >= 0)
                {
                    yield return new(template, line, at + 2, Message(old));
                }
            }
        }
    }

    private static string Message(string old) => $"The text '{old}' is now called '{NewNames[old]}'. Write the new name; the old one still works.";
}
