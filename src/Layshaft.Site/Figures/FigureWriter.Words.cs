using System.Globalization;

namespace Layshaft.Site.Figures;

/// <content>Figures that need words: teeth, dates, money, ranges.</content>
public sealed partial class FigureWriter
{
    /// <summary>A count of teeth: <c>35 teeth</c>.</summary>
    /// <param name="teeth">The count.</param>
    public string Teeth(int teeth) => _texts.Say("figures.teeth", ("count", teeth));

    /// <summary>A value with its uncertainty or tolerance in the same unit: <c>12.34 ± 0.02 mm</c>.</summary>
    /// <param name="value">The value.</param>
    /// <param name="around">How far it may be off, written with the same unit.</param>
    /// <exception cref="ArgumentException">The units differ.</exception>
    public static string PlusMinus(Figure value, Figure around)
    {
        ArgumentNullException.ThrowIfNull(value);
        SameUnit(value, around);
        return Figure.Join($"{value.Number}\u00A0±\u00A0{around.Number}", value.Unit);
    }

    /// <summary>A band from low to high in one unit: <c>0.10 to 0.15 mm</c>.</summary>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The upper end, written with the same unit.</param>
    /// <exception cref="ArgumentException">The units differ.</exception>
    public string Range(Figure low, Figure high)
    {
        ArgumentNullException.ThrowIfNull(low);
        SameUnit(low, high);
        return _texts.Say("figures.range", ("low", low.Number), ("high", high.Text));
    }

    /// <summary>A date as the shop writes it: <c>14 March 2026</c> or <c>2026-03-14</c>.</summary>
    /// <param name="date">The date.</param>
    public string Date(DateOnly date) => _choice.IsoDates
        ? IsoDate(date)
        : _texts.Say(
            "figures.date",
            ("day", date.Day),
            ("month", _texts.Say(string.Create(CultureInfo.InvariantCulture, $"figures.month.{date.Month}"))),
            ("year", date.Year));

    /// <summary>A date by ISO 8601, for attributes and data: <c>2026-03-14</c>.</summary>
    /// <param name="date">The date.</param>
    public static string IsoDate(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>An amount of money with its currency's sign, or its code where it has none of its own, and decimals: <c>€1234.50</c>, <c>CHF 1234.50</c>.</summary>
    /// <param name="amount">The amount, in the currency's main unit.</param>
    /// <param name="currency">The currency's code by ISO 4217: three capital letters.</param>
    /// <exception cref="ArgumentException">The code is not three capital letters.</exception>
    public string Money(decimal amount, string currency)
    {
        var written = Amount(Math.Abs(amount), currency);
        var text = Currencies.Sign(currency) is { } sign
            ? _texts.Say("figures.money_sign", ("sign", sign), ("amount", written))
            : _texts.Say("figures.money", ("currency", currency), ("amount", written));
        return amount < 0 ? NumberText.Minus + text : text;
    }

    /// <summary>A currency's sign, or its code where it has none of its own.</summary>
    /// <param name="currency">The code by ISO 4217.</param>
    public static string Currency(string currency) => Currencies.Sign(currency) ?? currency;

    /// <summary>An amount of money alone, for a table whose caption names the currency: <c>1234.50</c>.</summary>
    /// <param name="amount">The amount, in the currency's main unit.</param>
    /// <param name="currency">The currency's code by ISO 4217, for its decimals.</param>
    /// <exception cref="ArgumentException">The code is not three capital letters.</exception>
    public string Amount(decimal amount, string currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        return NumberText.Write(amount, Currencies.Decimals(currency), _choice);
    }

    private static void SameUnit(Figure one, Figure other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (one.Unit != other.Unit)
        {
            throw new ArgumentException($"`{one.Text}` and `{other.Text}` have different units.", nameof(other));
        }
    }
}
