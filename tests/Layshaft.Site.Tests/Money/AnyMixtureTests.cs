using System.Globalization;
using System.Text;
using CsCheck;
using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Sending;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Money;

/// <summary>Totals add up for any mixture of offers, answers, prices, hours and tax rates, and are the same wherever they are shown.</summary>
public sealed class AnyMixtureTests
{
    private static readonly ShopBook s_book = SmallBook.Review().Assessment!.Book;

    private static readonly Gen<decimal> s_cents = Gen.Int[0, 500_000].Select(c => c / 100m);

    private static readonly Gen<Need> s_need = Gen.Int[0, 2].Select(i => (Need)i);

    // Each line has a name of its own, as an answer by line asks for.
    private static readonly Gen<EstimateLine[]> s_lines =
        Gen.Select(Gen.Int[0, 2], Gen.Int[1, 9], s_cents, Gen.Int[1, 4000].Select(h => h / 100m), s_need).Array[1, 6].Select(all => all.Select((l, i) => l.Item1 switch
        {
            0 when i == 0 => Line("ring-12", null, l.Item2, null, null, l.Item5), // the gearbox's price
            1 => Line(null, Name(i), 1, null, l.Item4, l.Item5), // the shop's labour rate
            _ => Line(null, Name(i), l.Item2, l.Item3, null, l.Item5),
        }).ToArray());

    private static readonly Gen<Offer> s_answered = Gen.Select(s_lines, Gen.Int[0, 4].Select(i => (Answer)i), Gen.Int[0, 63]).Select((lines, answer, chosen) =>
        new Offer(Origin.None, 0, new DateOnly(2026, 2, 2), null, lines, "More.", null, null, Answered(answer, lines, chosen)));

    private static readonly Gen<decimal?> s_tax = Gen.OneOf(Gen.Const((decimal?)null), Gen.Int[0, 100_000].Select(r => (decimal?)(r / 100_000m)));

    [Fact]
    public void Approved_and_declined_make_up_what_was_offered_and_tax_is_rounded_once() =>
        Gen.Select(s_answered.Array[1, 4], s_tax, s_cents).Sample((offers, rate, labour) =>
        {
            var shop = s_book.Shop with { Tax = rate is { } r ? new Tax(Origin.None, "VAT", r) : null, LabourRate = labour };
            var gearbox = s_book.Gearboxes["four"];
            var money = JobMoney.Of(s_book.Jobs[0] with { Offers = Offer.Series(offers[0], offers[0].GoAhead, offers[1..]), Final = [] }, gearbox, shop);
            foreach (var offer in money.Offers)
            {
                Assert.Equal(offer.Offered.Net, offer.Approved.Net + offer.Declined.Net);
                Assert.Equal(offer.Offered.Lines.Count, offer.Approved.Lines.Count + offer.Declined.Lines.Count);
            }

            var net = money.Offers.SelectMany(o => o.Approved.Lines).Sum(l => Cents((l.Line.Hours ?? l.Line.Quantity) * (l.Line.Price ?? (l.Line.Part is null ? labour : 100m))));
            var tax = Cents(net * (rate ?? 0m));
            Assert.Equal((net, tax, net + tax), (money.Approved.Net, money.Approved.Tax, money.Approved.Gross));
            Assert.Equal((net, tax, net + tax), (money.Invoiced.Net, money.Invoiced.Tax, money.Invoiced.Gross));
        });

    [Fact]
    public void Totals_are_the_same_decimals_on_the_page_in_the_mail_and_in_the_data()
    {
        var compared = 0;
        Gen.Select(s_answered.Array[1, 3], s_lines, s_tax, Gen.Bool).Sample(
            (offers, waiting, rate, finished) =>
            {
                var job = (finished ? "verdict: Sound.\nfinished: 2026-03-01\n" : string.Empty) + Yaml(offers, finished ? null : waiting);
                var review = SmallBook.Review(
                    ("shop.yaml", SmallBook.Shop + (rate is { } r ? $"\ntax: {{ name: VAT, rate: {Text(r * 100)} % }}\n" : "\n")),
                    ("jobs/2026/0010/job.yaml", SmallBook.Job("b", "2026-02-01", "35 h", "complaint: x\n" + job)));
                if (review.Assessment is not { } assessment || !assessment.Jobs.TryGetValue("0010", out var assessed) || (finished && assessed.Job.Charged.Count == 0))
                {
                    return; // an answer that approves nothing of its offer
                }

                Interlocked.Increment(ref compared);
                var composition = SmallBook.Compose(review);
                var view = OwnerView.Of(assessment.Book, assessed.Unit)[^1];
                var money = JobMoney.Of(assessed.Job, assessed.Gearbox, assessment.Book.Shop);
                var data = ReportTables.Of(composition, view, assessed.Job).Single(t => t.Id == "totals").Rows.Select(row => row.Cells.Skip(1).Select(c => c.Number!.Value).ToArray()).ToArray();
                if (finished)
                {
                    var page = (MoneySection)ReportComposer.Compose(composition, view, assessed.Job).Sections.Single(s => s.Id == "cost").Model;
                    Assert.Equal([money.Invoiced.Net, money.Invoiced.Tax, money.Invoiced.Gross], data[^1]);
                    Assert.Equal(money.Invoiced.Gross, Shown(page.Totals[^1].Amount));
                    return;
                }

                var shown = EstimateComposer.Compose(composition, view, assessed.Job).Offers.Single();
                var letter = HandoverComposer.Compose(composition, view, assessed.Job, null, "cid:x");
                Assert.Equal(money.Offers[^1].Offered.Gross, data[money.Offers.Count - 1][2]);
                Assert.Equal(money.Offers[^1].Offered.Gross, Shown(shown.Money.Totals[^1].Amount));
                Assert.Equal(money.Offers[^1].Offered.Gross, Shown(letter.Lines[^2]));
                Assert.Equal(money.Offers[^1].Offered.Gross, Shown(shown.Answers[0].Amount!));
                Assert.Equal(money.Approved.Gross, data[money.Offers.Count][2]);
            },
            iter: 60);
        Assert.True(compared > 10, $"{compared} jobs were compared");
    }

