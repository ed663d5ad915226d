using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.History;

/// <summary>What served where, and how long. Another unit is never named, nor a day that only its job tells: it may be another customer's.</summary>
internal static class LivesSection
{
    public static SectionView? Compose(HistoryContext history, TableView table)
    {
        var composition = history.Composition;
        Part[] told = [.. Told(history)];
        var untold = history.Gearbox.Parts.Count - told.Length;
        var rest = Block.Say(composition.Say("history.parts.rest", ("count", untold)));
        return BlocksView.Section(
            "parts",
            composition.Say("history.parts"),
            told.Length == 0
                ? [rest]
                : [new Block { Chart = Bars(history, told) }, .. untold > 0 ? [rest] : Array.Empty<Block>(), new Block { Table = table, Fold = composition.Say("history.parts.fold") }]);
    }

    public static TableView Table(HistoryContext history)
    {
        var composition = history.Composition;
        return TableView.Of(
            "parts",
            composition.Say("history.parts.caption"),
            [
                composition.Say("history.part"), composition.Say("history.serial"), composition.Say("history.fitted"), composition.Say("history.until"),
                composition.Say("history.here"), composition.Say("history.total"), composition.Say("history.service_life"), composition.Say("history.ended"),
            ],
            history.Gearbox.Parts.SelectMany(p => history.Lives.StaysIn(history.Unit, p.Id).Select(s => (IReadOnlyList<Cell>)
            [
                Cell.Of(p.Name),
                Cell.Of(s.Life.Part.Serial),
                Cell.Day(s.Span.From, composition),
                Cell.Day(Ended(s.Life, s.Span) ? history.Known(s.Span.To) : history.LastKnown(s.Span.To), composition),
                Cell.Use(s.Span.Ran, composition),
                Total(s.Life, s.Span) is { } total ? Cell.Use(total, composition) : Cell.Of(composition.Say("history.total.unknown")),
                Cell.Use(p.ServiceLife?.Counted(), composition),
                Cell.Of(composition.Say(EndKey(s.Life, s.Span))),
            ])));
    }

    // Parts with something to tell: looked at, renewed, moved, or with a serial of their own. Seals would fill the chart.
    private static IEnumerable<Part> Told(HistoryContext history) => history.Gearbox.Parts.Where(p =>
        p.Kind != PartKind.Seal
        && history.Lives.StaysIn(history.Unit, p.Id).ToArray() is { Length: > 0 } stays
        && (stays.Length > 1 || stays[0].Life.Part.Serial is not null || Ended(stays[0].Life, stays[0].Span)
            || history.Jobs.Any(j => j.Findings.Any(f => f.Part.Id == p.Id))));

    private static Html.RawHtml Bars(HistoryContext history, Part[] parts)
    {
        var composition = history.Composition;
        var known = history.Lives.LastUse(history.Unit);
        var (from, to) = (history.Unit.InService, known.Date > history.Unit.InService ? known.Date : history.Unit.InService.AddDays(1));
        var frame = new ChartFrame("part-lives", composition.Say("history.parts"), composition.Say("history.parts.description", ("count", parts.Length)));
        var input = new LifeBarsInput(
            frame,
            [.. parts.Select(p => new LifeBar(p.Name, [.. history.Lives.StaysIn(history.Unit, p.Id).Select(s => Span(s.Life, s.Span, history.LastKnown(s.Span.To), composition))]))],
            from.DayNumber,
            to.DayNumber,
            [.. Enumerable.Range(from.Year + 1, to.Year - from.Year).Select(y => new AxisTick(new DateOnly(y, 1, 1).DayNumber, y.ToString(CultureInfo.InvariantCulture)))],
            composition.Say("history.parts.axis"),
            new LifeWords(composition.Say("life.fitted"), composition.Say("life.moved_in"), composition.Say("life.running"), composition.Say("life.renewed"), composition.Say("life.moved_out")));
        return ChartPair.Of(input, (i, size) => LifeBars.Draw(i with { Frame = frame with { IdPrefix = $"part-lives-{size.ToString().ToLowerInvariant()}" } }, size));
    }

    private static BarSpan Span(PartLife life, LifeSpan span, DateOnly to, Composition composition)
    {
        var brought = Before(life, span);
        var label = brought is { Amount: > 0 } b
            ? composition.Say("history.bar.brought", ("before", UseWords.Of(b, composition)), ("here", UseWords.Of(span.Ran, composition)))
            : UseWords.Of(span.Ran, composition);
        return new BarSpan(
            span.From.DayNumber,
            to.DayNumber,
            brought is { Amount: > 0 } || life.Start != LifeStart.New || !ReferenceEquals(life.Spans[0], span) ? BarStart.MovedIn : BarStart.Fitted,
            !Ended(life, span) ? BarEnd.Running : ReferenceEquals(life.Spans[^1], span) && life.End == LifeEnd.Renewed ? BarEnd.Renewed : BarEnd.MovedOut,
            label);
    }

    private static bool Ended(PartLife life, LifeSpan span) => !ReferenceEquals(life.Spans[^1], span) || life.End != LifeEnd.Running;

    private static string EndKey(PartLife life, LifeSpan span) => !Ended(life, span) ? "history.ended.running"
        : !ReferenceEquals(life.Spans[^1], span) || life.End == LifeEnd.OnTheShelf ? "history.ended.out"
        : life.Reason switch
        {
            RenewalReason.Condition => "history.ended.condition",
            RenewalReason.Precaution => "history.ended.precaution",
            RenewalReason.NotRecorded => "history.ended.renewed",
        };

    /// <summary>What the part had run before this stay, in the measure of the stay; null when that is not known.</summary>
    private static Use? Before(PartLife life, LifeSpan span)
    {
        var measure = span.Ran.Measure;
        var tally = life.UseBefore(span);
        return !life.TotalIsWhole || tally.Measures.Any(m => m != measure) ? null : new Use(tally.In(measure) ?? 0, measure);
    }

    private static Use? Total(PartLife life, LifeSpan span) => Before(life, span) is { } before ? span.Ran with { Amount = before.Amount + span.Ran.Amount } : null;
}
