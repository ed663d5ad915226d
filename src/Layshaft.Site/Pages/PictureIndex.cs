namespace Layshaft.Site.Pages;

/// <summary>A picture that can be shown: its upright size, and the sizes of its renditions.</summary>
/// <param name="Path">Path in the book.</param>
/// <param name="Large">Width and height of the large rendition, in pixels.</param>
/// <param name="Small">Width and height of the small rendition, in pixels.</param>
public sealed record UsablePicture(string Path, (int Width, int Height) Large, (int Width, int Height) Small)
{
    /// <summary>Width and height of the rendition between them, in pixels; that of a neighbour where the picture is small.</summary>
    public (int Width, int Height) Middle { get; init; } = Large;

    /// <summary>The sizes of its renditions, smallest first.</summary>
    public IEnumerable<(int Width, int Height)> Sizes => new[] { Small, Middle, Large }.Distinct();

    /// <summary>SHA-256 of its file; empty where nobody needs it.</summary>
    public string Hash { get; init; } = string.Empty;
}

/// <summary>The book's pictures that can be shown, by path. Those that can't be read are left out.</summary>
/// <param name="Usable">By path in the book.</param>
public sealed record PictureIndex(IReadOnlyDictionary<string, UsablePicture> Usable)
{
    /// <summary>The picture at a path, or null when it can't be shown.</summary>
    public UsablePicture? Get(string path) => Usable.TryGetValue(path, out var picture) ? picture : null;
}
