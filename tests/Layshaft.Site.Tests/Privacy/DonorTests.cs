using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>A part that went from one customer's unit into another's: neither learns when, in which job or for whom it happened.</summary>
public sealed class DonorTests
{
    private const string Donor = "customers/key-c-0/";
    private const string First = "customers/key-a-0/";
    private const string Second = "customers/key-a-1/";

    [Fact]
    public void A_donors_pages_are_the_same_whenever_and_under_whatever_number_another_customers_job_took_the_part()
    {
        var one = Site("2024-09-01", "0500", "2024-06-01", "0009");
        var other = Site("2024-09-23", "0772", "2024-06-01", "0009");
        Assert.NotEqual(Pages(one, First), Pages(other, First));
        Assert.Equal(Pages(one, Donor), Pages(other, Donor));
        Assert.DoesNotContain(Pages(one, Donor), f => f.Value.Contains("2024-09-01", StringComparison.Ordinal) || f.Value.Contains("1 September 2024", StringComparison.Ordinal));
        Assert.Contains("1 June 2024", one[$"{Donor}index.html"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_receivers_pages_say_how_much_the_part_had_run_and_are_the_same_whatever_the_donors_jobs_were()
    {
        var one = Site("2024-09-01", "0500", "2024-06-01", "0009");
        var other = Site("2024-09-01", "0500", "2024-07-12", "0779");
        Assert.NotEqual(Pages(one, Donor), Pages(other, Donor));
        foreach (var reader in new[] { First, Second })
        {
            Assert.Equal(Pages(one, reader), Pages(other, reader));
            Assert.Matches("(?m)^Front bearing,.*,2024-09-01,.*,(22|42),h,", one[$"{reader}index-parts.csv"]);
        }
    }

    [Fact]
    public void A_customer_who_owns_both_units_sees_the_day()
    {
        var site = Site("2024-09-01", "0500", "2024-06-01", "0009", donor: "first");
        Assert.Contains("1 September 2024", site[$"{Donor}index.html"], StringComparison.Ordinal);
    }

    // The next owner of the donor is not the customer whose job took the part.
    [Fact]
    public void The_next_owner_of_the_donor_does_not_see_the_day()
    {
        var site = Site("2024-09-01", "0500", "2024-06-01", "0009", donor: "first, from: 2023-01-01 }\n  - { customer: third");
        Assert.Contains("1 September 2024", site[$"{Donor}index.html"], StringComparison.Ordinal);
        Assert.DoesNotContain(Pages(site, "customers/key-c-1/"), f => f.Value.Contains("2024-09-01", StringComparison.Ordinal) || f.Value.Contains("1 September 2024", StringComparison.Ordinal));
    }

    // The job of unit a takes its front bearing from unit c, which ran 17 h and had one job of its own.
    private static IReadOnlyDictionary<string, string> Site(string taken, string takenBy, string seen, string seenBy, string donor = "third") => SmallBook.Publish(
        ("customers/third.yaml", "name: Third Owner\n"),
        ("units/c.yaml", SmallBook.UnitB.Replace("B-2", "C-3", StringComparison.Ordinal).Replace("use_at_start: 10 h", "use_at_start: 0 h", StringComparison.Ordinal)
            .Replace("{ customer: second, from: 2023-01-01 }", $"{{ customer: {donor}, from: {(donor.Contains('\n', StringComparison.Ordinal) ? "2025-03-01" : "2023-01-01")} }}", StringComparison.Ordinal)),
        ($"jobs/2024/{takenBy}/job.yaml", SmallBook.Job("a", taken, "35 h", "complaint: Noise.\nverdict: Quiet again.\nfinished: 2024-09-28\nrenewed:\n  - { part: front, from: c }\n")),
        ($"jobs/2024/{seenBy}/job.yaml", SmallBook.Job("c", seen, "17 h", "complaint: None.\nverdict: Fine.\nfinished: 2024-07-20\n" + SmallBook.Rings(0.50, 0.55, 0.42, 0.40))));

    private static SortedDictionary<string, string> Pages(IReadOnlyDictionary<string, string> site, string folder) =>
        new(site.Where(f => f.Key.StartsWith(folder, StringComparison.Ordinal)).ToDictionary(f => f.Key, f => f.Value), StringComparer.Ordinal);
}
