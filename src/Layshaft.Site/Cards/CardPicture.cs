using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Layshaft.Site.Charts;
using Layshaft.Site.Look;
using SkiaSharp;

namespace Layshaft.Site.Cards;

/// <summary>Draws the picture that messengers show beside a link, and that stands in a mail.</summary>
/// <remarks>
/// It is drawn four times as large without smoothing, then every sixteen dots are averaged in whole numbers: so the bytes do
/// not depend on how a processor or a system smooths edges. Band by band, for the whole of it would take 48 MB a thread.
/// </remarks>
public static class CardPicture
{
    /// <summary>Width in pixels.</summary>
    public const int Width = 1200;

    /// <summary>Height in pixels.</summary>
    public const int Height = 630;

    private const int Fine = 4;
    private const int Band = Height / 9;
    private const int Margin = 72;
    private const int Room = Width - (2 * Margin);
    private const int MostLines = 4;

    private static readonly SKColor Paper = new(0xFC, 0xFB, 0xF8);
    private static readonly SKColor Ink = new(0x1C, 0x22, 0x27);
    private static readonly SKColor Soft = new(0x4F, 0x59, 0x61);
    private static readonly SKColor Rule = new(0xCF, 0xCC, 0xC3);

    /// <summary>The picture as PNG.</summary>
    public static ReadOnlyMemory<byte> Png(CardView card)
    {
        ArgumentNullException.ThrowIfNull(card);
        using var recorder = new SKPictureRecorder();
        Paint(recorder.BeginRecording(new SKRect(0, 0, Width, Height)), card);
        using var picture = recorder.EndRecording();
        using var large = new SKBitmap(new SKImageInfo(Width * Fine, Band * Fine, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(large);
        using var small = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        for (var top = 0; top < Height; top += Band)
        {
            canvas.ResetMatrix();
            canvas.Translate(0, -top * Fine);
            canvas.Scale(Fine);
            canvas.DrawPicture(picture);
            Average(large, small, top);
        }

        using var data = small.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static void Paint(SKCanvas canvas, CardView card)
    {
        canvas.Clear(Paper);
        using var paint = new SKPaint { IsAntialias = false };
        var accent = Colour(Contrast.Readable(card.Colour, new Rgb(Paper.Red, Paper.Green, Paper.Blue), new Rgb(0, 0, 0)));
        paint.Color = accent;
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
        Grades(canvas, card.Grades, accent, paint);
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
    private static void Grades(SKCanvas canvas, IReadOnlyList<CardGrade> grades, SKColor accent, SKPaint paint)
    {
        using var letters = new CardFont(bold: true, 24);
        using var small = new CardFont(bold: true, 18);
        using var names = new CardFont(bold: false, 28);
        var x = (float)Margin;
        foreach (var grade in grades)
        {
            Shape(canvas, grade.Mark.Shape, x, accent, paint);
            var isTriangle = grade.Mark.Shape == GradeShape.Triangle;
            var font = isTriangle ? small : letters;
            paint.Color = grade.Mark.Shape == GradeShape.Square ? Paper : Ink;
            font.Draw(canvas, grade.Mark.Letter, x + 26 - (font.Measure(grade.Mark.Letter) / 2), isTriangle ? 572 : 563, paint);
            paint.Color = Ink;
            x = names.Draw(canvas, $"{grade.Name}: {grade.Words}", x + 66, 564, paint) + 44;
        }
    }

    private static void Shape(SKCanvas canvas, GradeShape shape, float x, SKColor accent, SKPaint paint)
    {
        const float Middle = 554;
        paint.Color = accent;
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

    private static SKColor Colour(Rgb colour) => new(colour.Red, colour.Green, colour.Blue);

    // Four dots of four rows at a time; channels are summed in 16 bits, which holds sixteen of 255.
    private static void Average(SKBitmap large, SKBitmap small, int top)
    {
        var from = large.GetPixelSpan();
        var to = MemoryMarshal.CreateSpan(ref MemoryMarshal.GetReference(small.GetPixelSpan()), small.ByteCount);
        var half = Vector128.Create((ushort)(Fine * Fine / 2));
        for (var y = 0; y < Band; y++)
        {
            var row = MemoryMarshal.Cast<byte, uint>(to.Slice((top + y) * small.RowBytes, Width * 4));
            var first = from.Slice(y * Fine * large.RowBytes, Width * Fine * 4);
            var second = from.Slice(((y * Fine) + 1) * large.RowBytes, first.Length);
            var third = from.Slice(((y * Fine) + 2) * large.RowBytes, first.Length);
            var fourth = from.Slice(((y * Fine) + 3) * large.RowBytes, first.Length);
            for (var x = 0; x < row.Length; x++)
            {
                var at = x * Fine * 4;
                var sum = Sum(first, at) + Sum(second, at) + Sum(third, at) + Sum(fourth, at);
                sum += Vector128.Shuffle(sum, Vector128.Create((ushort)4, 5, 6, 7, 0, 1, 2, 3));
                var dot = (sum + half) >> 4;
                row[x] = Vector128.Narrow(dot, dot).AsUInt32().ToScalar();
            }
        }
    }

    // Of four dots the first and third, and the second and fourth.
    private static Vector128<ushort> Sum(ReadOnlySpan<byte> dots, int at)
    {
        var (low, high) = Vector128.Widen(Vector128.Create(dots.Slice(at, 16)));
        return low + high;
    }
}
