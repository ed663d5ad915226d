using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Look;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Sending;

/// <summary>Says what the letter to a customer says.</summary>
public static class HandoverComposer
{
    private static readonly Rgb White = Rgb.Parse("#ffffff");
    private static readonly Rgb Black = Rgb.Parse("#000000");

    /// <summary>Composes the letter about a job that is finished or waits for its go-ahead.</summary>
    /// <param name="composition">What pages are composed from.</param>
    /// <param name="view">Whose job it is.</param>
    /// <param name="job">The job.</param>
    /// <param name="enclosed">The name of the enclosed report; null for none.</param>
    /// <param name="picture">Address of the preview picture within the mail.</param>
    public static HandoverLetter Compose(Composition composition, OwnerView view, Job job, string? enclosed, string picture)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        composition = composition.About(composition.Book.GearboxOf(view.Unit));
        var kind = job.Finished is null ? "estimate" : "report";
        var waiting = job.Finished is null ? OfferWords.Waiting(job) : [];
        var (shop, customer) = (composition.Shop, composition.Book.Customers[view.Owner.Customer]);
        var unit = composition.Say("block.unit_value", ("serial", view.Unit.Serial), ("gearbox", composition.Book.GearboxOf(view.Unit).Name));
        var card = CardComposer.Of(composition, view, job);
        return new HandoverLetter(
            composition.Texts.Language,
            Contrast.Readable(Rgb.Parse(shop.Colour ?? ShopColours.Usual), White, Black).ToString(),
            waiting is [var first, ..]
                ? OfferWords.Say("mail.subject.estimate", first, composition, ("number", job.Number), ("unit", view.Unit.Serial))
                : composition.Say("mail.subject.report", ("number", job.Number), ("unit", view.Unit.Serial)),
            composition.Say("mail.greeting", ("name", customer.Greeting ?? customer.Name)),
            composition.Say($"mail.lead.{kind}", ("unit", unit)),
            card.Words,
            [.. waiting.Count > 0 ? waiting.SelectMany(o => AboutOffer(composition, job, o, waiting.Count > 1)) : AboutReport(composition, job)],
            shop.SiteAddress is { } site ? new LinkView(site.Of(composition.Addresses.Report(view, job)), composition.Say($"mail.link.{kind}")) : null,
            shop.SiteAddress is null ? null : composition.Say("mail.link.private"),
            enclosed is null ? null : composition.Say("mail.enclosed", ("file", enclosed)),
            [composition.Say("mail.closing"), shop.Name, .. shop.Address, composition.Say("mail.telephone", ("telephone", shop.Telephone))],
            picture,
            $"{card.Unit}. {card.Words}");
    }

    private static IEnumerable<string> AboutReport(Composition composition, Job job)
    {
        var gearbox = composition.Assessment.Jobs[job.Number].Gearbox;
        string[] parts = [.. job.Renewed.Select(r => gearbox.PartOf(r.Part)!.Name).Distinct()];
        yield return parts.Length > 0
            ? composition.Say("mail.renewed", ("parts", string.Join("; ", parts)))
            : composition.Say("work.nothing_renewed");
        foreach (var line in new[] { ReturnWords.Sentence(job, composition), job.ComeBack?.Reason }.OfType<string>())
        {
            yield return line;
        }
    }

    // With several offers at once each line names its own.
    private static IEnumerable<string> AboutOffer(Composition composition, Job job, Offer offer, bool named)
    {
        var gearbox = composition.Assessment.Jobs[job.Number].Gearbox;
        if (named)
        {
            yield return OfferWords.Name(offer, composition);
        }

        if (offer.Number > 0)
        {
            yield return offer.Note!;
        }

        var accounts = new[] { Need.Must, Need.Should, Need.CanWait }
            .Select(n => (Need: n, Account: Account.Of(offer.Lines.Where(l => l.Need == n), gearbox, composition.Shop)))
            .Where(a => a.Account.Lines.Count > 0)
            .ToArray();
        foreach (var (need, account) in accounts)
        {
            yield return composition.Say("mail.amount", ("what", composition.Say(EstimateComposer.NeedKey(need))), ("amount", MoneyTable.Amount(account.Gross, composition)));
        }

        if (accounts.Length > 1)
        {
            var all = Account.Of(offer.Lines, gearbox, composition.Shop);
            yield return composition.Say("mail.amount", ("what", composition.Say("money.gross")), ("amount", MoneyTable.Amount(all.Gross, composition)));
        }

        if (OfferAnswers.Refused(offer, composition) is { } refused)
        {
            yield return composition.Say("mail.amount", ("what", OfferWords.Say("estimate.answer.no", offer, composition)), ("amount", refused));
        }

        yield return composition.Say("estimate.valid_until", ("date", composition.Figures.Date(EstimateComposer.ValidUntil(offer, composition.Shop))));
    }
}
