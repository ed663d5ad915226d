namespace Layshaft.Site.Photos;

/// <summary>A picture whose rows are had one after the other, from the top, as opaque RGBA of 8 bits.</summary>
internal interface IRowSource
{
    int Width { get; }

    int Height { get; }

    /// <summary>Fills in the next row; false if the data ended before it.</summary>
    bool Next(Span<byte> row);
}

/// <summary>The rows of a picture in memory.</summary>
internal sealed class PictureRows(Picture picture) : IRowSource
{
    private int _next;

    public int Width => picture.Width;

    public int Height => picture.Height;

    public bool Next(Span<byte> row)
    {
        picture.Row(_next++).CopyTo(row);
        return true;
    }
}
