namespace Layshaft.Site.Photos;

/// <summary>What a photo's header says about it.</summary>
/// <param name="Format">The true format, by content.</param>
/// <param name="StoredWidth">Columns as stored, in pixels, at least 1.</param>
/// <param name="StoredHeight">Rows as stored, in pixels, at least 1.</param>
/// <param name="Orientation">How the stored picture is to be turned upright.</param>
/// <param name="Profile">The colour space of its numbers.</param>
/// <param name="WorkingBytes">Estimate of the memory, in bytes, that making its renditions takes at the most.</param>
public sealed record PhotoFacts(
    PhotoFormat Format,
    int StoredWidth,
    int StoredHeight,
    PhotoOrientation Orientation,
    ColourProfile Profile,
    long WorkingBytes)
{
    /// <summary>Width of the upright picture in pixels.</summary>
    public int UprightWidth => SwapsSides ? StoredHeight : StoredWidth;

    /// <summary>Height of the upright picture in pixels.</summary>
    public int UprightHeight => SwapsSides ? StoredWidth : StoredHeight;

    /// <summary>Whether it is decoded some of its rows at a time, from the file itself, because it is too large to be in memory whole.</summary>
    internal bool InWindows { get; init; }

    /// <summary>Number of pixels.</summary>
    public long Pixels => (long)StoredWidth * StoredHeight;

    private bool SwapsSides => Orientation >= PhotoOrientation.LeftTop;
}
