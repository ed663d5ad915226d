namespace Layshaft.Site.Photos;

/// <summary>How large a photo may be. All three are checked from its header, before a pixel is decoded.</summary>
public sealed record PhotoLimits
{
    /// <summary>The limits used where none are given.</summary>
    public static PhotoLimits Default { get; } = new();

    /// <summary>Largest width × height. The default of 250 million lets every phone's camera through.</summary>
    public long MaxPixels { get; init; } = 250_000_000;

    /// <summary>Largest file, in bytes; 256 MiB by default.</summary>
    public long MaxFileBytes { get; init; } = 256L << 20;

    /// <summary>
    /// Most memory that the decoding of one photo may take, in bytes as <see cref="PhotoFacts.WorkingBytes"/> estimates
    /// it; 1 GiB by default. A JPEG stored in one pass needs little whatever its size; a PNG needs all its pixels.
    /// </summary>
    public long MaxWorkingBytes { get; init; } = 1L << 30;
}
