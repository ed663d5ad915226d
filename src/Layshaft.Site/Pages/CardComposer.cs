using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Site.Cards;
using Layshaft.Site.Look;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages;

/// <summary>Says what preview pictures show: unit, verdict, grades; no owner, no price.</summary>
public static class CardComposer
{
    /// <summary>The picture of a job's page: its report once it is finished, else its estimate.</summary>
    public static CardView Of(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        var heading = job.Finished is null
            ? OfferWords.Say("estimate.heading", OfferWords.Waiting(job)[0], composition, ("number", job.Number))
            : composition.Say("report.heading", ("number", job.Number));
        return Card(composition, view.Unit, heading, Words(composition, job), Grades(composition, job));
    }

    /// <summary>The picture of a unit's history.</summary>
    public static CardView Of(Composition composition, OwnerView view)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        return Card(composition, view.Unit, composition.Say("history.heading"), Words(composition, view), []);
    }

    /// <summary>How a job's page names its picture; null where the shop names no address, for a relative one is of no use.</summary>
    public static PreviewView? Preview(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        return Preview(composition, composition.Addresses.Card(view, job), view.Unit, () => Words(composition, job));
    }

    /// <summary>How a history names its picture.</summary>
    public static PreviewView? Preview(Composition composition, OwnerView view)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        return Preview(composition, composition.Addresses.Card(view), view.Unit, () => Words(composition, view));
    }

    private static PreviewView? Preview(Composition composition, string path, Unit unit, Func<string> words) => composition.Shop.SiteAddress is { } site
        ? new PreviewView(site.Of(path), Text(CardPicture.Width), Text(CardPicture.Height), $"{Name(composition, unit)}. {words()}")
        : null;

    private static string Words(Composition composition, Job job) => job.Finished is null ? OfferWords.Say("estimate.question", OfferWords.Waiting(job)[0], composition.About(composition.Book.GearboxOf(composition.Book.Units[job.Unit]))) : job.Verdict ?? string.Empty;

    private static string Words(Composition composition, OwnerView view) => view.Jobs.Count == 0
        ? composition.Say("history.no_jobs")
        : composition.Say("history.line.description", ("count", view.Jobs.Count));

    private static string Name(Composition composition, Unit unit) =>
        composition.Say("block.unit_value", ("serial", unit.Serial), ("gearbox", composition.Book.GearboxOf(unit).Name));

    private static CardView Card(Composition composition, Unit unit, string heading, string words, IReadOnlyList<CardGrade> grades) => new(
        composition.Shop.Name,
        Rgb.Parse(composition.Shop.Colour ?? ShopColours.Usual),
        Name(composition, unit),
        heading,
        words,
        grades);

    private static IReadOnlyList<CardGrade> Grades(Composition composition, Job job) =>
    [
        .. composition.Assessment.Jobs[job.Number].Findings
            .GroupBy(f => f.Grade)
            .OrderBy(g => g.Key)
            .Select(g => new CardGrade(GradeViews.Mark(g.Key, composition), GradeViews.Mark(g.Key, composition).Name, composition.Say("report.tally", ("count", g.Count())))),
    ];

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
