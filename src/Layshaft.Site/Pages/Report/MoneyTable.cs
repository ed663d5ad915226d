using Layshaft.Book.Records;
using Layshaft.Site.Assessment;

namespace Layshaft.Site.Pages.Report;

/// <summary>A group of priced lines.</summary>
/// <param name="Name">Its name; null when there is one group only.</param>
/// <param name="Rows">Its lines.</param>
/// <param name="SumName">The word for its sum; null for no sum.</param>
/// <param name="Sum">Its sum; null for no sum.</param>
public sealed record MoneyGroup(string? Name, IReadOnlyList<MoneyRow> Rows, string? SumName, string? Sum);

/// <summary>A priced line.</summary>
/// <param name="What">Part or work.</param>
/// <param name="Quantity">Pieces or hours.</param>
/// <param name="Price">Of one.</param>
/// <param name="Amount">Of all.</param>
/// <param name="More">A sentence below it, such as what happens if it is left; null for none.</param>
public sealed record MoneyRow(string What, string Quantity, string Price, string Amount, string? More);

/// <summary>A sum.</summary>
/// <param name="What">What it is.</param>
/// <param name="Amount">How much.</param>
/// <param name="Strong">Whether it is the last sum.</param>
public sealed record MoneyTotal(string What, string Amount, bool Strong);

/// <summary>Writes accounts as tables.</summary>
internal static class MoneyTable
{
    public static string Amount(decimal amount, Composition composition) => composition.Figures.Money(amount, composition.Shop.Currency);

    /// <summary>An amount without its currency, for a table whose caption names it.</summary>
    public static string Bare(decimal amount, Composition composition) => composition.Figures.Amount(amount, composition.Shop.Currency);

    /// <summary>Name of a line as the customer reads it.</summary>
    public static string Name(EstimateLine line, Gearbox gearbox) => line.Part is { } part ? gearbox.PartOf(part)!.Name : line.Work!;

    public static MoneyRow Row(PricedLine line, Gearbox gearbox, Composition composition, string? more) => new(
        Name(line.Line, gearbox),
        line.IsHours ? composition.Say("money.hours", ("hours", composition.Figures.Exact(line.Quantity).Text)) : composition.Figures.Exact(line.Quantity).Text,
        Bare(line.Price, composition),
        Bare(line.Amount, composition),
        more);

    public static IReadOnlyList<MoneyTotal> Totals(Account account, Composition composition) => composition.Shop.Tax is { } tax
        ?
        [
            new(composition.Say("money.net"), Bare(account.Net, composition), false),
            new(composition.Say("money.tax", ("name", tax.Name), ("rate", composition.Figures.Exact(tax.Rate * 100, "%").Text)), Bare(account.Tax, composition), false),
            new(composition.Say("money.gross"), Amount(account.Gross, composition), true),
        ]
        : [new(composition.Say("money.sum"), Amount(account.Gross, composition), true)];
}
