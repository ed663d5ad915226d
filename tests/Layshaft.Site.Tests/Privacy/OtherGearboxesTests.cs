using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>What a customer's page says of other customers' gearboxes: rates over several, so rounded that none shows.</summary>
public class OtherGearboxesTests
{
    private static readonly double[] Rates = [0.6, 0.75, 0.85, 0.95, 1.05, 1.1, 1.2, 1.35, 1.6];

    [Fact]
    public void A_part_measured_once_gets_its_rate_from_other_gearboxes_and_says_so()
    {
        var page = Assert.Single(
            SmallBook.Publish(Changes(Others(Rates))),
            f => f.Key.EndsWith("/index.html", StringComparison.Ordinal) && f.Value.Contains("OWN-1, service history", StringComparison.Ordinal)).Value.Replace('\u00A0', ' ');

        Assert.Contains("It was measured once, so the rate comes from 9 other gearboxes of this type in this shop, measured before 1 October 2025.", page, StringComparison.Ordinal);
        Assert.Contains("It wears 2.9 times as fast as the median of 9 other gearboxes of this type in this shop (", page, StringComparison.Ordinal);
        Assert.DoesNotContain("OTHER-", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5, 4, true)]
    [InlineData(4, 4, false)]
    [InlineData(5, 2, true)]
    [InlineData(9, 1, false)]
    public void Nothing_is_said_of_too_few_gearboxes_or_customers(int units, int customers, bool said) =>
        Assert.Equal(said, Pool(Others(Rates[..units], customers)).Length > 0);

    [Fact]
    public void A_gearbox_that_the_reader_sold_does_not_count_as_anothers()
    {
        var others = Others(Rates[..5]);
        others[0].Text = others[0].Text.Replace("owners:", "owners:\n  - { customer: own, from: 2022-01-01 }", StringComparison.Ordinal);

        Assert.Equal(string.Empty, Pool(others));
    }

    // The reader may know all gearboxes but one. What the page says with that one, with another reading of it, and without it is nearly the same.
    [Fact]
    public void No_gearbox_shows_in_the_figure_more_than_its_neighbours_in_the_row()
    {
        var usual = Ratio(Others(Rates));
        for (var target = 0; target < Rates.Length; target += 2)
        {
            double[] without = [.. Rates.Where((_, i) => i != target)];
            foreach (var rates in new[] { without, [.. without, 0.1], [.. without, 3] })
            {
                // The median of 1.05 moves to a neighbour at most; both are rounded to a step.
                Assert.InRange(Ratio(Others(rates)), usual * (0.95 / 1.05) * 0.9, usual * (1.1 / 0.95) * 1.1);
            }
        }
    }

    [Fact]
    public void How_far_out_a_gearbox_is_does_not_show_in_the_figure() =>
        Assert.Single(new[] { 1.6, 2.4, 3 }.Select(rate => Ratio(Others([.. Rates[..^1], rate]))).Distinct());

    [Fact]
    public void A_job_of_this_quarter_changes_no_other_customers_pages()
    {
        BookText Job(string received) => new("jobs/2025/2000/job.yaml", SmallBook.Job("o3", received, "55 h", "complaint: Stiff.\n" + SmallBook.Rings(1.15, 0.9, 0.9, 0.9)));
        var before = Pool(Others(Rates));

        Assert.Equal(before, Pool([.. Others(Rates), Job("2025-11-20")]));
        Assert.NotEqual(before, Pool([.. Others(Rates), Job("2025-08-20")]));
    }

    private static string Pool(IReadOnlyList<BookText> others) => Of(SmallBook.Assess(Changes(others))).Text;

    private static double Ratio(IReadOnlyList<BookText> others)
    {
        var assessment = SmallBook.Assess(Changes(others));
        var trends = UnitTrends.Of(assessment.Book.Units["own"], assessment.Lives, assessment.Jobs, Of(assessment));
        return Math.Round(trends.Single(t => t.Measure.Id == "radius-1").Relative!.Ratio, 1);
    }

    private static OtherUnits Of(BookAssessment assessment) =>
        new WearPool(WearTally.Of(assessment), BookDay.OfJobs(assessment.Book.Jobs)).For(["own"]);

    private static (string, string)[] Changes(IReadOnlyList<BookText> others) =>
    [
        ("gearboxes/five.yaml", SmallBook.Gearbox),
        ("customers/own.yaml", "name: Own Customer\n"),
        ("units/own.yaml", Unit("OWN-1", "own")),
        ("jobs/2025/1000/job.yaml", SmallBook.Job("own", "2025-10-10", "30 h", "complaint: Stiff.\nverdict: Fine.\nfinished: 2025-10-20\n" + SmallBook.Rings(1.10, 0.50, 0.50, 0.50))),
        .. others.Select(o => (o.Path, o.Text)),
    ];

    // Wear of 0.27 mm, three tenths of the allowance, in 30 h at a rate of 1.
    private static BookText[] Others(double[] rates, int customers = 4) =>
    [
        .. rates.Select((_, i) => new BookText($"units/o{i}.yaml", Unit($"OTHER-{i}", $"other{i % customers}"))),
        .. Enumerable.Range(0, customers).Select(i => new BookText($"customers/other{i}.yaml", $"name: OTHER-CUSTOMER-{i}\n")),
        .. rates.Select((rate, i) => new BookText($"jobs/2025/1{i:000}9/job.yaml", SmallBook.Job($"o{i}", "2025-05-10", "30 h", "complaint: Stiff.\n" + SmallBook.Rings(0.3 + 0.27 * rate, 0.5, 0.5, 0.5)))),
    ];

    private static string Unit(string serial, string customer) =>
        $"gearbox: five\nserial: {serial}\nratio_set: std\nowners:\n  - {{ customer: {customer}, from: 2023-01-01 }}\nin_service: 2023-01-10\nuse_at_start: 0 h\nfinal_drive: 34/9\n";

    private sealed class BookText(string path, string text)
    {
        public string Path { get; } = path;

        public string Text { get; set; } = text;
    }
}
