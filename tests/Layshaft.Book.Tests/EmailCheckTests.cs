using Layshaft.Book.Problems;

namespace Layshaft.Book.Tests;

/// <summary>Addresses that no mail can go to are told when the book is checked.</summary>
public class EmailCheckTests
{
    private const string Customer = "customers/first-customer.yaml";

    [Theory]
    [InlineData("bench")]
    [InlineData("bench@fell")]
    [InlineData("bench@fell.")]
    [InlineData("bench@fell..example")]
    [InlineData("bench@fell example.org")]
    [InlineData("Bench <bench@fell.example>")]
    [InlineData("bench@fell.example, office@fell.example")]
    [InlineData("bench@fell.example?subject=x")]
    public void A_shop_without_a_usable_address_is_stopped(string email)
    {
        var problem = Assert.Single(Books.SmallWith("shop.yaml", text => text.Replace("email: bench@example.com", $"email: \"{email}\"", StringComparison.Ordinal)).Problems);

        Assert.Equal(("bad-email", Severity.Stops, 2, 8), (problem.Code, problem.Severity, problem.Place.Line, problem.Place.Column));
    }

    [Theory]
    [InlineData("o'neil+gearbox@fell-bench.example")]
    [InlineData("jörg@werkstätte.example")]
    [InlineData("a.b_c@1.example")]
    public void Unusual_addresses_are_fine(string email) =>
        Assert.Empty(Books.SmallWith("shop.yaml", text => text.Replace("email: bench@example.com", $"email: {email}", StringComparison.Ordinal)).Problems);

    [Theory]
    [InlineData("email: jo@example.com", 0)]
    [InlineData("email: [jo@example.com, office@example.com]", 0)]
    [InlineData("email: ask at the gate", 1)]
    [InlineData("email: [jo@example.com, ask at the gate]", 1)]
    public void A_customer_has_one_address_or_several_and_each_is_checked(string line, int notes)
    {
        var read = Books.SmallWith(Customer, _ => $"name: First Customer\n{line}\n");

        Assert.Equal(notes, read.Problems.Count);
        Assert.All(read.Problems, p => Assert.Equal(("bad-email", Severity.Notice), (p.Code, p.Severity)));
        Assert.Equal(line.Contains('[', StringComparison.Ordinal) ? 2 : 1, read.Book!.Customers["first-customer"].Emails.Count);
    }
}
