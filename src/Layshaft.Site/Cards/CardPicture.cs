using System.Runtime.InteropServices;
using Layshaft.Site.Charts;
using Layshaft.Site.Look;
using SkiaSharp;

namespace Layshaft.Site.Cards;

/// <summary>Draws the picture that messengers show beside a link, and that stands in a mail.</summary>
/// <remarks>
/// It is drawn four times as large without smoothing, then every sixteen dots are averaged in whole numbers: so the bytes do
/// not depend on how a processor or a system smooths edges. The large drawing holds one byte a dot, the tone that was used there;
/// the few tones become colours with the averaging, and the file has a palette.
/// </remarks>
public static class CardPicture
{
    /// <summary>Width in pixels.</summary>
    public const int Width = 1200;

    /// <summary>Height in pixels.</summary>
    public const int Height = 630;

    private const int Fine = 4;
    private const int Margin = 72;
    private const int Room = Width - (2 * Margin);
    private const int MostLines = 4;
    private const int ToneStep = 32;
    private const int Deflation = 3; // a fifth larger than with 6, in a third of the time

    // Kept for the next picture: fresh memory of this size costs more than to draw on it.
    [ThreadStatic]
    private static SKBitmap? drawing;

    private static readonly Rgb PaperColour = new(0xFC, 0xFB, 0xF8);
    private static readonly Rgb[] Fixed = [PaperColour, new(0x1C, 0x22, 0x27), new(0x4F, 0x59, 0x61), new(0xCF, 0xCC, 0xC3)];

    private static readonly SKColor Paper = Tone(0);
    private static readonly SKColor Ink = Tone(1);
    private static readonly SKColor Soft = Tone(2);
    private static readonly SKColor Rule = Tone(3);
    private static readonly SKColor Accent = Tone(4);

