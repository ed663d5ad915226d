using System.Globalization;
using System.Text;
using Layshaft.Site.Pages.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>One choice of everything that a reference page lets choose, by place in its lists.</summary>
internal readonly record struct Choice(int Set, int Pair, int Final, int Tyre)
{
    /// <summary>What it is called on its page.</summary>
    public string Id => string.Create(CultureInfo.InvariantCulture, $"c{Set}-{Pair}-{Final}-{Tyre}");

    /// <summary>A class for each thing that is chosen: the page hides what has not all those chosen.</summary>
    public string Classes => string.Create(CultureInfo.InvariantCulture, $"s{Set} p{Pair} f{Final} t{Tyre}");
}

/// <summary>What there is to choose, and the stylesheet that shows what was chosen: no script is needed.</summary>
internal static class ReferenceChoices
{
    public static IEnumerable<Choice> All(ReferenceSubject subject)
    {
        for (var set = 0; set < subject.Boxes.Count; set++)
        {
            var stock = subject.Boxes[set].Stock;
            for (var pair = 0; pair < stock.DropPairs.Count; pair++)
            {
                for (var final = 0; final < stock.FinalDrives.Count; final++)
                {
                    for (var tyre = 0; tyre < Math.Max(1, subject.Tyres.Count); tyre++)
                    {
                        yield return new Choice(set, pair, final, tyre);
                    }
                }
            }
        }
    }

    // Stock is one list for all ratio sets of a box; a group with one option asks nothing and is left out.
    public static IReadOnlyList<ChoiceGroup> Groups(ReferenceSubject subject, Composition composition)
    {
        var stock = subject.Boxes[0].Stock;
        ChoiceGroup[] groups =
        [
            Group("set", composition.Say("reference.choose_set"), [.. subject.Boxes.Select(b => b.Set.Name)], 0),
            Group("pair", composition.Say("reference.choose_pair"), [.. stock.DropPairs.Select(p => GearingWords.Pair(p, composition))], Nearest(stock)),
            Group("final", composition.Say("reference.choose_final"), [.. stock.FinalDrives.Select(f => GearingWords.Final(f, composition))], 0),
            Group("tyre", composition.Say("reference.choose_tyre"), [.. subject.Tyres.Select(t => t.Words)], 0),
        ];
        return [.. groups.Where(g => g.Options.Count > 1)];
    }

    public static string Stylesheet(ReferenceSubject subject)
    {
        // A browser that does not know :has() drops these rules and shows every combination.
        var css = new StringBuilder("@supports selector(:has(a)) {\n");
        var stock = subject.Boxes[0].Stock;
        Hide(css, "set", subject.Boxes.Count);
        Hide(css, "pair", stock.DropPairs.Count);
        Hide(css, "final", stock.FinalDrives.Count);
        Hide(css, "tyre", subject.Tyres.Count);
        return css.Append("}\n").ToString();
    }

    private static void Hide(StringBuilder css, string group, int options)
    {
        for (var i = 0; options > 1 && i < options; i++)
        {
            css.Append(CultureInfo.InvariantCulture, $".chooser:has(#{group}-{i}:checked) .combination:not(.{group[0]}{i}) {{ display: none; }}\n");
        }
    }

    private static ChoiceGroup Group(string id, string name, string[] words, int chosen) => new(
        id, name, [.. words.Select((w, i) => new ChoiceOption(string.Create(CultureInfo.InvariantCulture, $"{id}-{i}"), w, i == chosen))]);

    // The page opens on the pair nearest to one to one: it tells nothing of what anybody drives.
    private static int Nearest(Eng.GearingStock stock) =>
        Enumerable.Range(0, stock.DropPairs.Count).MinBy(i => Math.Abs((stock.DropPairs[i]?.Ratio ?? 1) - 1));
}
