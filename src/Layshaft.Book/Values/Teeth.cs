using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>
/// The teeth of two gears in mesh, as the book writes them: <c>29/23</c> is driven/driver, so that the fraction is
/// the ratio.
/// </summary>
/// <param name="Driver">Teeth of the driving gear.</param>
/// <param name="Driven">Teeth of the driven gear.</param>
public readonly partial record struct Teeth(int Driver, int Driven)
{
    /// <summary>Fewer teeth than this are no gear of this trade.</summary>
    public const int Fewest = 7;

    /// <summary>More teeth than this are no gear of this trade.</summary>
    public const int Most = 150;

    /// <summary>What to write.</summary>
    public const string What = "two tooth counts as driven/driver";

    /// <summary>How it is written.</summary>
    public const string Example = "29/23";

    /// <summary>What to write for a final drive.</summary>
    public const string FinalDriveWhat = "crown wheel/pinion teeth (driven/driver)";

    /// <summary>How a final drive is written.</summary>
    public const string FinalDriveExample = "35/11";

    /// <summary>Reads <c>29/23</c>; for the same in words, the remedy is how to write it.</summary>
    public static Parsed<Teeth> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = text.Split('/');
        if (parts.Length != 2)
        {
            return Parsed.Bad<Teeth>($"'{text}' is not a pair of gears.", Remedy(text));
        }

        var driven = Figure.ParseWhole(parts[0].Trim());
        var driver = Figure.ParseWhole(parts[1].Trim());
        if ((driven.Wrong ?? driver.Wrong) is { } wrong)
        {
            return Parsed.Bad<Teeth>(wrong, driven.Wrong is null ? driver.Remedy : driven.Remedy);
        }

        foreach (var count in (ReadOnlySpan<int>)[driven.Value, driver.Value])
        {
            if (count is < Fewest or > Most)
            {
                return Parsed.Bad<Teeth>(
                    $"A gear with {count.ToString(CultureInfo.InvariantCulture)} teeth is not possible.",
                    $"Write a tooth count from {Fewest} to {Most}.");
            }
        }

        return Parsed.Good(new Teeth(driver.Value, driven.Value));
    }

    /// <summary>Reads a final drive, crown wheel/pinion. A crown wheel smaller than its pinion is taken for a pair written the wrong way round.</summary>
    public static Parsed<Teeth> ParseFinalDrive(string text) => Parse(text) is { Wrong: null, Value: var (pinion, crown) } && crown < pinion
        ? Parsed.Bad<Teeth>($"'{text}' is a crown wheel smaller than its pinion.", FormattableString.Invariant($"Did you mean {pinion}/{crown}? Write crown wheel/pinion (driven/driver)."))
        : Parse(text);

    private static string? Remedy(string text) => Spoken().Match(text) is { Success: true } spoken
        ? $"Write driven/driver: {spoken.Groups["driven"]}/{spoken.Groups["driver"]}."
        : text.Trim().ToLowerInvariant() is "none" or "no" or "-" or "n/a" ? "Remove the line if nothing is fitted or changed." : null;

    [GeneratedRegex(@"^\s*(?:(?<driver>[0-9]{1,3}) driv(?:ing|es) (?<driven>[0-9]{1,3})|(?<driven>[0-9]{1,3}) driven by (?<driver>[0-9]{1,3}))\s*$", RegexOptions.ExplicitCapture)]
    private static partial Regex Spoken();

    /// <summary>The pair as the book writes it, driven/driver: <c>29/23</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Driven}/{Driver}");
}
