using System.Text;
using SkiaSharp;

namespace Layshaft.Site.Cards;

/// <summary>
/// The typeface of preview pictures, shipped with the program: no system need have one. Text is drawn by its outlines, so
/// that no system's own way of smoothing letters shows.
/// </summary>
internal sealed class CardFont : IDisposable
{
    private const int Missing = '?';

    private static readonly string[] Sets = ["latin", "latin-ext"];

    private readonly SKFont[] parts;

    /// <summary>The typeface in a size.</summary>
    public CardFont(bool bold, float size)
    {
        Size = size;
        var weight = bold ? 700 : 400;
        parts = [.. Sets.Select(set => Load($"libre-franklin-{set}-{weight}-normal.woff", size))];
    }

    /// <summary>Height of the letters' body.</summary>
    public float Size { get; }

    /// <summary>How wide a text is.</summary>
    public float Measure(string text) => Glyphs(text).Sum(g => g.Width);

    /// <summary>Draws a text from a point on its base line; where it ends.</summary>
    public float Draw(SKCanvas canvas, string text, float x, float y, SKPaint paint)
    {
        foreach (var (font, glyph, width) in Glyphs(text))
        {
            using var outline = font.GetGlyphPath(glyph);
            if (outline is not null)
            {
                canvas.Save();
                canvas.Translate(x, y);
                canvas.DrawPath(outline, paint);
                canvas.Restore();
            }

            x += width;
        }

        return x;
    }

    public void Dispose()
    {
        foreach (var part in parts)
        {
            part.Typeface.Dispose();
            part.Dispose();
        }
    }

    // A sign that no part of the typeface has becomes a question mark; marks that only turn or join others are left out.
    private IEnumerable<(SKFont Font, ushort Glyph, float Width)> Glyphs(string text)
    {
        foreach (var rune in text.Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            var category = Rune.GetUnicodeCategory(rune);
            if (category is System.Globalization.UnicodeCategory.Control or System.Globalization.UnicodeCategory.Format or System.Globalization.UnicodeCategory.NonSpacingMark)
            {
                continue;
            }

            var code = Rune.IsWhiteSpace(rune) ? ' ' : rune.Value;
            var font = parts.FirstOrDefault(p => p.ContainsGlyph(code));
            var glyph = (font ??= parts[0]).GetGlyph(font.ContainsGlyph(code) ? code : Missing);
            yield return (font, glyph, font.GetGlyphWidths([glyph])[0]);
        }
    }

    private static SKFont Load(string name, float size)
    {
        using var stream = typeof(CardFont).Assembly.GetManifestResourceStream($"Layshaft.Site.Cards.Fonts.{name}")
            ?? throw new InvalidOperationException($"The typeface {name} is not in the program.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        using var data = SKData.CreateCopy(copy.ToArray());
        var face = SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The typeface {name} cannot be read.");
        return new SKFont(face, size) { Hinting = SKFontHinting.None, Subpixel = true, LinearMetrics = true };
    }
}
