using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment;

/// <summary>A priced line of an estimate or of the final account.</summary>
/// <param name="Line">The line.</param>
/// <param name="Quantity">Pieces, or hours of work.</param>
/// <param name="IsHours">Whether the quantity is hours.</param>
/// <param name="Price">Of one piece or hour, without tax.</param>
/// <param name="Amount">Quantity times price, rounded to the cent.</param>
public sealed record PricedLine(EstimateLine Line, decimal Quantity, bool IsHours, decimal Price, decimal Amount);

/// <summary>Sums of priced lines.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Net">Sum without tax.</param>
/// <param name="Tax">The tax on it, rounded once on the sum.</param>
/// <param name="Gross">What is paid.</param>
public sealed record Account(IReadOnlyList<PricedLine> Lines, decimal Net, decimal Tax, decimal Gross)
{
    /// <summary>Prices lines and adds them up. Halves of a cent go away from zero.</summary>
    public static Account Of(IEnumerable<EstimateLine> lines, Gearbox gearbox, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        PricedLine[] priced = [.. lines.Select(l => Price(l, gearbox, shop))];
        return Of(priced, priced.Sum(l => l.Amount), shop);
    }

    /// <summary>An amount without lines, such as what a refusal costs.</summary>
    public static Account OfAmount(decimal net, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return Of([], net, shop);
    }

    private static Account Of(IReadOnlyList<PricedLine> lines, decimal net, Shop shop)
    {
        var tax = shop.Tax is { } t ? Cents(net * t.Rate) : 0m;
        return new Account(lines, net, tax, net + tax);
    }

    private static PricedLine Price(EstimateLine line, Gearbox gearbox, Shop shop)
    {
        var isHours = line.Part is null && line.Hours is not null;
        var quantity = isHours ? line.Hours!.Value : line.Quantity;
        var price = line.Price ?? (isHours ? shop.LabourRate : line.Part is { } part ? gearbox.PartOf(part)?.Price ?? 0m : 0m);
        return new PricedLine(line, quantity, isHours, price, Cents(quantity * price));
    }

    private static decimal Cents(decimal amount) => decimal.Round(amount, 2, MidpointRounding.AwayFromZero);
}
