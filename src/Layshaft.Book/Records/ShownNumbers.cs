using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>What stands before the decimals of a number.</summary>
public enum DecimalMark
{
    /// <summary>A point: 0.12.</summary>
    Point,

    /// <summary>A comma: 0,12.</summary>
    Comma,
}

/// <summary>What stands between the thousands of a long number.</summary>
public enum ThousandsMark
{
    /// <summary>A narrow space, from five digits on (the practice of ISO 80000-1): 9500, 12 500.</summary>
    Space,

    /// <summary>Whichever of point and comma is not the decimal mark: 12,500 or 12.500.</summary>
    Mark,

    /// <summary>Nothing: 12500.</summary>
    None,
}

/// <summary>How numbers are written on the pages. The book itself always has a point and no thousands mark.</summary>
/// <param name="Decimals">The decimal mark; null for that of the language.</param>
/// <param name="Thousands">The mark between thousands.</param>
public sealed record ShownNumbers(DecimalMark? Decimals, ThousandsMark Thousands)
{
    /// <summary>The language's decimal mark, narrow spaces between thousands.</summary>
    public static ShownNumbers Usual { get; } = new(null, ThousandsMark.Space);

    /// <summary>How it is written.</summary>
    public static RecordShape<ShownNumbers> Shape { get; } = new("a number format", "Number format of the pages. In the book, numbers are written with a decimal point.", f => new ShownNumbers(
        f.OptionalValue("decimals", new ChoiceShape<DecimalMark>("a decimal mark", ("point", DecimalMark.Point), ("comma", DecimalMark.Comma)), "Decimal mark. Default: by the language."),
        f.Or("thousands", new ChoiceShape<ThousandsMark>("a thousands separator", ("space", ThousandsMark.Space), ("mark", ThousandsMark.Mark), ("none", ThousandsMark.None)), ThousandsMark.Space, "Thousands separator: a narrow space, the mark (12,500, or 12.500 with a decimal comma), or none. Default: space.")));
}
