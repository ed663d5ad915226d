using Layshaft.Book.Problems;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Publishing;

namespace Layshaft.Site.Tests.Building;

/// <summary>A link once sent opens for its reader or not at all, whatever is edited, inserted, removed or sold. Each publish of <see cref="SoldBook"/> holds that.</summary>
public sealed class LinkReaderTests : IDisposable
{
    private const string One = "READER-ONE";
    private const string Two = "READER-TWO";
    private const string Three = "READER-THREE";
    private const string Four = "READER-FOUR";

    private readonly SoldBook _book = new();

    public LinkReaderTests() => _book.PublishWell();

    public void Dispose() => _book.Dispose();

    [Fact]
    public void A_sale_leaves_the_links_of_earlier_owners_alone()
    {
        var (one, two) = (_book.KeyOf(One), _book.KeyOf(Two));
        _book.Owners("a", "first 2023-01-01", "second 2025-01-01", "third 2026-01-01");
        _book.PublishWell();
        Assert.Equal((one, two), (_book.KeyOf(One), _book.KeyOf(Two)));
        Assert.NotEmpty(_book.KeyOf(Three));
        Assert.Empty(_book.Last.Result!.Withdrawn);
    }

    [Fact]
    public void An_owner_edited_in_place_loses_the_link_and_the_other_gets_one_of_their_own()
    {
        var (one, two) = (_book.KeyOf(One), _book.KeyOf(Two));
        _book.Owners("a", "first 2023-01-01", "third 2025-01-01");
        _book.PublishWell();
        Assert.Equal(one, _book.KeyOf(One));
        Assert.NotEqual(two, _book.KeyOf(Three));
        Assert.DoesNotContain(two, _book.Readers.Keys);
        Assert.Equal(($"customers/{two}", "Reader-Two"), Assert.Single(_book.Last.Result!.Withdrawn) is var link ? (link.Folder, link.Name) : default);
    }

    [Fact]
    public void A_forgotten_earlier_owner_leaves_the_links_of_later_ones_alone()
    {
        var (one, two) = (_book.KeyOf(One), _book.KeyOf(Two));
        _book.Owners("a", "third 2022-06-01", "first 2023-01-01", "second 2025-01-01");
        _book.PublishWell();
        Assert.Equal((one, two), (_book.KeyOf(One), _book.KeyOf(Two)));
    }

    [Fact]
    public void Without_the_first_owner_the_others_keep_their_links()
    {
        var (one, two) = (_book.KeyOf(One), _book.KeyOf(Two));
        _book.Owners("a", "second 2025-01-01");
        _book.PublishWell();
        Assert.Equal(two, _book.KeyOf(Two));
        Assert.DoesNotContain(one, _book.Readers.Keys);
    }

    [Fact]
    public void A_corrected_date_keeps_the_link()
    {
        var before = _book.Readers;
        _book.Owners("a", "first 2023-01-02", "second 2025-02-03");
        Assert.Equal(before, _book.PublishWell().Readers);
    }

    [Fact]
    public void Two_owners_in_the_wrong_order_put_right_keep_their_links()
    {
        var before = _book.Readers;
        _book.Owners("a", "second 2023-01-01", "first 2025-01-01");
        Assert.Equal(before, _book.PublishWell().Readers);
    }

    [Fact]
    public void A_units_number_used_again_for_another_customers_unit_has_another_key()
    {
        var before = _book.Readers.Keys;
        _book.Replace("units/a.yaml", "serial: A-1", "serial: Z-9");
        _book.Owners("a", "third 2023-01-01");
        _book.PublishWell();
        Assert.DoesNotContain(_book.KeyOf(Three), before);
    }

    [Fact]
    public void A_unit_bought_back_has_one_link_for_each_time_and_both_open_for_the_same_customer()
    {
        var one = _book.KeyOf(One);
        _book.Owners("a", "first 2023-01-01", "second 2025-01-01", "first 2026-01-01");
        _book.PublishWell();
        Assert.Equal(2, _book.Readers.Values.Count(r => r == One));
        Assert.Equal(One, _book.Readers[one]);
        _book.Owners("a", "second 2025-01-01", "first 2026-01-01");
        _book.PublishWell();
        Assert.Equal(one, _book.KeyOf(One));
    }

