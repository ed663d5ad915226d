using Layshaft.Book.Records;
using Layshaft.Engineering.Settings.Differentials;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using UnitsNet;

namespace Layshaft.Site.Pages.Report;

/// <summary>How the plate differential was found and built, and what that changes for the driver.</summary>
internal static class DifferentialSection
{
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var (composition, job) = (report.Composition, report.Job);
        if (report.Gearbox.Differential is not { } plates)
        {
            return null;
        }

        if (job.Differential is not { } recorded)
        {
            return report.Gearbox.Kind == UnitKind.Differential && job.Finished is not null
                ? BlocksView.Section("differential", composition.Say("differential.heading"), Block.Say(composition.Say("differential.not_recorded")))
                : null;
        }

        return BlocksView.Section(
            "differential",
            composition.Say("differential.heading"),
            new Block
            {
                Lines = [.. Changes(recorded, plates, composition), .. recorded.Why is { } why ? [why] : Array.Empty<string>()],
                Table = Table(report).Make(),
            },
            Block.Say([composition.Say("differential.words"), .. Locking(recorded, plates, composition)]));
    }

    /// <summary>The build as a table; empty without a record.</summary>
    public static TableDraft Table(ReportContext report)
    {
        var composition = report.Composition;
        return new TableDraft(
            "differential",
            composition.Say("differential.caption"),
            [composition.Say("differential.item"), composition.Say("settings.found"), composition.Say("settings.built")],
            report is { Job.Differential: { } recorded, Gearbox.Differential: { } plates } ? Rows(recorded, plates, composition) : []);
    }

    private static IEnumerable<IReadOnlyList<Cell>> Rows(JobDifferential recorded, PlateDifferential plates, Composition composition)
    {
        IReadOnlyList<Cell> Row(string key, Func<DifferentialBuild, Cell> cell) =>
            [Cell.Of(composition.Say(key)), recorded.Found is { } f ? cell(f) : Cell.Empty, recorded.Built is { } b ? cell(b) : Cell.Empty];

        yield return Row("differential.ramps", b => Cell.Of(b.Ramps.ToString()));
        yield return Row("differential.plates", b => Cell.Of(b.Plates.ToString()) with { Whole = true });
        yield return Row("differential.faces", b => Cell.Of(composition.Figures.Number(b.Plates.Faces).Text));
        if (plates.RampRadius is { } radius)
        {
            yield return Row("differential.power", b => Share(b, b.Ramps.Drive));
            yield return Row("differential.overrun", b => Share(b, b.Ramps.Coast));
            Cell Share(DifferentialBuild build, Angle ramp) => plates.PackOf(build.Plates)?.LockingRange(ramp, radius) switch
            {
                null => Cell.Empty,
                (_, 0) => Cell.Of(composition.Say("differential.none")),
                var (low, high) => Cell.Of(composition.Figures.Range(composition.Figures.Percent(low), composition.Figures.Percent(high))) with { Whole = true },
            };
        }
    }

    // The driver feels a change of the ramps and plates before anything else.
    private static IEnumerable<string> Changes(JobDifferential recorded, PlateDifferential plates, Composition composition)
    {
        if (recorded is not { Found: { } found, Built: { } built } || plates.PackOf(found.Plates) is not { } before || plates.PackOf(built.Plates) is not { } after)
        {
            yield break;
        }

        yield return composition.Say(Key("differential.power.", before.Compare(found.Ramps.Drive, after, built.Ramps.Drive)));
        yield return composition.Say(Key("differential.overrun.", before.Compare(found.Ramps.Coast, after, built.Ramps.Coast)));
    }

    private static string Key(string key, int change) => key + (change > 0 ? "more" : change < 0 ? "less" : "same");

    private static IEnumerable<string> Locking(JobDifferential recorded, PlateDifferential plates, Composition composition) =>
        plates is { RampRadius: not null, Friction: { } friction } && (recorded.Built ?? recorded.Found) is { } build && plates.PackOf(build.Plates) is not null
            ? [composition.Say(
                "differential.locking_words",
                ("friction", composition.Figures.Number(friction, 2).Text),
                ("range", composition.Figures.Percent(BreakawayShims.ChangeUncertainty).Text))]
            : [];
}
