namespace Layshaft.Site.Photos;

/// <summary>Turns a picture upright, pixel by pixel, without any loss.</summary>
internal static class PictureTurn
{
    private const int Block = 32; // Pixels of a side: 4 KB read and 4 KB written stay in the nearest cache

    /// <summary>The upright picture; the same object if it already is.</summary>
    public static Picture Upright(Picture stored, PhotoOrientation orientation)
    {
        if (orientation == PhotoOrientation.TopLeft)
        {
            return stored;
        }

        int w = stored.Width, h = stored.Height, last = (w * h) - 1;

        // Where the upright top left pixel is stored, and how far away its right and lower neighbours are
        var (first, right, down) = orientation switch
        {
            PhotoOrientation.TopRight => (w - 1, -1, w),
            PhotoOrientation.BottomRight => (last, -1, -w),
            PhotoOrientation.BottomLeft => (last - w + 1, 1, -w),
            PhotoOrientation.LeftTop => (0, w, 1),
            PhotoOrientation.RightTop => (last - w + 1, -w, 1),
            PhotoOrientation.RightBottom => (last, -w, -1),
            _ => (w - 1, w, -1),
        };
        var swaps = orientation >= PhotoOrientation.LeftTop;
        var upright = swaps ? new Picture(h, w) : new Picture(w, h);
        Copy(stored.Pixels, upright, first, right, down);
        return upright;
    }

    private static void Copy(ReadOnlySpan<uint> from, Picture upright, int first, int right, int down)
    {
        var to = upright.Pixels;
        for (var top = 0; top < upright.Height; top += Block)
        {
            for (var left = 0; left < upright.Width; left += Block)
            {
                var width = Math.Min(Block, upright.Width - left);
                for (var y = top; y < Math.Min(top + Block, upright.Height); y++)
                {
                    var row = to.Slice((y * upright.Width) + left, width);
                    var at = first + (y * down) + (left * right);
                    for (var x = 0; x < row.Length; x++, at += right)
                    {
                        row[x] = from[at];
                    }
                }
            }
        }
    }
}
