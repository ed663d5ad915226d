namespace Layshaft.Site.Photos;

/// <summary>The rows of a photo as its decoder hands them out: sRGB or <see cref="Space"/>, flattened on white.</summary>
internal abstract class DecodedRows : IRowSource, IDisposable
{
    public abstract int Width { get; }

    public abstract int Height { get; }

    /// <summary>Width of the photo before the decoder shrank it, in the rows' own orientation.</summary>
    public abstract int FullWidth { get; }

    /// <summary>Height of the photo before the decoder shrank it, in the rows' own orientation.</summary>
    public abstract int FullHeight { get; }

    /// <summary>Turns the rows upright.</summary>
    public abstract PhotoOrientation Orientation { get; }

    /// <summary>The colour space of the rows where it is not sRGB.</summary>
    public virtual SkiaSharp.SKColorSpace? Space => null;

    /// <summary>Rows handed out so far.</summary>
    public int RowsRead { get; protected set; }

    /// <summary>Whether the decoder gave up because the data make no sense, rather than because they end.</summary>
    public bool IsDamaged { get; protected set; }

    public abstract bool Next(Span<byte> row);

    public abstract void Dispose();

    /// <summary>Lays premultiplied pixels on white.</summary>
    protected static void FlattenPremultiplied(Span<byte> row)
    {
        for (var at = 0; at < row.Length; at += Picture.PixelBytes)
        {
            var white = 255 - row[at + 3];
            row[at] = (byte)Math.Min(255, row[at] + white);
            row[at + 1] = (byte)Math.Min(255, row[at + 1] + white);
            row[at + 2] = (byte)Math.Min(255, row[at + 2] + white);
            row[at + 3] = 255;
        }
    }
}
