namespace Layshaft.Site.Photos;

/// <summary>One size of a photo: upright, sRGB, without any metadata.</summary>
/// <param name="Width">Width in pixels.</param>
/// <param name="Height">Height in pixels.</param>
/// <param name="Jpeg">The file's bytes.</param>
public sealed record Rendition(int Width, int Height, ReadOnlyMemory<byte> Jpeg);
