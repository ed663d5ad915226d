using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>Says what an estimate or supplement says: what it costs by urgency, how to answer, what was found.</summary>
public static class EstimateComposer
{
    /// <summary>The template of an estimate.</summary>
    public const string Template = "estimate.html";

    private static readonly Need[] ByUrgency = [Need.Must, Need.Should, Need.CanWait];

    /// <summary>Whether a job waits for an answer to an estimate.</summary>
    public static bool IsOpen(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return job.Stage == JobStage.AwaitingGoAhead;
    }

    /// <summary>Composes the page of an open job for the owner of its unit: each offer that waits for an answer, then the earlier ones.</summary>
    public static EstimatePage Compose(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        composition = composition.About(composition.Book.GearboxOf(view.Unit));
        var report = new ReportContext(composition, view, composition.Assessment.Jobs[job.Number]);
        var money = JobMoney.Of(job, report.Gearbox, composition.Shop);
        var waiting = money.Offers.Where(o => o.Offer.Waits).ToArray();
        var first = waiting[0].Offer;
        var question = OfferWords.Say("estimate.question", first, composition);
        return new EstimatePage(
            PageFrame.Head(
                composition,
                report.Page,
                OfferWords.Say("estimate.title", first, composition, ("number", job.Number), ("unit", report.Unit.Serial), ("shop", composition.Shop.Name)),
                question,
                rules: PrintSheet.Stylesheet(composition, view, job),
                links: new LinkView(Addresses.Link(report.Page, composition.Addresses.History(view)), composition.Say("report.to_history"))) with
            { Preview = CardComposer.Preview(composition, view, job) },
            OfferWords.Say("estimate.heading", first, composition, ("number", job.Number)),
            ReportComposer.TitleBlockOf(report),
            question,
            [.. waiting.Select(o => View(report, o))],
            composition.Say(
                "estimate.on_paper", ("email", composition.Shop.Email), ("telephone", composition.Shop.Telephone), ("number", job.Number), ("unit", report.Unit.Serial)),
            [
                .. new[]
                {
                    Before(report, money, waiting), FindingsSection.Compose(report), ServiceLife(report), ComplaintSection.Compose(report), CautionSection.Compose(report), ReportTables.Section(report),
                }.OfType<SectionView>(),
            ],
            PageFrame.Foot(composition));
    }

    /// <summary>The last day on which an offer is valid.</summary>
    public static DateOnly ValidUntil(Offer offer, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(offer);
        ArgumentNullException.ThrowIfNull(shop);
        return offer.ValidUntil ?? shop.EstimateValidFor.After(offer.Sent);
    }

    private static OfferView View(ReportContext report, OfferMoney money)
    {
        var (composition, offer) = (report.Composition, money.Offer);
        return new OfferView(
            offer.Number == 0 ? "cost" : FormattableString.Invariant($"cost-{offer.Number}"),
            OfferWords.Name(offer, composition),
            composition.Say("estimate.total", ("amount", MoneyTable.Amount(money.Offered.Gross, composition)), ("date", composition.Figures.Date(ValidUntil(offer, composition.Shop)))),
            offer.Note,
            Table(report, money),
            composition.Say("estimate.answer"),
            [.. OfferAnswers.Of(report, money)],
            OfferAnswers.ByLine(offer) ? composition.Say("estimate.on_paper.by_line") : null);
    }

    private static MoneySection Table(ReportContext report, OfferMoney money)
    {
        var composition = report.Composition;
        var groups = ByUrgency
            .Select(need => (Need: need, Account: Account.Of(money.Offer.Lines.Where(l => l.Need == need), report.Gearbox, composition.Shop)))
            .Where(g => g.Account.Lines.Count > 0)
            .Select(g => new MoneyGroup(
                composition.Say(NeedKey(g.Need)),
                [.. g.Account.Lines.Select(l => MoneyTable.Row(l, report.Gearbox, composition, IfLeftWords.Say(l.Line.IfLeft, composition)))],
                composition.Say("estimate.sum"),
                MoneyTable.Bare(g.Account.Net, composition)));
        return new MoneySection(
            composition.Say("money.caption", ("currency", FigureWriter.Currency(composition.Shop.Currency))),
            [.. groups],
            MoneyTable.Totals(money.Offered, composition),
            [],
            null,
            OfferAnswers.ByLine(money.Offer),
            null);
    }

    // What was offered before with its answers, and what it comes to with the offers that wait.
    private static SectionView? Before(ReportContext report, JobMoney money, OfferMoney[] waiting)
    {
        var composition = report.Composition;
        if (money.Offers.Count == waiting.Length)
        {
            return null;
        }

        var together = Account.Of(report.Job.Approved.Concat(waiting.SelectMany(o => o.Offer.Lines)), report.Gearbox, composition.Shop);
        return BlocksView.Section(
            "before",
            composition.Say("offer.before"),
            new Block
            {
                Table = OfferTables.Subtotals("offers", money, composition).Make(),
            },
            Block.Say(composition.Say("offer.running", ("approved", MoneyTable.Amount(money.Approved.Gross, composition)), ("together", MoneyTable.Amount(together.Gross, composition)))),
            new Block { Items = [.. DeclinedLines.Of(report.Job, report.Gearbox, composition)] });
    }

    private static SectionView? ServiceLife(ReportContext report) => ServiceLifeWords.AsFound(report.Job, report.Composition) is { } words
        ? BlocksView.Section("service-life", report.Composition.Say("history.service_life"), Block.Say(words))
        : null;

    internal static string NeedKey(Need need) => need switch
    {
        Need.Must => "estimate.must",
        Need.Should => "estimate.should",
        Need.CanWait => "estimate.can_wait",
    };
}
