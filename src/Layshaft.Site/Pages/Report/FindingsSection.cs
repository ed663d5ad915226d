using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Reference;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What was found: each part with its picture, one sentence, the evidence, the decision. Worst first.</summary>
/// <param name="Key">How to read the gauges; null if nothing was measured.</param>
/// <param name="Findings">What calls for attention or has a picture; every finding if nothing does.</param>
/// <param name="WatchedHeading">Which parts to monitor are folded away on a screen, because others were worse; null for none.</param>
/// <param name="Watched">Those parts.</param>
/// <param name="SoundHeading">How many sound parts are folded away; null for none.</param>
/// <param name="SoundNames">Their names, for paper.</param>
/// <param name="Sound">Sound parts.</param>
/// <param name="Others">Pictures that belong to no finding.</param>
/// <param name="Remark">The shop's remark on its pictures; null for none.</param>
internal sealed record FindingsSection(
    string? Key,
    IReadOnlyList<FindingView> Findings,
    string? WatchedHeading,
    IReadOnlyList<FindingView> Watched,
    string? SoundHeading,
    string SoundNames,
    IReadOnlyList<FindingView> Sound,
    IReadOnlyList<PictureView> Others,
    string? Remark)
{
    /// <summary>Composes the section; null when there is nothing to show.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var pictures = new ReportPictures(report);
        FindingView[] findings = [.. report.InOrder.Select((f, i) => View(f, i + 1, report, pictures))];
        var others = pictures.Others();
        if (findings.Length == 0 && others.Count == 0)
        {
            return null;
        }

        var composition = report.Composition;
        // A picture is there to be seen.
        FindingView[] Without(Grade grade) => [.. findings.Where((f, i) => report.InOrder[i].Grade == grade && f.Pictures.Count + f.MorePictures.Count == 0)];
        var sound = Without(Grade.Reuse);
        sound = sound.Length == findings.Length ? [] : sound;
        var watched = report.InOrder is [{ Grade: Grade.Renew }, ..] ? Without(Grade.Watch) : [];
        return new SectionView(
            "findings",
            composition.Say("report.findings"),
            "sections/findings.html",
            new FindingsSection(
                findings.Any(f => f.Evidence is not null || f.More.Count > 0) ? composition.Say("gauge.key") : null,
                [.. findings.Except(sound).Except(watched)],
                watched.Length > 0 ? composition.Say("finding.watched", ("count", watched.Length), ("parts", string.Join(", ", watched.Select(f => f.Part)))) : null,
                watched,
                sound.Length > 0 ? composition.Say("finding.sound", ("count", sound.Length)) : null,
                string.Join(", ", sound.Select(f => f.Part)),
                sound,
                others,
                pictures.Any ? composition.Shop.PhotoRemark : null));
    }

    private static FindingView View(FindingAssessment assessed, int number, ReportContext report, ReportPictures pictures)
    {
        var (finding, composition) = (assessed.Finding, report.Composition);
        var where = string.Join(", ", new[] { FlankWords(finding, composition), finding.Position }.OfType<string>());
        Evidence[] evidence = [.. assessed.Measures.OrderByDescending(m => m.Wear.ShareUsed.Value).Select(m => Evidence.Of(m, assessed, report))];
        var photos = pictures.Of(finding);
        // On a phone the worst finding shows a picture and a gauge; every other is a sentence with the rest folded.
        var shown = number == 1 ? 1 : 0;
        TermView[] conditions = [.. finding.Conditions.Select(c => DamageTerms.All.FirstOrDefault(t => t.Word == c)).OfType<DamageTerm>().Select(t => TermView.Of(t, composition))];
        return new FindingView(
            report.Anchor(assessed),
            FormattableString.Invariant($"{number}"),
            assessed.Part.Name,
            where.Length > 0 ? where : null,
            GradeViews.Of(assessed.Grade, composition),
            finding.Sentence,
            evidence.Take(shown).FirstOrDefault(),
            [.. evidence.Skip(shown)],
            conditions,
            Fold(conditions, shown, evidence.Length - shown, assessed is { Overruled: true, ByPolicy: not null }, composition),
            finding.Action is { } action ? composition.Say("finding.decision", ("action", action)) : null,
            finding.LeftIn is { } reason && !report.Job.Renewed.Any(r => r.Part == finding.Part) ? composition.Say("finding.left_in", ("reason", reason)) : null,
            assessed is { Overruled: true, ByPolicy: { } policy }
                ? composition.Say("finding.overruled", ("policy", GradeViews.Of(policy, composition).Name), ("given", GradeViews.Of(assessed.Grade, composition).Name), ("reason", finding.Reason ?? string.Empty))
                : null,
            IfLeftMatters(finding, report.Job) ? IfLeftWords.Say(finding.IfLeft, composition) : null,
            [.. photos.Take(shown)],
            [.. photos.Skip(shown)],
            photos.Count > shown ? composition.Say(shown > 0 ? "finding.more_pictures" : "finding.pictures", ("count", photos.Count - shown)) : null);
    }

    private static string? Fold(IEnumerable<TermView> conditions, int shown, int folded, bool overruled, Composition composition)
    {
        string?[] words =
        [
            .. conditions.Select(c => c.Word),
            folded > 0 ? composition.Say(shown > 0 ? "finding.more" : "finding.measurements", ("count", folded)) : null,
            overruled ? composition.Say("finding.regraded") : null,
        ];
        return words.OfType<string>().ToArray() is { Length: > 0 } some ? string.Join(", ", some) : null;
    }

    // What a part would do if left is history once it is renewed, and an offer says it beside its price.
    private static bool IfLeftMatters(Finding finding, Job job) =>
        !job.Renewed.Any(r => r.Part == finding.Part) && !job.Offers.SelectMany(o => o.Lines).Any(l => l.Part == finding.Part);

    private static string? FlankWords(Finding finding, Composition composition) => finding.Flank switch
    {
        Flank.Drive => composition.Say("flank.drive"),
        Flank.Coast => composition.Say("flank.coast"),
        _ => null,
    };
}

