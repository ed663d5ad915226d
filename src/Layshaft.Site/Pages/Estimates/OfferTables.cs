using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>The offers of a job beside one another: what was offered, approved and declined.</summary>
internal static class OfferTables
{
    /// <summary>Subtotals of each offer, and of all together.</summary>
    public static TableDraft Subtotals(string id, JobMoney money, Composition composition)
    {
        IReadOnlyList<Cell> Row(string name, decimal offered, decimal? approved, decimal? declined, bool strong = false) =>
        [
            Cell.Of(name) with { Strong = strong }, Bare(offered, composition), Bare(approved, composition), Bare(declined, composition),
        ];
        return new TableDraft(
            id,
            composition.Say("offer.subtotals", ("currency", FigureWriter.Currency(composition.Shop.Currency))),
            [composition.Say("offer.what"), composition.Say("offer.offered"), composition.Say("offer.approved"), composition.Say("offer.declined")],
            money.Offers.Select(o => Row(OfferWords.Name(o.Offer, composition), o.Offered.Net, o.Offer.Waits ? null : o.Approved.Net, o.Offer.Waits ? null : o.Declined.Net))
                .Concat(money.Offers.Count > 1
                    ? [Row(composition.Say("estimate.sum"), money.Offers.Sum(o => o.Offered.Net), money.Offers.Sum(o => o.Approved.Net), money.Offers.Sum(o => o.Declined.Net), strong: true)]
                    : Array.Empty<IReadOnlyList<Cell>>()));
    }

    /// <summary>Totals with their tax: each offer, everything approved, what is invoiced.</summary>
    public static TableDraft Totals(Job job, JobMoney? money, Composition composition)
    {
        IReadOnlyList<Cell> Row(string name, Account account) =>
            [Cell.Of(name), Cell.Money(account.Net, composition), Cell.Money(account.Tax, composition), Cell.Money(account.Gross, composition)];
        IEnumerable<IReadOnlyList<Cell>> rows = money is null
            ? []
            :
            [
                .. money.Offers.Select(o => Row(OfferWords.Name(o.Offer, composition), o.Offered)),
                .. money.Offers.Any(o => !o.Offer.Waits) ? [Row(composition.Say("offer.approved"), money.Approved)] : Array.Empty<IReadOnlyList<Cell>>(),
                .. job.Finished is not null && money.Invoiced.Lines.Count > 0 ? [Row(composition.Say("offer.invoiced"), money.Invoiced)] : Array.Empty<IReadOnlyList<Cell>>(),
            ];
        return new TableDraft(
            "totals",
            composition.Say("offer.totals"),
            [composition.Say("offer.what"), composition.Say("money.net"), composition.Say("offer.tax"), composition.Say("money.gross")],
            rows);
    }

    private static Cell Bare(decimal? amount, Composition composition) =>
        Cell.Money(amount, composition) is var cell && amount is { } a ? cell with { Text = MoneyTable.Bare(a, composition) } : cell;
}
