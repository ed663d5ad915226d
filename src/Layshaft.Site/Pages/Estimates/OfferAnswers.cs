using System.Text;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>The ways to answer an offer: links that open a mail, and the telephone.</summary>
internal static class OfferAnswers
{
    // Mail programs cut a longer address off; from here on the answer by line is given on paper or by telephone.
    private const int LongestAddress = 2000;

    /// <summary>Whether there is a choice between its lines.</summary>
    public static bool ByLine(Offer offer) => offer.Lines.Count > 1;

    /// <summary>The ways to answer an offer.</summary>
    public static IEnumerable<AnswerView> Of(ReportContext report, OfferMoney money)
    {
        var (composition, shop, offer) = (report.Composition, report.Composition.Shop, money.Offer);
        var needs = offer.Lines.Select(l => l.Need).ToHashSet();
        (string Key, Func<Need, bool> Covers, bool Offered)[] answers =
        [
            ("estimate.answer.yes", _ => true, true),
            ("estimate.answer.must_and_should", n => n != Need.CanWait, needs.Contains(Need.CanWait) && needs.Contains(Need.Should)),
            ("estimate.answer.must_only", n => n == Need.Must, needs.Contains(Need.Must) && needs.Count > 1),
        ];
        foreach (var (key, covers, _) in answers.Where(o => o.Offered))
        {
            var gross = Account.Of(offer.Lines.Where(l => covers(l.Need)), report.Gearbox, shop).Gross;
            yield return Mail(report, offer, composition.Say(key), MoneyTable.Amount(gross, composition));
        }

        if (ByLine(offer) && Mail(report, offer, composition.Say("estimate.answer.by_line"), null, Body(report, money)) is { Address.Length: <= LongestAddress } byLine)
        {
            yield return byLine;
        }

        yield return Mail(report, offer, OfferWords.Say("estimate.answer.no", offer, composition), Refused(offer, composition)) with { Caution = DeclinedLines.Caution(offer.Lines, composition) };
        yield return new AnswerView($"tel:{PageFrame.TelephoneLink(shop)}", composition.Say("estimate.answer.call", ("telephone", shop.Telephone)), null);
    }

    /// <summary>What refusing an offer costs; null for a supplement, whose refusal costs nothing more.</summary>
    public static string? Refused(Offer offer, Composition composition) => offer switch
    {
        { Number: > 0 } => null,
        { IfRefused: > 0 and { } net } => MoneyTable.Amount(Account.OfAmount(net, composition.Shop).Gross, composition),
        { IfRefused: { } } => composition.Say("estimate.refused.free"),
        _ => composition.Say("estimate.refused.ask"),
    };

    private static AnswerView Mail(ReportContext report, Offer offer, string answer, string? amount, string? body = null)
    {
        var subject = OfferWords.Say("estimate.mail_subject", offer, report.Composition, ("number", report.Job.Number), ("unit", report.Unit.Serial), ("answer", answer));
        var more = body is null ? string.Empty : $"&body={Uri.EscapeDataString(body)}";
        return new AnswerView($"mailto:{report.Composition.Shop.Email}?subject={Uri.EscapeDataString(subject)}{more}", answer, amount);
    }

    // Line ends of a mail's body in a link are CR LF (RFC 6068, section 5).
    private static string Body(ReportContext report, OfferMoney money)
    {
        var composition = report.Composition;
        var body = new StringBuilder(composition.Say("estimate.by_line.how")).Append("\r\n");
        foreach (var line in money.Offered.Lines)
        {
            body.Append("\r\n").Append(composition.Say(
                "estimate.by_line.line", ("what", MoneyTable.Name(line.Line, report.Gearbox)), ("amount", MoneyTable.Amount(line.Amount, composition))));
        }

        return body.Append("\r\n").ToString();
    }
}
