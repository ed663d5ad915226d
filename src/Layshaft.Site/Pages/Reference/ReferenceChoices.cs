using System.Globalization;
using System.Text;
using Layshaft.Site.Pages.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>One choice of everything that a reference page lets choose, by place in its lists.</summary>
internal readonly record struct Choice(int Set, int Pair, int Final, int Tyre)
{
    public string Class => string.Create(CultureInfo.InvariantCulture, $"c{Set}-{Pair}-{Final}-{Tyre}");
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
        var css = new StringBuilder("@supports selector(:has(a)) {\n.chooser .combination { display: none; }\n");
        var stock = subject.Boxes[0].Stock;
        foreach (var choice in All(subject))
        {
            css.Append(".chooser");
            Checked(css, "set", choice.Set, subject.Boxes.Count);
            Checked(css, "pair", choice.Pair, stock.DropPairs.Count);
            Checked(css, "final", choice.Final, stock.FinalDrives.Count);
            Checked(css, "tyre", choice.Tyre, subject.Tyres.Count);
            css.Append(" .").Append(choice.Class).Append(" { display: block; }\n");
        }

        return css.Append("}\n").ToString();
    }

    private static void Checked(StringBuilder css, string group, int index, int options)
    {
        if (options > 1)
        {
            css.Append(CultureInfo.InvariantCulture, $":has(#{group}-{index}:checked)");
        }
    }

    private static ChoiceGroup Group(string id, string name, string[] words, int chosen) => new(
        id, name, [.. words.Select((w, i) => new ChoiceOption(string.Create(CultureInfo.InvariantCulture, $"{id}-{i}"), w, i == chosen))]);

    // The page opens on the pair nearest to one to one: it tells nothing of what anybody drives.
    private static int Nearest(Eng.GearingStock stock) =>
        Enumerable.Range(0, stock.DropPairs.Count).MinBy(i => Math.Abs((stock.DropPairs[i]?.Ratio ?? 1) - 1));
}
