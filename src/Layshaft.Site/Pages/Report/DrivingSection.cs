using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Notes;
using Layshaft.Site.Pages.Shared;
using Rule = Layshaft.Book.Records.WearPattern;

namespace Layshaft.Site.Pages.Report;

/// <summary>How to drive it: the shop's own advice, where the wear of the dog rings calls for it.</summary>
/// <param name="Facts">What the rings showed.</param>
/// <param name="Words">The shop's words.</param>
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

        var (composition, driving) = (report.Composition, DrivingAssessment.Of(report.Assessment));
        Advice[] advice = [.. driving.Rules.SelectMany(r => composition.Shop.Advice.Where(a => a.When == r))];
        return advice.Length == 0
            ? null
            : new SectionView(
                "driving",
                composition.Say("advice.heading"),
                "sections/driving.html",
                new DrivingSection([.. FactsOf(driving, composition)], [.. advice.Select(a => NoteRenderer.Render(a.Words, 3).Html)]));
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