    private static GoAhead Answered(Answer answer, EstimateLine[] lines, int chosen) => new(
        Origin.None, answer, new DateOnly(2026, 2, 3), null, answer == Answer.ByLine ? [.. lines.Where((_, i) => (chosen >> i) % 2 == 1).Select(l => l.Name)] : [], null);

    private static EstimateLine Line(string? part, string? work, int quantity, decimal? price, decimal? hours, Need need) =>
        new(Origin.None, null, part, work, quantity, price, hours, need, "It wears on.", null);

    private static string Yaml(Offer[] offers, EstimateLine[]? waiting)
    {
        var text = new StringBuilder();
        for (var i = 0; i < offers.Length; i++)
        {
            var (answer, indent) = (offers[i].GoAhead!, i == 0 ? string.Empty : "    ");
            text.Append(i == 0 ? "estimate:\n  sent: 2026-02-02\n" : i == 1 ? "supplements:\n  - sent: 2026-02-02\n    reason: More.\n" : "  - sent: 2026-02-02\n    reason: More.\n");
            Lines(text, offers[i].Lines, indent);
            var word = answer.Answer switch { Answer.Yes => "yes", Answer.MustOnly => "must only", Answer.MustAndShould => "must and should", Answer.ByLine => "by line", _ => "no" };
            text.Append(CultureInfo.InvariantCulture, $"{indent}go_ahead: {{ answer: {word}, on: 2026-02-03{(answer.Approved.Count > 0 ? $", approved: [{string.Join(", ", answer.Approved)}]" : "")} }}\n");
        }

        if (waiting is not null)
        {
            text.Append(offers.Length == 1 ? "supplements:\n" : string.Empty).Append("  - sent: 2026-02-04\n    reason: More.\n");
            Lines(text, waiting, "    ");
        }

        // Fitted as often as charged, so that nothing but money is left to question.
        return text.Append("renewed: [").AppendJoin(", ", offers.SelectMany(o => o.Approved).Where(l => l.Part is not null).Select(l => $"{{ part: {l.Part} }}")).Append("]\n").ToString();
    }

    private static void Lines(StringBuilder text, IEnumerable<EstimateLine> lines, string indent)
    {
        text.Append(CultureInfo.InvariantCulture, $"{(indent.Length == 0 ? "  " : indent)}lines:\n");
        foreach (var line in lines)
        {
            var need = line.Need switch { Need.Must => "must", Need.Should => "should", _ => "can wait" };
            text.Append(CultureInfo.InvariantCulture, $"{indent}    - {{ {(line.Part is null ? "work" : "part")}: {line.Name}, quantity: {line.Quantity}, need: {need}, if_left: It wears on.");
            text.Append(line.Price is { } price ? $", price: {Text(price)}" : string.Empty).Append(line.Hours is { } hours ? $", hours: {Text(hours)}" : string.Empty).Append(" }\n");
        }
    }

    private static string Name(int i) => string.Create(CultureInfo.InvariantCulture, $"Work {(char)('a' + i)}");

    private static string Text(decimal number) => number.ToString("0.#####", CultureInfo.InvariantCulture);

    private static decimal Cents(decimal amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);

    // The last number of a text, whatever marks its thousands.
    private static decimal Shown(string text) => decimal.Parse(
        new string([.. text[(text.LastIndexOf('\u00A0') + 1)..].Where(c => char.IsAsciiDigit(c) || c == '.')]), CultureInfo.InvariantCulture);
}
