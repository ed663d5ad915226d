using System.Globalization;
using Layshaft.Site.Photos;

namespace Layshaft.Site.Building;

/// <summary>Identifies the code that makes pictures: ours by its version, the libraries by theirs. Another build of the program makes no picture again.</summary>
internal static class PictureFingerprint
{
    /// <summary>The mark.</summary>
    public static string Value { get; } = string.Create(CultureInfo.InvariantCulture, $"pictures {PhotoRenditions.Version} {Libraries()}");

    // By reference: to load them takes longer than a publish without pictures.
    private static string Libraries() => string.Join(
        ' ',
        typeof(PictureFingerprint).Assembly.GetReferencedAssemblies()
            .Where(a => a.Name!.StartsWith("SkiaSharp", StringComparison.Ordinal) || a.Name.StartsWith("Magick", StringComparison.Ordinal) || a.Name.StartsWith("MetadataExtractor", StringComparison.Ordinal))
            .Select(a => a.FullName)
            .Order(StringComparer.Ordinal));
}
