using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What it costs.</summary>
/// <param name="Caption">Caption of the table.</param>
/// <param name="Groups">The lines, in groups.</param>
/// <param name="Totals">The sums.</param>
/// <param name="Lines">Further sentences.</param>
public sealed record MoneySection(string Caption, IReadOnlyList<MoneyGroup> Groups, IReadOnlyList<MoneyTotal> Totals, IReadOnlyList<string> Lines)
{
    /// <summary>Composes the section; null when the shop does not show prices, or they are an earlier owner's.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var (composition, job) = (report.Composition, report.Job);
        var charged = Account.Charged(job);
        if (!composition.Shop.ShowPrices || !report.IsOwn || charged.Count == 0)
        {
            return null;
        }

        var account = Account.Of(charged, report.Gearbox, composition.Shop);
        var lines = new List<string>();
        if (job.Estimate is { } estimate && job.Final.Count > 0)
        {
            var estimated = Account.Of(estimate.Lines, report.Gearbox, composition.Shop);
            lines.Add(composition.Say("money.estimated", ("amount", MoneyTable.Amount(estimated.Gross, composition)), ("date", composition.Figures.Date(estimate.Sent))));
        }

        return new SectionView(
            "cost",
            composition.Say("report.money"),
            "sections/money.html",
            new MoneySection(
                composition.Say("money.caption", ("currency", composition.Shop.Currency)),
                [new MoneyGroup(null, [.. account.Lines.Select(l => MoneyTable.Row(l, report.Gearbox, composition, withIfLeft: false))], null, null)],
                MoneyTable.Totals(account, composition),
                lines));
    }
}
