using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Photos;

/// <summary>
/// Circles, arrows and words that lie over a photo. Drawn with a light edge round dark ink (and the same ink in both
/// themes), since a photo may be any colour. Place it over the picture inside a <c>.photo-callouts</c> element.
/// </summary>
public static class PhotoCallouts
{
    private const double LineHeight = 16;

    /// <summary>Draws the overlay.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">A picture without size, or a fraction outside 0 to 1.</exception>
    public static RawHtml Draw(PhotoCalloutsInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.PixelWidth <= 0 || input.PixelHeight <= 0)
        {
            throw new ArgumentException("The picture needs a width and a height above 0.", nameof(input));
        }

        if (input.Callouts.Any(c => !Inside(c.X) || !Inside(c.Y) || !Inside(c.Radius ?? 0) || !Inside(c.LabelX ?? 0) || !Inside(c.LabelY ?? 0)))
        {
            throw new ArgumentException("Places in a picture are fractions between 0 and 1.", nameof(input));
        }

        var width = ChartSheet.Width(size);
        var height = width * input.PixelHeight / input.PixelWidth;
        var words = input.Callouts.Select(c => c.Label).Where(l => !string.IsNullOrWhiteSpace(l));
        var frame = input.Frame with { Description = string.Join("; ", [input.Frame.Description, .. words]) };
        return ChartSheet.Picture(frame, size, height, "callouts", svg =>
        {
            List<Box> taken = [];
            foreach (var callout in input.Callouts)
            {
                DrawOne(svg, callout, width, height, taken);
            }
        });
    }

    private static bool Inside(double fraction) => fraction is >= 0 and <= 1;

    private static void DrawOne(SvgWriter svg, Callout callout, double width, double height, List<Box> taken)
    {
        var (x, y) = (callout.X * width, callout.Y * height);
        var radius = callout.Radius * width ?? 0;
        var lines = TextWidth.Wrap(callout.Label, Math.Min(200, width * 0.6));
        var half = (TextWidth.Widest(lines) / 2) + 3;
        var tall = (lines.Count * LineHeight / 2) + 2;

        // Without a wish the words stand over the spot, or under it where there is no room above.
        var gap = radius > 0 ? radius + 22 : 42;
        var wishY = callout.LabelY * height ?? (y - gap - tall > 4 ? y - gap : y + gap);
        var labelX = Clamp(callout.LabelX * width ?? x, half, width - half);
        var labelY = Clamp(wishY, tall, height - tall);
        if (callout.Label.Length > 0)
        {
            labelY = Free(Box.Round(labelX, labelY, half, tall), Box.Round(x, y, radius + 4, radius + 4), height, taken);
            taken.Add(Box.Round(labelX, labelY, half, tall));
        }

        DrawPointer(svg, x, y, radius, labelX, labelY, tall);
        for (var i = 0; i < lines.Count && callout.Label.Length > 0; i++)
        {
            svg.Label("callout-text", labelX, labelY - tall + 14 + (i * LineHeight), lines[i], Anchor.Middle);
        }
    }

    // The nearest height at which the words cover neither words that are there already nor their own spot; where there is none, the wish.
    private static double Free(Box words, Box spot, double height, List<Box> taken)
    {
        Box[] beside = [.. taken.Append(spot).Where(t => words.Left < t.Right && words.Right > t.Left)];
        var tall = (words.Bottom - words.Top) / 2;
        bool IsFree(double y) => y >= tall && y <= height - tall && beside.All(t => y + tall <= t.Top || y - tall >= t.Bottom);
        var wish = words.Top + tall;
        double[] free = [.. beside.SelectMany(t => new[] { t.Top - tall, t.Bottom + tall }).Where(IsFree)];
        return free.Length == 0 || taken.TrueForAll(t => !t.Meets(words)) ? wish : free.MinBy(y => Math.Abs(y - wish));
    }

    private static void DrawPointer(SvgWriter svg, double x, double y, double radius, double labelX, double labelY, double tall)
    {
        if (radius > 0)
        {
            svg.Circle("callout-edge", x, y, radius);
            svg.Circle("callout-line", x, y, radius);
        }

        // From the near side of the words to the spot, or to the circle round it.
        var fromY = labelY + (Math.Sign(y - labelY) * (tall + 1));
        var (dx, dy) = (x - labelX, y - fromY);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length <= radius + 3)
        {
            return;
        }

        var (ux, uy) = (dx / length, dy / length);
        var (tipX, tipY) = (x - (ux * radius), y - (uy * radius));
        PathData line = new();
        line.Move(labelX, fromY).To(tipX, tipY);
        if (radius <= 0)
        {
            line.Move(tipX - (9 * ux) - (5 * uy), tipY - (9 * uy) + (5 * ux)).To(tipX, tipY).To(tipX - (9 * ux) + (5 * uy), tipY - (9 * uy) - (5 * ux));
        }

        svg.Path("callout-edge", line.ToString());
        svg.Path("callout-line", line.ToString());
    }

    private readonly record struct Box(double Left, double Top, double Right, double Bottom)
    {
        public static Box Round(double x, double y, double half, double tall) => new(x - half, y - tall, x + half, y + tall);

        public bool Meets(Box other) => Left < other.Right && Right > other.Left && Top < other.Bottom && Bottom > other.Top;
    }

    private static double Clamp(double value, double low, double high) => high < low ? (low + high) / 2 : Math.Clamp(value, low, high);
}
