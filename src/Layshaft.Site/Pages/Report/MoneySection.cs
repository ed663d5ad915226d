using Layshaft.Site.Assessment;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.Report;

/// <summary>What it costs.</summary>
/// <param name="Caption">Caption of the table.</param>
/// <param name="Groups">The lines, in groups.</param>
/// <param name="Totals">The sums.</param>
/// <param name="Lines">Further sentences.</param>
/// <param name="Offers">What was offered, approved and declined; null where the lines say it all.</param>
/// <param name="Ticks">Whether each line has boxes to tick on paper.</param>
/// <param name="Fold">What is folded away on a screen: the lines; null to show them.</param>
public sealed record MoneySection(
    string Caption, IReadOnlyList<MoneyGroup> Groups, IReadOnlyList<MoneyTotal> Totals, IReadOnlyList<string> Lines, TableView? Offers, bool Ticks, string? Fold)
{
    /// <summary>Composes the section; null when the shop does not show prices, or they are an earlier owner's.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var (composition, job) = (report.Composition, report.Job);
        if (!composition.Shop.ShowPrices || !report.IsOwn || job.Charged.Count == 0)
        {
            return null;
        }

        var money = JobMoney.Of(job, report.Gearbox, composition.Shop);
        var differs = job.Final.Count > 0 || job.Offers.Count > 1 || job.Offers.Any(o => o.Declined.Any());
        return new SectionView(
            "cost",
            composition.Say("report.money"),
            "sections/money.html",
            new MoneySection(
                composition.Say("money.caption", ("currency", FigureWriter.Currency(composition.Shop.Currency))),
                [.. GroupsOf(report, money)],
                MoneyTable.Totals(money.Invoiced, composition),
                job.Final.Count > 0 && job.Offers.Count > 0
                    ? [composition.Say("offer.approved_invoiced", ("approved", MoneyTable.Amount(money.Approved.Gross, composition)), ("invoiced", MoneyTable.Amount(money.Invoiced.Gross, composition)))]
                    : [],
                job.Offers.Count > 0 && differs ? OfferTables.Subtotals("offers", money, composition).Make() : null,
                false,
                composition.Say("money.fold", ("count", job.Charged.Count))));
    }

    // Without a final account the approved lines are charged, and each is in the group of its offer.
    private static IEnumerable<MoneyGroup> GroupsOf(ReportContext report, JobMoney money)
    {
        var composition = report.Composition;
        MoneyRow Row(PricedLine line) => MoneyTable.Row(line, report.Gearbox, composition, line.Line.Reason);
        return report.Job.Final.Count > 0 || money.Offers.Count == 1
            ? [new MoneyGroup(null, [.. money.Invoiced.Lines.Select(Row)], null, null)]
            : money.Offers.Where(o => o.Approved.Lines.Count > 0).Select(o => new MoneyGroup(
                OfferWords.Name(o.Offer, composition), [.. o.Approved.Lines.Select(Row)], composition.Say("estimate.sum"), MoneyTable.Bare(o.Approved.Net, composition)));
    }
}