    [Fact]
    public void A_raised_link_renewed_withdraws_the_links_of_all_owners_of_the_unit()
    {
        var before = _book.Readers;
        _book.Write("units/a.yaml", _book.Text("units/a.yaml").TrimEnd() + "\nlink_renewed: 1\n");
        _book.PublishWell();
        Assert.Equal(2, _book.Last.Result!.Withdrawn.Count);
        Assert.Equal(_book.KeyOf(Four), before.Single(r => r.Value == Four).Key);
        Assert.Equal([Four], before.Where(r => _book.Readers.ContainsKey(r.Key)).Select(r => r.Value));
        Assert.Contains($"/{_book.Last.Result.Withdrawn[0].Folder}/index.html  a  first  Reader-One  now customers/{_book.KeyOf(One)}/index.html\n", $"/{File.ReadAllText(_book.Beside("links.txt"))}".Replace("withdrawn  ", "/", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_customers_file_used_again_for_somebody_else_stops_the_publish()
    {
        var (before, old) = (Sites.Show(_book.Site, withManifest: true), _book.KeyOf(Two));
        _book.Write("customers/second.yaml", "email: five@example.com\nname: Reader-Five\n");
        _book.Publish();
        Assert.Equal(PublishOutcome.Refused, _book.Last.Result!.Outcome);
        Assert.Equal(before, Sites.Show(_book.Site, withManifest: true));
        var problem = Assert.Single(_book.Last.Problems, p => p.Code == "link-reader");
        Assert.Equal(("customers/second.yaml", 2, 7, Severity.Stops), (problem.Place.File, problem.Place.Line, problem.Place.Column, problem.Severity));
        Assert.Contains($"customers/{old}/ (unit a)", problem.Message, StringComparison.Ordinal);
        Assert.Contains("'Reader-Two'", problem.Message, StringComparison.Ordinal);
        Assert.Contains("'Reader-Five'", problem.Message, StringComparison.Ordinal);
        Assert.Contains("formerly: Reader-Two", problem.Remedy, StringComparison.Ordinal);
    }

    // Withdrawn links are known for good, through publishes of every kind.
    [Fact]
    public void A_customers_file_used_again_long_after_the_link_was_withdrawn_stops_the_publish_too()
    {
        _book.Owners("a", "first 2023-01-01");
        _book.PublishWell();
        _book.Replace("jobs/2025/0004/job.yaml", "Looks worn.", "Looks very worn.");
        _book.PublishWell().PublishWell();
        _book.Write("customers/second.yaml", "name: Reader-Five\n");
        _book.PublishWell();
        _book.Owners("a", "first 2023-01-01", "second 2025-01-01");
        Assert.Equal(PublishOutcome.Refused, _book.Publish().Last.Result!.Outcome);
        _book.Write("customers/fifth.yaml", "name: Reader-Five\n");
        _book.Owners("a", "first 2023-01-01", "fifth 2025-01-01");
        _book.PublishWell();
        Assert.NotEmpty(_book.KeyOf("READER-FIVE"));
    }

    [Fact]
    public void A_publish_that_has_lost_what_it_knew_of_the_book_still_knows_the_readers()
    {
        Directory.Delete(_book.Beside(string.Empty), recursive: true);
        _book.Write("customers/second.yaml", "name: Reader-Five\n");
        Assert.Equal(PublishOutcome.Refused, _book.Publish().Last.Result!.Outcome);
    }

    [Theory]
    [InlineData("reader two")]
    [InlineData("READER-Two.")]
    public void Case_spacing_and_punctuation_make_no_other_name(string name)
    {
        var before = _book.Readers;
        _book.Write("customers/second.yaml", $"name: \"{name}\"\n");
        _book.Publish();
        Assert.Equal(PublishOutcome.Published, _book.Last.Result!.Outcome);
        Assert.Equal(before.Keys, _book.Readers.Keys);
    }

    [Fact]
    public void A_corrected_name_keeps_its_links_and_its_former_name_need_not_stay_in_the_book()
    {
        var key = _book.KeyOf(Two);
        _book.Correct(Two, "READER-TWAIN");
        _book.Write("customers/second.yaml", "name: Reader-Twain\nformerly: reader two\n");
        Assert.Equal("READER-TWAIN", _book.PublishWell().Readers[key]);
        _book.Write("customers/second.yaml", "name: Reader-Twain\n");
        Assert.Equal("READER-TWAIN", _book.PublishWell().Readers[key]);
        _book.Write("customers/second.yaml", "name: Reader-Two\n");
        Assert.Equal(PublishOutcome.Refused, _book.Publish().Last.Result!.Outcome);
    }

    [Fact]
    public void A_former_name_that_was_left_in_a_file_does_not_open_the_link_for_somebody_else()
    {
        _book.Correct(Two, "READER-TWAIN");
        _book.Write("customers/second.yaml", "name: Reader-Twain\nformerly: Reader-Two\n");
        _book.PublishWell();
        _book.Write("customers/second.yaml", "name: Reader-Five\nformerly: Reader-Two\n");
        Assert.Equal(PublishOutcome.Refused, _book.Publish().Last.Result!.Outcome);
    }

    [Fact]
    public void A_customers_renamed_file_withdraws_the_link_and_the_list_says_what_to_send()
    {
        var old = _book.KeyOf(Two);
        _book.Delete("customers/second.yaml");
        _book.Write("customers/two.yaml", "name: Reader-Two\n");
        _book.Owners("a", "first 2023-01-01", "two 2025-01-01");
        _book.PublishWell();
        Assert.NotEqual(old, _book.KeyOf(Two));
        Assert.Contains($"withdrawn  customers/{old}/index.html  a  second  Reader-Two  now customers/{_book.KeyOf(Two)}/index.html\n", File.ReadAllText(_book.Beside("links.txt")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_taken_into_another_ones_file_opens_nobodys_link_for_somebody_else()
    {
        _book.Owners("b", "first 2023-01-01", "second 2024-01-01", "fourth 2025-01-01");
        foreach (var job in new[] { "2023/0001", "2024/0002", "2025/0003" })
        {
            _book.Replace($"jobs/{job}/job.yaml", "unit: a", "unit: b");
        }

        _book.Replace("units/b.yaml", "in_service: 2023-03-01", "in_service: 2023-01-10");
        _book.Replace("jobs/2025/0004/job.yaml", "30 h", "80 h");
        _book.Delete("units/a.yaml");
        _book.PublishWell();
        Assert.Equal(2, _book.Last.Result!.Withdrawn.Count);
    }

    // What the site of a program before had: no links in its list, pages under keys of places.
    [Fact]
    public void Links_of_a_place_in_the_list_of_owners_are_withdrawn_and_listed_with_their_readers()
    {
        using var book = new SoldBook();
        var keys = new CustomerKeys(ShopSecret.Open(book.Path, _ => null).Secret!);
        string[] old = [keys.OfPlace("a", 0, 0), keys.OfPlace("a", 1, 0), keys.OfPlace("b", 0, 0)];
        new Publisher().Publish(Sites.Plan([.. old.Select(k => ($"customers/{k}/index.html", "old"))]), book.Site);
        book.PublishWell();
        Assert.True(book.Last.Result!.MovesLinks);
        Assert.Equal(old.Select(k => $"customers/{k}").Order(), book.Last.Result.Withdrawn.Select(l => l.Folder).Order());
        Assert.All(old, k => Assert.Contains($"customers/{k}/index.html", book.Last.Result.Removed));
        var list = File.ReadAllText(book.Beside("links.txt"));
        Assert.Contains($"withdrawn  customers/{old[1]}/index.html  a  second  Reader-Two  now customers/{book.KeyOf(Two)}/index.html\n", list, StringComparison.Ordinal);
        Assert.Contains($"open       customers/{book.KeyOf(Two)}/index.html  a  second  Reader-Two\n", list, StringComparison.Ordinal);
        book.Replace("jobs/2025/0004/job.yaml", "Looks worn.", "Looks very worn.");
        Assert.Empty(book.PublishWell().Last.Result!.Withdrawn);
        Assert.Equal(list, File.ReadAllText(book.Beside("links.txt")));
    }
}
