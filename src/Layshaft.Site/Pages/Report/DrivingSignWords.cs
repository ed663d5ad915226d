using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Html;
using Layshaft.Site.Notes;
using Layshaft.Site.Pages.Shared;
using Rule = Layshaft.Book.Records.WearPattern;

namespace Layshaft.Site.Pages.Report;

/// <summary>Words for what the wear of the dogs says, each with what it rests on and with other causes than the driver's hands.</summary>
internal sealed class DrivingSignWords(DrivingAssessment driving, Composition composition)
{
    public IEnumerable<DrivingSignView> Views()
    {
        var signs = driving.Signs;
        if (signs.AtRest.Count > 0)
        {
            yield return View("rest", signs.AtRest, [Used(signs.AtRest)], [Advice(Rule.AtRest, "advice.rest.words")], "advice.rest.causes");
        }

        if (signs.Moving.Count > 0)
        {
            yield return Moving();
        }

        if (driving.BackCuts.Count > 0)
        {
            yield return View(
                "back_cut", [.. driving.BackCuts.Select(b => b.Gear)], [.. driving.BackCuts.Select(BackCut)], [Advice(Rule.BackCutWorn, "advice.back_cut.words")], null);
        }

        if (signs.IsNothingWorn && driving.BackCuts.Count == 0)
        {
            yield return new DrivingSignView(composition.Say("advice.none.heading"), [], [Advice(Rule.NothingWorn, "advice.none.words")], null);
        }
    }

    private DrivingSignView Moving()
    {
        var signs = driving.Signs;
        List<string> evidence = [Used(signs.Moving), Say(signs.Side switch
        {
            WornSide.Drive => "advice.move.drive",
            WornSide.Coast => "advice.move.coast",
            WornSide.BothAlike => "advice.move.both",
            WornSide.NotKnown => "advice.move.side_unknown",
        })];
        if (signs.Better.Count > 0)
        {
            evidence.Add(composition.Say("advice.move.better", ("gears", Names(signs.Better))));
        }

        if (signs.Moving.All(driving.SoundGears.Contains))
        {
            evidence.Add(Say("advice.move.gears_sound"));
        }

        var words = signs.Side switch
        {
            WornSide.Drive => Advice(Rule.DriveSide, "advice.move.drive_words"),
            WornSide.Coast => Advice(Rule.CoastSide, "advice.move.coast_words"),
            _ => Advice(Rule.SeveralGears, "advice.move.words"),
        };
        return View("move", signs.Moving, evidence, signs.OneStandsOut ? [Advice(Rule.OneGear, "advice.one.words"), words] : [words], "advice.move.causes");
    }

    private DrivingSignView View(string kind, IReadOnlyList<int> gears, IReadOnlyList<string> evidence, IReadOnlyList<RawHtml> words, string? causes)
    {
        string[] worn = [.. driving.WornSelectorsOf(gears).Select(p => p.Name)];
        return new DrivingSignView(
            composition.Say($"advice.{kind}.heading", ("gears", Names(gears))),
            worn.Length > 0 ? [.. evidence, composition.Say("advice.selector", ("parts", string.Join(", ", worn)))] : evidence,
            words,
            causes is null ? null : Say(causes));
    }

    // The shop's own words replace the built-in ones.
    private RawHtml Advice(Rule when, string key) =>
        NoteRenderer.Render(string.Join("\n\n", composition.Shop.Advice.Where(a => a.When == when).Select(a => a.Words).DefaultIfEmpty(Say(key))), 3).Html;

    private string Used(IReadOnlyList<int> gears) => composition.Say(
        "advice.used",
        ("gears", string.Join(", ", gears.Select(gear => composition.Say(
            "advice.used.gear",
            ("gear", GearWords.Of(gear, composition)),
            ("share", composition.Figures.Percent(driving.Wear.Single(w => w.Gear == gear).Worst.Share).Text))))));

    private string BackCut((int Gear, Assessment.MeasureAssessment Measure) worn)
    {
        var (measure, figures) = (worn.Measure, composition.Figures);
        var written = Measured.DecimalsWritten(measure.Measure.New, measure.Measure.Limit);
        return composition.Say(
            "advice.back_cut.gear",
            ("gear", GearWords.Of(worn.Gear, composition)),
            ("value", Measured.WithUncertainty(measure.Wear.Measured, Measured.DecimalsOf(measure.Instrument?.Resolution, measure.Measure.New, measure.Measure.Limit), figures)),
            ("new", Measured.Figure(measure.Measure.New, written, figures).Text),
            ("limit", Measured.Figure(measure.Measure.Limit, written, figures).Text));
    }

    private string Names(IEnumerable<int> gears) => string.Join(", ", gears.Select(g => GearWords.Of(g, composition)));

    private string Say(string key) => composition.Say(key);
}
