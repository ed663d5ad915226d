namespace Layshaft.Site.Tests.Seasons;

/// <summary>No page holds what its reader may not know.</summary>
public sealed class RedactionTests
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Site = new(() => SmallBook.Publish());

    private static IEnumerable<KeyValuePair<string, string>> Under(string folder) => Site.Value.Where(f => f.Key.StartsWith(folder, StringComparison.Ordinal));

    [Theory]
    [InlineData("PLANTED-FIRST-NAME")]
    [InlineData("PLANTED-COMPLAINT")]
    [InlineData("PLANTED-AGAIN")]
    [InlineData("PLANTED-WORK")]
    [InlineData("PLANTED-EVENT")]
    [InlineData("PLANTED-VENUE")]
    [InlineData("4321.99")]
    public void An_earlier_owners_name_words_events_and_prices_reach_no_page_of_the_next(string planted)
    {
        Assert.NotEmpty(Under("customers/key-a-1/"));
        Assert.Contains(Under("customers/key-a-0/").Concat(Under("shop/")), f => f.Value.Contains(planted, StringComparison.Ordinal));
        Assert.All(Under("customers/key-a-1/").Concat(Under("customers/key-b-0/")), f => Assert.DoesNotContain(planted, f.Value, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("PLANTED-FIRST-PHONE")]
    [InlineData("PLANTED-UNIT-NOTE")]
    [InlineData("PLANTED-JOB-NOTE")]
    [InlineData("PLANTED-BENCH-NOTE")]
    [InlineData("PLANTED-CUSTOMER-NOTE")]
    [InlineData("PLANTED-ANSWER")]
    [InlineData("77.31")]
    public void Internal_notes_and_costs_reach_no_customers_page(string planted) =>
        Assert.All(Under("customers/").Concat(Under("reference/")), f => Assert.DoesNotContain(planted, f.Value, StringComparison.Ordinal));

    [Fact]
    public void The_shops_own_pages_show_costs_notes_and_customers()
    {
        Assert.Contains("PLANTED-BENCH-NOTE", Site.Value["shop/index.html"], StringComparison.Ordinal);
        Assert.Contains("77.31", Site.Value["shop/stores.html"], StringComparison.Ordinal);
        Assert.Contains("PLANTED-FIRST-NAME", Site.Value["shop/index.html"], StringComparison.Ordinal);
    }

    [Fact]
    public void An_earlier_owners_pages_end_with_his_time()
    {
        Assert.All(Under("customers/key-a-0/"), f =>
        {
            Assert.DoesNotContain("Second Owner", f.Value, StringComparison.Ordinal);
            Assert.DoesNotContain("60\u202Fh", f.Value, StringComparison.Ordinal);
            Assert.DoesNotContain("2025-11", f.Value, StringComparison.Ordinal);
            Assert.DoesNotContain("November 2025", f.Value, StringComparison.Ordinal);
        });
        Assert.Contains("40\u202Fh", Site.Value["customers/key-a-0/index.html"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_customers_page_names_no_other_unit() =>
        Assert.All(Under("customers/key-a-1/"), f => Assert.DoesNotContain("B-2", f.Value, StringComparison.Ordinal));
}