    /// <summary>The picture as PNG.</summary>
    public static ReadOnlyMemory<byte> Png(CardView card)
    {
        ArgumentNullException.ThrowIfNull(card);
        var large = drawing ??= new SKBitmap(new SKImageInfo(Width * Fine, Height * Fine, SKColorType.Gray8, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(large))
        {
            canvas.Scale(Fine);
            Paint(canvas, card);
        }

        using var small = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Gray8, SKAlphaType.Opaque));
        var colours = Average(large, small, [.. Fixed, Contrast.Readable(card.Colour, PaperColour, new Rgb(0, 0, 0))]);
        // Flat tones: to predict each dot from its neighbours costs time and makes the file no smaller.
        using var pixels = small.PeekPixels();
        using var data = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.None, Deflation))
            ?? throw new InvalidOperationException("The preview picture could not be written as PNG.");
        return PalettePng.Of(data.AsSpan(), colours);
    }

    private static void Paint(SKCanvas canvas, CardView card)
    {
        canvas.Clear(Paper);
        using var paint = new SKPaint { IsAntialias = false };
        paint.Color = Accent;
        canvas.DrawRect(0, 0, Width, 18, paint);
        Line(canvas, card.Shop, bold: true, 34, 92, paint);
        paint.Color = Soft;
        Line(canvas, card.Heading, bold: false, 30, 142, paint);
        paint.Color = Ink;
        Line(canvas, card.Unit, bold: true, 40, 206, paint);
        paint.Color = Rule;
        canvas.DrawRect(Margin, 236, Room, 3, paint);
        paint.Color = Ink;
        Sentence(canvas, card.Words, card.Grades.Count > 0 ? 490 : 590, paint);
        Grades(canvas, card.Grades, paint);
    }

    private static void Line(SKCanvas canvas, string text, bool bold, float size, float y, SKPaint paint)
    {
        using var font = new CardFont(bold, size);
        font.Draw(canvas, CardLines.Fit(text, Room, font.Measure), Margin, y, paint);
    }

    // As large as it fits.
    private static void Sentence(SKCanvas canvas, string words, float bottom, SKPaint paint)
    {
        const float Top = 262;
        foreach (var size in new[] { 60f, 52f, 46f, 40f })
        {
            using var font = new CardFont(bold: false, size);
            var step = size * 1.22f;
            var most = Math.Min(MostLines, (int)((bottom - Top) / step));
            var lines = CardLines.Break(words, Room, most, font.Measure);
            if (lines.Count > 0 && lines[^1].EndsWith('…') && size > 40f)
            {
                continue;
            }

            for (var i = 0; i < lines.Count; i++)
            {
                font.Draw(canvas, lines[i], Margin, Top + size + (i * step), paint);
            }

            return;
        }
    }

    // The marks are those of the pages: an open circle, a tinted triangle, a solid square.
    private static void Grades(SKCanvas canvas, IReadOnlyList<CardGrade> grades, SKPaint paint)
    {
        using var letters = new CardFont(bold: true, 24);
        using var small = new CardFont(bold: true, 18);
        using var names = new CardFont(bold: false, 28);
        var x = (float)Margin;
        foreach (var grade in grades)
        {
            Shape(canvas, grade.Mark.Shape, x, paint);
            var isTriangle = grade.Mark.Shape == GradeShape.Triangle;
            var font = isTriangle ? small : letters;
            paint.Color = grade.Mark.Shape == GradeShape.Square ? Paper : Ink;
            font.Draw(canvas, grade.Mark.Letter, x + 26 - (font.Measure(grade.Mark.Letter) / 2), isTriangle ? 572 : 563, paint);
            paint.Color = Ink;
            x = names.Draw(canvas, $"{grade.Name}: {grade.Words}", x + 66, 564, paint) + 44;
        }
    }

    private static void Shape(SKCanvas canvas, GradeShape shape, float x, SKPaint paint)
    {
        const float Middle = 554;
        paint.Color = Accent;
        switch (shape)
        {
            case GradeShape.Circle:
                canvas.DrawCircle(x + 26, Middle, 26, paint);
                paint.Color = Paper;
                canvas.DrawCircle(x + 26, Middle, 22, paint);
                break;
            case GradeShape.Square:
                canvas.DrawRect(x + 2, Middle - 24, 48, 48, paint);
                break;
            default:
                Triangle(canvas, x + 26, Middle - 30, 58, 32, paint);
                paint.Color = Rule;
                Triangle(canvas, x + 26, Middle - 21, 45, 25, paint);
                break;
        }
    }

    private static void Triangle(SKCanvas canvas, float tip, float top, float height, float half, SKPaint paint)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(tip, top);
        builder.LineTo(tip + half, top + height);
        builder.LineTo(tip - half, top + height);
        builder.Close();
        using var path = builder.Detach();
        canvas.DrawPath(path, paint);
    }

    // Grey is all that one byte a dot can say; which grey says which tone.
    private static SKColor Tone(int number)
    {
        var grey = (byte)(number * ToneStep);
        return new SKColor(grey, grey, grey);
    }

    // The colours, in the order in which they are met; each dot of the small picture is the number of its own.
    private static List<Rgb> Average(SKBitmap large, SKBitmap small, Rgb[] tones)
    {
        // Red, green and blue in lanes of sixteen bits: each holds the sum of sixteen dots.
        ulong[] lanes = [.. tones.Select(t => (ulong)t.Red | ((ulong)t.Green << 16) | ((ulong)t.Blue << 32))];
        var colours = new List<Rgb>();
        var known = new Dictionary<ulong, byte>();
        var from = large.GetPixelSpan();
        var to = MemoryMarshal.CreateSpan(ref MemoryMarshal.GetReference(small.GetPixelSpan()), small.ByteCount);
        for (var y = 0; y < Height; y++)
        {
            var row = to.Slice(y * small.RowBytes, Width);
            var first = Dots(from, large.RowBytes, y * Fine);
            var second = Dots(from, large.RowBytes, (y * Fine) + 1);
            var third = Dots(from, large.RowBytes, (y * Fine) + 2);
            var fourth = Dots(from, large.RowBytes, (y * Fine) + 3);
            for (var x = 0; x < Width; x++)
            {
                // Most of the picture is paper: sixteen dots of one tone, and so are the next.
                if (first[x] == second[x] && first[x] == third[x] && first[x] == fourth[x])
                {
                    var end = x + Math.Min(Same(first, x), Math.Min(Same(second, x), Math.Min(Same(third, x), Same(fourth, x))));
                    row[x..end].Fill(Number(Fine * Sum(first[x], lanes), known, colours));
                    x = end - 1;
                    continue;
                }

                row[x] = Number(Sum(first[x], lanes) + Sum(second[x], lanes) + Sum(third[x], lanes) + Sum(fourth[x], lanes), known, colours);
            }
        }

        return colours;
    }

    private static int Same(ReadOnlySpan<uint> dots, int from) =>
        dots[from..].IndexOfAnyExcept(dots[from]) is >= 0 and var other ? other : dots.Length - from;

    // The number of a colour, by the sums of its sixteen dots.
    private static byte Number(ulong sum, Dictionary<ulong, byte> known, List<Rgb> colours)
    {
        if (known.TryGetValue(sum, out var number))
        {
            return number;
        }

        var colour = new Rgb(Mean(sum), Mean(sum >> 16), Mean(sum >> 32));
        var at = colours.IndexOf(colour);
        if (at < 0 && colours.Count < PalettePng.MostColours)
        {
            at = colours.Count;
            colours.Add(colour);
        }

        return known[sum] = (byte)(at < 0 ? Nearest(colour, colours) : at);
    }

    private static byte Mean(ulong sum) => (byte)(((sum & 0xFFFF) + (Fine * Fine / 2)) / (Fine * Fine));

    private static int Nearest(Rgb colour, List<Rgb> colours)
    {
        static int Square(int difference) => difference * difference;
        return Enumerable.Range(0, colours.Count).MinBy(i =>
            Square(colour.Red - colours[i].Red) + Square(colour.Green - colours[i].Green) + Square(colour.Blue - colours[i].Blue));
    }

    // A row of the large drawing, four dots at a time.
    private static ReadOnlySpan<uint> Dots(ReadOnlySpan<byte> dots, int rowBytes, int row) =>
        MemoryMarshal.Cast<byte, uint>(dots.Slice(row * rowBytes, Width * Fine));

    private static ulong Sum(uint four, ulong[] lanes) =>
        lanes[(four & 0xFF) / ToneStep] + lanes[((four >> 8) & 0xFF) / ToneStep] + lanes[((four >> 16) & 0xFF) / ToneStep] + lanes[(four >> 24) / ToneStep];
}
