namespace Layshaft.Site.Photos;

/// <summary>What is made of each photo.</summary>
public sealed record RenditionSettings
{
    /// <summary>1600 px, 960 px and 480 px on the long edge, JPEG quality 80, progressive.</summary>
    public static RenditionSettings Default { get; } = new();

    /// <summary>Longest edge of each rendition in pixels, 1 to 16,384, in any order. A photo is never enlarged.</summary>
    public IReadOnlyList<int> LongEdges { get; init; } = [1600, 960, 480];

    /// <summary>JPEG quality on the scale of the IJG tables, 1 to 100.</summary>
    public int JpegQuality { get; init; } = 80;

    /// <summary>
    /// Whether the JPEGs show all of the picture early and sharpen as they arrive, which helps where the signal is poor.
    /// Sequential ones are quicker to make.
    /// </summary>
    public bool Progressive { get; init; } = true;

    internal void Check()
    {
        if (LongEdges.Count == 0 || LongEdges.Any(edge => edge is < 1 or > 16_384))
        {
            throw new ArgumentException("Name at least one long edge, each of 1 to 16384 pixels.");
        }

        if (JpegQuality is < 1 or > 100)
        {
            throw new ArgumentException("The JPEG quality must be 1 to 100.");
        }
    }
}
