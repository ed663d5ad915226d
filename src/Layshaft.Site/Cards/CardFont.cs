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

    // A typeface is read once: many cards are drawn, by several threads, and none of them changes it.
    private static readonly Lazy<SKTypeface[]> Regular = new(() => Faces(400));
    private static readonly Lazy<SKTypeface[]> Bold = new(() => Faces(700));

    private readonly SKFont[] parts;
    private readonly Dictionary<Rune, (SKFont Font, ushort Glyph, float Width)> known = [];

    /// <summary>The typeface in a size.</summary>
    public CardFont(bool bold, float size)
    {
        Size = size;
        parts = [.. (bold ? Bold : Regular).Value.Select(face => new SKFont(face, size) { Hinting = SKFontHinting.None, Subpixel = true, LinearMetrics = true })];
    }

    /// <summary>Height of the letters' body.</summary>
    public float Size { get; }

    /// <summary>How wide a text is.</summary>
    public float Measure(string text)
    {
        var width = 0.0;
        foreach (var glyph in Glyphs(text))
        {
            width += glyph.Width;
        }

        return (float)width;
    }

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

            if (!known.TryGetValue(rune, out var sign))
            {
                known[rune] = sign = Look(Rune.IsWhiteSpace(rune) ? ' ' : rune.Value);
            }

            yield return sign;
        }
    }

    private (SKFont Font, ushort Glyph, float Width) Look(int code)
    {
        var font = parts.FirstOrDefault(p => p.ContainsGlyph(code));
        var glyph = (font ??= parts[0]).GetGlyph(font.ContainsGlyph(code) ? code : Missing);
        return (font, glyph, font.GetGlyphWidths([glyph])[0]);
    }

    private static SKTypeface[] Faces(int weight) => [.. Sets.Select(set => Load($"libre-franklin-{set}-{weight}-normal.woff"))];

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(CardFont).Assembly.GetManifestResourceStream($"Layshaft.Site.Cards.Fonts.{name}")
            ?? throw new InvalidOperationException($"The typeface {name} is not in the program.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        using var data = SKData.CreateCopy(copy.ToArray());
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The typeface {name} cannot be read.");
    }
}
