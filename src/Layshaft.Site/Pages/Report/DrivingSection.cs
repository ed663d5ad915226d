using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Html;
using Layshaft.Site.Notes;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>How to drive it: the technician's words to this driver, then what the wear of the dogs calls for.</summary>
/// <param name="Words">The technician's words.</param>
/// <param name="Signs">What the wear says, engagement at rest first.</param>
/// <param name="Drawing">The positions of the dogs that the words speak of; null for none.</param>
/// <param name="Facts">How the wear compares with the work of the dogs.</param>
public sealed record DrivingSection(IReadOnlyList<RawHtml> Words, IReadOnlyList<DrivingSignView> Signs, RawHtml? Drawing, IReadOnlyList<string> Facts)
{
    /// <summary>Whether anything is said or drawn about the reasons.</summary>
    public bool HasReasons => Drawing is not null || Facts.Count > 0 || Signs.Any(s => s.Evidence.Count > 0 || s.Causes is not null);

    /// <summary>Composes the section; null for an earlier owner's job (their driving is theirs), or when no advice applies.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (!report.IsOwn)
        {
            return null;
        }

        var (composition, job) = (report.Composition, report.Job);
        var driving = DrivingAssessment.Of(report.Assessment);
        var work = RingWear.Against(report.Assessment, composition.Assessment.Lives, composition.Assessment.Gearing.For(job)?.Dogs);
        DrivingSignView[] signs = [.. new DrivingSignWords(driving, composition).Views()];
        string[] facts = [.. WorkFacts(work, driving.Signs, composition)];
        return job.Driving is null && signs.Length == 0
            ? null
            : new SectionView(
                "driving",
                composition.Say("advice.heading"),
                "sections/driving.html",
                new DrivingSection(job.Driving is { } own ? [NoteRenderer.Render(own, 3).Html] : [], signs, DogPictures.Of(driving, composition), facts));
    }

    // Only of worn gears: the work says nothing about one that is sound.
    private static IEnumerable<string> WorkFacts(WearAgainstWork? work, DrivingSigns signs, Composition composition)
    {
        int[] worn = [.. signs.AtRest, .. signs.Moving];
        switch (work?.Verdict)
        {
            case WearAgainstWorkVerdict.OneGearStandsOut when worn.Contains(work.Gear!.Value):
                var one = work.Shares.Single(s => s.Gear == work.Gear);
                yield return composition.Say(
                    one.Gear == 1 ? "advice.work.first" : "advice.work.one",
                    ("gear", GearWords.Of(one.Gear, composition)),
                    ("times", composition.Figures.Number(one.Excess, 1).Text));
                break;
            case WearAgainstWorkVerdict.Differs:
                string[] beyond = [.. work.Shares.Where(s => s.Excess >= WearAgainstWork.StandsOut && worn.Contains(s.Gear)).OrderByDescending(s => s.Excess).Select(s => GearWords.Of(s.Gear, composition))];
                if (beyond.Length > 0)
                {
                    yield return composition.Say("advice.work.differs", ("gears", string.Join(", ", beyond)));
                }

                break;
        }
    }
}

/// <summary>One thing that the wear says about the shifting.</summary>
/// <param name="Heading">How the gears are engaged, and which.</param>
/// <param name="Evidence">What was measured.</param>
/// <param name="Words">What to do: the shop's own words, or the built-in ones.</param>
/// <param name="Causes">Causes beyond the driver's hands, and who checks them; null for none.</param>
public sealed record DrivingSignView(string Heading, IReadOnlyList<string> Evidence, IReadOnlyList<RawHtml> Words, string? Causes);
