using Layshaft.Book.Records;

namespace Layshaft.Site.Look;

/// <summary>The shop's one colour, made readable on light paper, dark paper and in print.</summary>
public static class ShopColours
{
    /// <summary>The colour of a shop that names none.</summary>
    public const string Usual = "#27566b";

    // The grounds of site.css on which the colour is used for text; the darkest light one and the lightest dark one.
    private static readonly Rgb LightGround = Rgb.Parse("#f1efe8");
    private static readonly Rgb DarkGround = Rgb.Parse("#22282d");
    private static readonly Rgb Black = Rgb.Parse("#000000");
    private static readonly Rgb White = Rgb.Parse("#ffffff");

    /// <summary>The stylesheet that sets the colour.</summary>
    public static string Stylesheet(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var colour = Rgb.Parse(shop.Colour ?? Usual);
        var light = Contrast.Readable(colour, LightGround, Black);
        var dark = Contrast.Readable(colour, DarkGround, White);
        return $":root {{ --accent: {light}; --accent-dark: {dark}; --accent-print: {light}; }}\n";
    }

    /// <summary>A colour that cannot be read on the paper, and what stands in for it; null when the shop's colour can be read.</summary>
    public static PaleColour? TooPale(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        if (shop.Colour is not { } written)
        {
            return null;
        }

        var colour = Rgb.Parse(written);
        var ratio = Contrast.Ratio(colour, LightGround);
        return ratio < Contrast.Text ? new PaleColour(colour, Contrast.Readable(colour, LightGround, Black), ratio) : null;
    }
}

/// <summary>A colour with too little contrast.</summary>
/// <param name="Asked">The shop's colour.</param>
/// <param name="Used">The nearest mixture with black that can be read.</param>
/// <param name="Ratio">Contrast of the shop's colour on the paper.</param>
public sealed record PaleColour(Rgb Asked, Rgb Used, double Ratio);
