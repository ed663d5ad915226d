using System.Globalization;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>The size of a file, in decimal units (1 kB is 1000 bytes, 1 MB is 1000 kB).</summary>
/// <param name="Bytes">Bytes, more than 0.</param>
public readonly record struct FileSize(long Bytes)
{
    private const decimal Largest = 1e9m;

    /// <summary>Reads "8 MB", "1.5 MB" or "600 kB".</summary>
    public static Parsed<FileSize> Parse(string text)
    {
        var (number, unit) = QuantityParts.Split(text);
        decimal? each = unit switch
        {
            "kB" or "KB" => 1_000m,
            "MB" => 1_000_000m,
            _ => null,
        };
        var figure = Figure.ParseExact(number);
        return each is not { } bytes || figure.Wrong is not null || figure.Value is <= 0 or > Largest || figure.Value * bytes is < 1 or > Largest
            ? Parsed.Bad<FileSize>($"'{text}' is not a file size.")
            : Parsed.Good(new FileSize((long)(figure.Value * bytes)));
    }

    /// <summary>In kilobytes below one megabyte, else in megabytes with one decimal, rounded up.</summary>
    public override string ToString() => Bytes < 1_000_000
        ? string.Create(CultureInfo.InvariantCulture, $"{decimal.Ceiling(Bytes / 1_000m):0} kB")
        : string.Create(CultureInfo.InvariantCulture, $"{decimal.Ceiling(Bytes / 100_000m) / 10m:0.#} MB");
}
