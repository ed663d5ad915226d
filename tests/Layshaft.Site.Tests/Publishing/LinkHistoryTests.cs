using CsCheck;
using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The keys of customers' pages and what a site remembers of them, under whatever a book goes through.</summary>
public sealed class LinkHistoryTests
{
    private static readonly CustomerKeys Keys = new(ShopSecret.Open("nowhere", _ => "0123456789abcdefghijklmnopqrstuv").Secret!);

    [Fact]
    public void Whatever_is_edited_inserted_removed_sold_renamed_or_used_again_no_link_ever_meets_another_reader() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[0, 3]).Array[1, 40].Sample(edits =>
        {
            var (book, history, everSeen) = (Start(), LinkHistory.None, new Dictionary<string, int>(StringComparer.Ordinal));
            foreach (var (kind, one, other, value) in edits)
            {
                // Without the guard the person behind a link would change; a stopped publish leaves book and site as they were.
                var next = Edited(book, kind, one, other, value);
                var step = history.Next(Readers(next), _ => false);
                if (step.Clashes.Count > 0)
                {
                    Assert.NotEmpty(step.Problems());
                    continue;
                }

                (book, history) = (Published(next), step.History);
                foreach (var reader in Readers(book))
                {
                    var person = book.Customers[reader.Customer].Person;
                    Assert.Equal(everSeen.TryAdd(reader.Folder, person) ? person : everSeen[reader.Folder], person);
                }

                Assert.Equal(everSeen.Keys.Order(StringComparer.Ordinal), history.Links.Select(l => l.Folder).Order(StringComparer.Ordinal));
                Assert.Equal(Readers(book).Select(r => r.Folder).Order(StringComparer.Ordinal), history.Links.Where(l => l.IsOpen).Select(l => l.Folder).Order(StringComparer.Ordinal));
            }
        });

    [Theory]
    [InlineData("Marlow Vass", "marlow  VASS.", true)]
    [InlineData("Harrow Lane Racing", "Harrow-Lane Racing", true)]
    [InlineData("M\u00FCller", "Mu\u0308ller", true)]
    [InlineData("Müller", "Muller", false)]
    [InlineData("Marlow Vass", "Marla Vass", false)]
    [InlineData("Vass 1", "Vass 2", false)]
    [InlineData("कि", "कु", false)]
    [InlineData("***", "+++", false)]
    [InlineData("***", " *** ", true)]
    public void Only_case_spacing_and_punctuation_may_differ_in_one_readers_name(string one, string other, bool same) => Assert.Equal(same, ReaderName.AreSame(one, other));

    // A person is a number; the name of a customer's file says whose it is, and may be corrected.
    private sealed record Someone(int Person, string Name, string? Formerly);

    private sealed record Book(Dictionary<string, Someone> Customers, Dictionary<string, (string[] Owners, int Renewed)> Units);

    private static Book Start() => new(
        Enumerable.Range(0, 4).ToDictionary(i => $"c{i}", i => new Someone(i, $"Person {i}", null)),
        new Dictionary<string, (string[], int)> { ["u0"] = (["c0", "c1"], 0), ["u1"] = (["c2"], 0) });

    // A former name is taken out after the publish.
    private static Book Published(Book book) => book with { Customers = book.Customers.ToDictionary(c => c.Key, c => c.Value with { Formerly = null }) };

    private static Book Edited(Book book, int kind, int one, int other, int value)
    {
        var units = book.Units.ToDictionary(u => u.Key, u => u.Value);
        var customers = book.Customers.ToDictionary(c => c.Key, c => c.Value);
        var (unit, customer) = (units.Keys.Order(StringComparer.Ordinal).ElementAt(one % units.Count), customers.Keys.Order(StringComparer.Ordinal).ElementAt(other % customers.Count));
        var (owners, renewed) = units[unit];
        var place = value % owners.Length;
        switch (kind)
        {
            case 0: units[unit] = ([.. owners, customer], renewed); break;
            case 1: units[unit] = ([.. owners[..place], customer, .. owners[(place + 1)..]], renewed); break;
            case 2: units[unit] = ([.. owners[..place], customer, .. owners[place..]], renewed); break;
            case 3 when owners.Length > 1: units[unit] = ([.. owners[..place], .. owners[(place + 1)..]], renewed); break;
            case 4: units[unit] = ([customer], 0); break;
            case 5: units[unit] = (owners, value); break;
            case 6:
                units.Remove(unit);
                units[$"u{value}"] = (owners, renewed);
                break;

            // The file is used for somebody else; also the name of someone who was gone comes back.
            case 7: customers[customer] = new(value, $"Person {value}", null); break;
            case 8 when customers[customer] is var was: customers[customer] = was with { Name = $"Person {was.Person} the {value}", Formerly = was.Name }; break;
            case 9 when customers[customer] is var was: customers[customer] = was with { Name = was.Name.ToUpperInvariant() }; break;
        }

        return new(customers, units);
    }

    private static LinkReader[] Readers(Book book) =>
    [
        .. book.Units.SelectMany(u => Views(u.Key, u.Value.Owners, u.Value.Renewed).Select(view => new LinkReader(
            $"customers/{Keys.For(view.Unit.Id, view.Owner.Customer, view.Time, view.Unit.LinkRenewed)}",
            string.Empty,
            u.Key,
            view.Owner.Customer,
            book.Customers[view.Owner.Customer].Name,
            book.Customers[view.Owner.Customer].Formerly,
            Place.WholeFile($"customers/{view.Owner.Customer}.yaml")))),
    ];

    private static IEnumerable<OwnerView> Views(string id, string[] owners, int renewed)
    {
        var unit = new Unit(
            id, Origin.None, "four", "S", "std", [.. owners.Select((o, i) => new Ownership(Origin.None, o, new DateOnly(2020 + i, 1, 1)))], null, default, default, null, [], null, default, renewed, null);
        return owners.Select((_, i) => new OwnerView(unit, i, []));
    }
}
