using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Notes;
using Layshaft.Site.Pages.Shared;
using Rule = Layshaft.Book.Records.WearPattern;

namespace Layshaft.Site.Pages.Report;

/// <summary>How to drive it: the technician's words to this driver, then the shop's own advice where the wear of the dog rings calls for it.</summary>
/// <param name="Facts">What the rings showed.</param>
/// <param name="Words">The technician's and the shop's words.</param>
public sealed record DrivingSection(IReadOnlyList<string> Facts, IReadOnlyList<Html.RawHtml> Words)
{
    /// <summary>Composes the section; null for an earlier owner's job (his driving is his), or when no advice applies.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (!report.IsOwn)
        {
            return null;
        }

        var (composition, job) = (report.Composition, report.Job);
        var dogs = composition.Assessment.Gearing.For(job)?.Dogs;
        var work = RingWear.Against(report.Assessment, composition.Assessment.Lives, dogs);
        var driving = DrivingAssessment.Of(report.Assessment, work);
        string[] compared = [.. WorkFacts(work, composition)];
        Advice[] advice = [.. driving.Rules.SelectMany(r => composition.Shop.Advice.Where(a => a.When == r))];
        string[] words = [.. job.Driving is { } own ? [own] : Array.Empty<string>(), .. advice.Select(a => a.Words)];
        return words.Length == 0 && compared.Length == 0
            ? null
            : new SectionView(
                "driving",
                composition.Say("advice.heading"),
                "sections/driving.html",
                new DrivingSection([.. FactsOf(driving, composition), .. compared], [.. words.Select(w => NoteRenderer.Render(w, 3).Html)]));
    }

    // Does the wear follow the work? Silence where too little was measured to say.
    private static IEnumerable<string> WorkFacts(WearAgainstWork? work, Composition composition)
    {
        switch (work?.Verdict)
        {
            case WearAgainstWorkVerdict.Agrees:
                yield return composition.Say("advice.work.agrees");
                break;
            case WearAgainstWorkVerdict.OneGearStandsOut:
                var one = work.Shares.Single(s => s.Gear == work.Gear);
                yield return composition.Say(
                    one.Gear == 1 ? "advice.work.first" : "advice.work.one",
                    ("gear", GearWords.Of(one.Gear, composition)),
                    ("times", composition.Figures.Number(one.Excess, 1).Text));
                break;
            case WearAgainstWorkVerdict.Differs:
                string[] beyond = [.. work.Shares.Where(s => s.Excess >= WearAgainstWork.StandsOut).OrderByDescending(s => s.Excess).Select(s => GearWords.Of(s.Gear, composition))];
                yield return beyond.Length > 0
                    ? composition.Say("advice.work.differs", ("gears", string.Join(", ", beyond)))
                    : composition.Say("advice.work.differs_none");
                break;
        }
    }

    private static IEnumerable<string> FactsOf(DrivingAssessment driving, Composition composition)
    {
        GearWear[] measured = [.. driving.Wear.Where(w => w.Worse is not null).OrderByDescending(w => w.Worse)];
        if (measured.Length >= 2)
        {
            yield return composition.Say(
                "advice.range",
                ("worst", GearWords.Of(measured[0].Gear, composition)),
                ("most", composition.Figures.Percent(measured[0].Worse!.Value).Text),
                ("best", GearWords.Of(measured[^1].Gear, composition)),
                ("least", composition.Figures.Percent(measured[^1].Worse!.Value).Text));
        }

        foreach (var rule in driving.Rules.Where(r => r is Rule.DriveSide or Rule.CoastSide))
        {
            yield return composition.Say(rule == Rule.DriveSide ? "advice.drive_side" : "advice.coast_side");
        }
    }
}
