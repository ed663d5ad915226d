using Layshaft.Book.Reading;
using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>A photo made ready for a page: upright, sRGB, flattened on white, and rid of all metadata.</summary>
/// <remarks>The same file and settings always give the same bytes, on any thread and in any culture.</remarks>
/// <param name="Facts">What the header of the original says.</param>
/// <param name="Sizes">The renditions, largest first; one only where the photo is smaller than all long edges.</param>
/// <param name="AverageColour">The photo's mean colour as <c>#rrggbb</c>, for the place where it will appear.</param>
public sealed record PhotoRenditions(PhotoFacts Facts, IReadOnlyList<Rendition> Sizes, string AverageColour)
{
    /// <summary>The version of the code that makes them: raise it when their bytes or sizes change. All photos are made again then, and only then.</summary>
    public const int Version = 1;

    /// <summary>Makes the renditions of a file on disk; a file that cannot be used is a problem, not an exception.</summary>
    /// <param name="path">The file.</param>
    /// <param name="settings">What to make; <see cref="RenditionSettings.Default"/> if null.</param>
    /// <param name="limits">How large the photo may be; <see cref="PhotoLimits.Default"/> if null.</param>
    /// <exception cref="ArgumentException">The path is blank, or the settings are out of range.</exception>
    public static RenditionResult Make(string path, RenditionSettings? settings = null, PhotoLimits? limits = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        try
        {
            using var content = RegularFile.Open(path);
            return Make(content, Path.GetFileName(path), settings, limits);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(null, PhotoProblems.CannotOpen(Path.GetFileName(path), e));
        }
    }

    /// <summary>Makes the renditions of an open file.</summary>
    /// <param name="content">A stream that can seek.</param>
    /// <param name="fileName">The name to speak of in messages.</param>
    /// <param name="settings">What to make; <see cref="RenditionSettings.Default"/> if null.</param>
    /// <param name="limits">How large the photo may be; <see cref="PhotoLimits.Default"/> if null.</param>
    /// <exception cref="ArgumentException">The stream cannot seek, the name is blank, or the settings are out of range.</exception>
    public static RenditionResult Make(Stream content, string fileName, RenditionSettings? settings = null, PhotoLimits? limits = null)
    {
        settings ??= RenditionSettings.Default;
        settings.Check();
        var (facts, problem) = PhotoFile.Inspect(content, fileName, limits);
        if (facts is null)
        {
            return new(null, problem);
        }

        using var share = DecodeBudget.Shared.Take(facts.WorkingBytes);
        content.Position = 0;
        using var data = facts.InWindows ? null : SKData.Create(content, content.Length);
        var edges = settings.LongEdges.Distinct().OrderDescending().ToList();
        var (width, height) = Fit(facts.StoredWidth, facts.StoredHeight, edges[0]);
        using DecodedRows? rows = facts.InWindows ? SkiaRows.Open(content, facts)
            : data is null ? null
            : facts.Format is PhotoFormat.Heic or PhotoFormat.Avif ? HeifRows.Open(data, facts)
            : SkiaRows.Open(data, facts, width, height);
        if (rows is null)
        {
            return new(null, PhotoProblems.Damaged(fileName, facts.Format));
        }

        if (facts.Format == PhotoFormat.Jpeg && !JpegHeader.IsWhole(data!))
        {
            return new(null, PhotoProblems.CutShort(fileName));
        }

        using var largest = Largest(rows, edges[0]);
        return largest is not null ? new(Write(largest, rows, edges, facts, settings), problem)
            : rows.IsDamaged ? new(null, PhotoProblems.Damaged(fileName, facts.Format))
            : new(null, PhotoProblems.CutShort(fileName, rows.RowsRead, rows.Height));
    }

    /// <summary>Width and height of the renditions of an upright photo, largest first, without decoding it.</summary>
    /// <param name="facts">What the header of the original says.</param>
    /// <param name="settings">What would be made; <see cref="RenditionSettings.Default"/> if null.</param>
    public static IReadOnlyList<(int Width, int Height)> SizesOf(PhotoFacts facts, RenditionSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var edges = (settings ?? RenditionSettings.Default).LongEdges.Distinct().OrderDescending();
        return [.. edges.Select(edge => Fit(facts.UprightWidth, facts.UprightHeight, edge)).Distinct()];
    }

    // Long edge to the edge wanted, short edge in proportion, never larger than it is
    private static (int Width, int Height) Fit(int width, int height, int edge)
    {
        var longest = Math.Max(width, height);
        return longest <= edge ? (width, height) : (Scale(width), Scale(height));

        int Scale(int side) => (int)Math.Max(1, (((long)side * edge) + (longest / 2)) / longest);
    }

    private static Picture? Largest(DecodedRows rows, int edge)
    {
        var (width, height) = Fit(rows.FullWidth, rows.FullHeight, edge);
        var stored = Shrinker.Shrink(rows, width, height);
        if (stored is null)
        {
            return null;
        }

        var coloured = Replace(stored, PictureColour.ToSrgb(stored, rows.Space));
        return Replace(coloured, PictureTurn.Upright(coloured, rows.Orientation));
    }

    private static PhotoRenditions Write(Picture largest, DecodedRows rows, List<int> edges, PhotoFacts facts, RenditionSettings settings)
    {
        var picture = largest;
        var sizes = new List<Rendition>();
        foreach (var edge in edges)
        {
            var (width, height) = Fit(rows.FullWidth, rows.FullHeight, edge);
            (width, height) = rows.Orientation >= PhotoOrientation.LeftTop ? (height, width) : (width, height);
            if (width != picture.Width || height != picture.Height)
            {
                var smaller = Shrinker.Shrink(new PictureRows(picture), width, height)!;
                picture = picture == largest ? smaller : Replace(picture, smaller);
            }
            else if (sizes.Count > 0)
            {
                continue; // The photo is smaller than both edges
            }

            sizes.Add(new(width, height, JpegWriter.Write(picture, settings)));
        }

        var average = PictureColour.Average(picture);
        if (picture != largest)
        {
            picture.Dispose();
        }

        return new(facts, sizes, average);
    }

    private static Picture Replace(Picture old, Picture with)
    {
        if (old != with)
        {
            old.Dispose();
        }

        return with;
    }
}
