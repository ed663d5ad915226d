using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Look;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>Says what an estimate says: what was found, what it costs by how pressing it is, how to answer.</summary>
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

    /// <summary>Composes the estimate of an open job for the owner of its unit.</summary>
    public static EstimatePage Compose(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        var report = new ReportContext(composition, view, composition.Assessment.Jobs[job.Number]);
        var estimate = job.Estimate!;
        var until = composition.Figures.Date(ValidUntil(estimate, composition.Shop));
        var title = composition.Say("estimate.title", ("number", job.Number), ("unit", report.Unit.Serial), ("shop", composition.Shop.Name));
        return new EstimatePage(
            PageFrame.Head(
                composition,
                report.Page,
                title,
                composition.Say("estimate.question"),
                rules: PrintSheet.Stylesheet(composition, view, job),
                links: new LinkView(Addresses.Link(report.Page, composition.Addresses.History(view)), composition.Say("report.to_history"))) with
            { Preview = CardComposer.Preview(composition, view, job) },
            composition.Say("estimate.heading", ("number", job.Number)),
            ReportComposer.TitleBlockOf(report),
            composition.Say("estimate.question"),
            composition.Say("estimate.valid_until", ("date", until)),
            estimate.Note,
            Money(report, estimate),
            [.. Answers(report, estimate)],
            composition.Say(
                "estimate.on_paper", ("email", composition.Shop.Email), ("telephone", composition.Shop.Telephone), ("number", job.Number), ("unit", report.Unit.Serial)),
            composition.Say("estimate.answer"),
            [.. new[] { FindingsSection.Compose(report), ComplaintSection.Compose(report), CautionSection.Compose(report), ReportTables.Section(report) }.OfType<SectionView>()],
            PageFrame.Foot(composition));
    }

    /// <summary>The last day on which an estimate holds.</summary>
    public static DateOnly ValidUntil(Estimate estimate, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(shop);
        return estimate.ValidUntil ?? shop.EstimateValidFor.After(estimate.Sent);
    }

    private static MoneySection Money(ReportContext report, Estimate estimate)
    {
        var composition = report.Composition;
        var groups = ByUrgency
            .Select(need => (Need: need, Account: Account.Of(estimate.Lines.Where(l => l.Need == need), report.Gearbox, composition.Shop)))
            .Where(g => g.Account.Lines.Count > 0)
            .Select(g => new MoneyGroup(
                composition.Say(NeedKey(g.Need)),
                [.. g.Account.Lines.Select(l => MoneyTable.Row(l, report.Gearbox, composition, withIfLeft: true))],
                composition.Say("estimate.sum"),
                MoneyTable.Bare(g.Account.Net, composition)));
        return new MoneySection(
            composition.Say("money.caption", ("currency", composition.Shop.Currency)),
            [.. groups],
            MoneyTable.Totals(Account.Of(estimate.Lines, report.Gearbox, composition.Shop), composition),
            []);
    }

    private static IEnumerable<AnswerView> Answers(ReportContext report, Estimate estimate)
    {
        var (composition, shop) = (report.Composition, report.Composition.Shop);
        var needs = estimate.Lines.Select(l => l.Need).ToHashSet();
        (string Key, Func<Need, bool> Covers, bool Offered)[] offers =
        [
            ("estimate.answer.yes", _ => true, true),
            ("estimate.answer.must_and_should", n => n != Need.CanWait, needs.Contains(Need.CanWait) && needs.Contains(Need.Should)),
            ("estimate.answer.must_only", n => n == Need.Must, needs.Contains(Need.Must) && needs.Count > 1),
        ];
        foreach (var (key, covers, _) in offers.Where(o => o.Offered))
        {
            var gross = Account.Of(estimate.Lines.Where(l => covers(l.Need)), report.Gearbox, shop).Gross;
            yield return new AnswerView(Mail(report, composition.Say(key)), composition.Say(key), MoneyTable.Amount(gross, composition));
        }

        yield return new AnswerView(Mail(report, composition.Say("estimate.answer.no")), composition.Say("estimate.answer.no"), null, Declined(report.Job, composition));
        yield return new AnswerView($"tel:{PageFrame.TelephoneLink(shop)}", composition.Say("estimate.answer.call", ("telephone", shop.Telephone)), null);
    }

    /// <summary>The caution for a gearbox that goes back without its essential work; null if the estimate has no such work.</summary>
    internal static string? Declined(Job job, Composition composition) =>
        job.Estimate is { } estimate && estimate.Lines.Any(l => l.Need == Need.Must) ? composition.Say("estimate.declined") : null;

    private static string Mail(ReportContext report, string answer)
    {
        var subject = report.Composition.Say("estimate.mail_subject", ("number", report.Job.Number), ("unit", report.Unit.Serial), ("answer", answer));
        return $"mailto:{report.Composition.Shop.Email}?subject={Uri.EscapeDataString(subject)}";
    }

    internal static string NeedKey(Need need) => need switch
    {
        Need.Must => "estimate.must",
        Need.Should => "estimate.should",
        _ => "estimate.can_wait",
    };
}