/// <summary>A finding as the report shows it.</summary>
/// <param name="Id">Anchor.</param>
/// <param name="Number">Its number on the sheet.</param>
/// <param name="Part">The part.</param>
/// <param name="Where">Side and position; null when not said.</param>
/// <param name="Grade">The grade that stands.</param>
/// <param name="Sentence">One sentence for the customer; null for none.</param>
/// <param name="Evidence">The measurement with the most wear, of the worst finding only; null for none.</param>
/// <param name="More">Its other measurements, folded away on a screen.</param>
/// <param name="Conditions">The damage seen.</param>
/// <param name="Fold">What is folded away: the words for the damage and the other measurements; null for neither.</param>
/// <param name="Decision">What was decided; null when not said.</param>
/// <param name="LeftIn">Why it went back in though graded renew; null when not said.</param>
/// <param name="Overruled">Both grades and the reason; null when they agree.</param>
/// <param name="IfLeft">What happens if it is left; null when not said.</param>
/// <param name="Pictures">Pictures that are always shown: the first of the worst finding.</param>
/// <param name="MorePictures">Its other pictures, folded away on a phone.</param>
/// <param name="PicturesFold">How many those are; null for none.</param>
internal sealed record FindingView(
    string Id,
    string Number,
    string Part,
    string? Where,
    GradeView Grade,
    string? Sentence,
    Evidence? Evidence,
    IReadOnlyList<Evidence> More,
    IReadOnlyList<TermView> Conditions,
    string? Fold,
    string? Decision,
    string? LeftIn,
    string? Overruled,
    string? IfLeft,
    IReadOnlyList<PictureView> Pictures,
    IReadOnlyList<PictureView> MorePictures,
    string? PicturesFold)
{
    /// <summary>Whether two pictures share a row where there is room.</summary>
    public bool IsPair => Pictures.Count + MorePictures.Count > 1;
}
