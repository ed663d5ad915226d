namespace Layshaft.Site.Photos;

/// <summary>
/// Shrinks a picture whose rows arrive one after the other: each row is made narrower at once, and only the few rows
/// that the next row of the result needs are kept. So the memory does not grow with the height.
/// </summary>
internal static class Shrinker
{
    /// <summary>The smaller picture, or null if the rows ended too early. Never enlarges.</summary>
    public static Picture? Shrink(IRowSource source, int width, int height, bool portable = false)
    {
        var picture = new Picture(width, height);
        var complete = source.Width == width && source.Height == height
            ? Copy(source, picture)
            : Blend(source, picture, portable);
        if (complete)
        {
            return picture;
        }

        picture.Dispose();
        return null;
    }

    private static bool Copy(IRowSource source, Picture picture)
    {
        for (var y = 0; y < picture.Height; y++)
        {
            if (!source.Next(picture.Row(y)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Blend(IRowSource source, Picture picture, bool portable)
    {
        var across = new LanczosWeights(source.Width, picture.Width);
        var down = new LanczosWeights(source.Height, picture.Height);
        var stride = ((picture.Width * Picture.PixelBytes) + 15) / 16 * 16;
        var row = new byte[Math.Max(source.Width, across.Taps) * Picture.PixelBytes];
        var kept = new byte[down.Taps * stride]; // A ring: stored row y lies in place y modulo the number of taps
        var blended = new byte[stride];
        var places = new int[down.Taps];
        var read = 0;
        for (var y = 0; y < picture.Height; y++)
        {
            var start = down.Start(y);
            for (; read < Math.Min(start + down.Taps, source.Height); read++)
            {
                if (!source.Next(row.AsSpan(0, source.Width * Picture.PixelBytes)))
                {
                    return false;
                }

                RowBlend.Across(row, kept.AsSpan(read % down.Taps * stride, stride), across, picture.Width, portable);
            }

            for (var t = 0; t < places.Length; t++)
            {
                places[t] = (start + t) % down.Taps * stride;
            }

            RowBlend.Down(kept, places, down.Of(y), blended, portable);
            blended.AsSpan(0, picture.Width * Picture.PixelBytes).CopyTo(picture.Row(y));
        }

        return ReadOut(source, row, read);
    }

    // The last rows may weigh nothing, but that they are there must still be known
    private static bool ReadOut(IRowSource source, byte[] row, int read)
    {
        for (; read < source.Height; read++)
        {
            if (!source.Next(row.AsSpan(0, source.Width * Picture.PixelBytes)))
            {
                return false;
            }
        }

        return true;
    }
}
