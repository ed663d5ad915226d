using Layshaft.Book.Records;
using Layshaft.Site.Look;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.LapSheets;

/// <summary>Composes the lap sheet of a job's next event: one sheet of paper for the driver and the workshop.</summary>
public static class LapSheetComposer
{
    /// <summary>The tables of every lap sheet, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["corners", "straights", "gears"];

    /// <summary>Whether a job has a lap sheet for an owner: finished for this owner, with an event that its gearing is worked out for.</summary>
    public static bool Exists(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        return job.Finished is not null && view.IsOwn(job) && composition.Assessment.Gearing.HasEvent(job);
    }

    /// <summary>Composes the sheet.</summary>
    public static SheetPage Compose(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        var page = composition.Addresses.LapSheet(view, job);
        var lap = composition.Assessment.Gearing.For(job) is { } gearing ? Lap.Of(gearing, composition) : null;
        TableView[] tables = [LapTables.Corners(lap, composition), LapTables.Straights(lap, composition), LapTables.Gears(lap, composition)];
        var where = job.NextEvent!.Name is { } name
            ? composition.Say("lap.event_at", ("event", name), ("venue", composition.Book.Venues[job.NextEvent.Venue].Name))
            : composition.Book.Venues[job.NextEvent.Venue].Name;
        SectionView?[] sections =
        [
            lap is null ? BlocksView.Section("lap", composition.Say("lap.lap"), Block.Say(composition.Say("lap.not_possible")))
                : BlocksView.Section("lap", composition.Say("lap.lap"), new Block { Chart = LapDrawing.Of(lap, composition), Lines = [] }, Block.Say(composition.Say("lap.chart_words"))),
            lap is null ? null : BlocksView.Section("corners", composition.Say("lap.corners"), new Block { Table = tables.Named("corners") }),
            lap is null ? null : BlocksView.Section("straights", composition.Say("lap.straights"), new Block { Table = tables.Named("straights") }, Block.Say(composition.Say("lap.straights_words"))),
            lap is null ? null : BlocksView.Section("gears", composition.Say("lap.gears"), new Block { Table = tables.Named("gears"), Lines = [Launch(lap, composition)] }),
            DataFiles.Section(page, tables, composition),
        ];
        return new SheetPage(
            PageFrame.Head(
                composition,
                page,
                composition.Say("lap.title", ("event", where), ("shop", composition.Shop.Name)),
                null,
                PageStyles.Lap,
                PrintSheet.Stylesheet(composition, view, job),
                new LinkView(Addresses.Link(page, composition.Addresses.Report(view, job)), composition.Say("lap.to_report"))),
            composition.Say("lap.heading", ("event", where)),
            lap is null ? null : BlockOf(lap, composition),
            composition.Say("reference.manual"),
            [.. sections.OfType<SectionView>()],
            tables,
            PageFrame.PlainFoot(composition));
    }

    private static TitleBlock BlockOf(Lap lap, Composition composition)
    {
        var (made, driven) = (lap.Gearing.Case, lap.Driven);
        var cells = new List<NamedValue>
        {
            new(composition.Say("lap.drop_pair"), GearingWords.Pair(driven.DropPair, composition)),
            new(composition.Say("lap.final_drive"), GearingWords.Final(driven.FinalDrive, composition)),
            new(composition.Say("lap.time"), composition.Figures.Seconds(driven.StraightsTime, 1).Text),
            new(composition.Say("gearing.assumed.wind"), Assumptions.Wind(made, composition)),
            new(composition.Say("gearing.assumed.corners"), Assumptions.Corners(made, composition)),
        };
        if (GearingWords.ChangedPairs(driven.Set, made, composition) is { } pairs)
        {
            cells.Insert(0, new(composition.Say("gearing.head.pairs"), pairs));
        }

        if (made.Plan?.On is { } day)
        {
            cells.Insert(0, new(composition.Say("lap.day"), composition.Figures.Date(day)));
        }

        return new TitleBlock(composition.Say("lap.car"), composition.Say("lap.car_value", ("car", made.Setup.Car.Name), ("serial", made.Unit.Serial)), cells);
    }

    private static string Launch(Lap lap, Composition composition) => composition.Say(
        "lap.launch",
        ("clutch", Assumptions.Launch(lap.Gearing.Case.Setup, composition)),
        ("speed", composition.Figures.Speed(lap.Speeds.SpeedAt(1, lap.Car.Engine.LaunchAt)).Both));
}
