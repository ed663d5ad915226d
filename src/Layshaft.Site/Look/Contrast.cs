using System.Globalization;

namespace Layshaft.Site.Look;

/// <summary>A colour of the sRGB space, 0 to 255 each.</summary>
/// <param name="Red">Red.</param>
/// <param name="Green">Green.</param>
/// <param name="Blue">Blue.</param>
public readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <summary>Reads <c>#rrggbb</c>.</summary>
    /// <exception cref="FormatException">It is written otherwise.</exception>
    public static Rgb Parse(string hex)
    {
        ArgumentNullException.ThrowIfNull(hex);
        return hex.Length == 7 && hex[0] == '#'
            ? new Rgb(Pair(hex, 1), Pair(hex, 3), Pair(hex, 5))
            : throw new FormatException("A colour is written #rrggbb.");
    }

    /// <summary>As <c>#rrggbb</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");

    /// <summary>A mixture: this colour with a share of another.</summary>
    public Rgb Towards(Rgb other, double share) => new(Mix(Red, other.Red, share), Mix(Green, other.Green, share), Mix(Blue, other.Blue, share));

    private static byte Mix(byte a, byte b, double share) => (byte)Math.Round(a + ((b - a) * share));

    private static byte Pair(string hex, int at) => byte.Parse(hex.AsSpan(at, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}

/// <summary>Contrast of two colours.</summary>
public static class Contrast
{
    /// <summary>The least contrast of text (WCAG 2.2, success criterion 1.4.3, level AA).</summary>
    public const double Text = 4.5;

    /// <summary>Contrast ratio, 1 to 21 (WCAG 2.2, definition "contrast ratio").</summary>
    public static double Ratio(Rgb one, Rgb other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>A colour that stands out from a ground: the colour itself where it does, else mixed with an end colour as little as needed.</summary>
    /// <param name="colour">The colour that is wanted.</param>
    /// <param name="ground">What it stands on.</param>
    /// <param name="end">Black or white: where the contrast grows.</param>
    public static Rgb Readable(Rgb colour, Rgb ground, Rgb end)
    {
        for (var share = 0.0; share < 1; share += 0.02)
        {
            var mixed = colour.Towards(end, share);
            if (Ratio(mixed, ground) >= Text)
            {
                return mixed;
            }
        }

        return end;
    }

    // Relative luminance (WCAG 2.2, definition "relative luminance", with the sRGB threshold of IEC 61966-2-1).
    private static double Luminance(Rgb colour) => (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte channel)
    {
        var c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
