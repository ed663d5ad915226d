using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Photos;
using Layshaft.Site.Publishing;
using SkiaSharp;

namespace Layshaft.Site.Building;

/// <summary>Makes the renditions of pictures: decoded once for all sizes and all owners of the unit that may see them.</summary>
internal static class PictureFiles
{
    /// <summary>What is shown instead of a photo that turns out to be damaged.</summary>
    public const string StandIn = "Until then a placeholder is shown.";

    /// <summary>The renditions of a job's pictures, for each owner who may see them.</summary>
    /// <remarks><c>damaged</c> takes the problem of a picture that turns out to be damaged when it is decoded, once for each file made of it.</remarks>
    public static IEnumerable<SiteFile> Of(
        Job job, IReadOnlyList<OwnerView> views, PageScope scope, Composition whole, IBookFiles files, Action<Problem> damaged)
    {
        foreach (var photo in job.Photos)
        {
            var path = $"{job.Folder}/photos/{photo.File}";
            if (whole.Pictures.Get(path) is not { } usable)
            {
                continue;
            }

            var key = PlannedOutput.KeyOf(PictureFingerprint.Value, [new PlanInput(path, usable.Hash)]);
            foreach (var view in views.Where(v => ReportPictures.MaySee(photo, v.IsOwn(job))))
            {
                foreach (var size in usable.Sizes.Reverse())
                {
                    yield return new SiteFile(
                        whole.Addresses.Picture(view, job, photo.File, size.Width),
                        scope,
                        () => scope.Latest(path, () => Render(photo, path, files)).File(size, damaged))
                    { OwnKey = key };
                }
            }
        }
    }

    /// <summary>
    /// Stands in for an image whose file turned out to be damaged while it was decoded: a plain field with a cross, so that the page
    /// keeps its shape and nobody takes it for a photo.
    /// </summary>
    /// <param name="size">Width and height in pixels.</param>
    internal static ReadOnlyMemory<byte> PlaceholderOf((int Width, int Height) size)
    {
        using var bitmap = new SKBitmap(size.Width, size.Height, SKColorType.Rgb888x, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(new SKColor(0xE4, 0xE1, 0xD8));
        using var pen = new SKPaint { Color = new SKColor(0x8A, 0x86, 0x7C), StrokeWidth = 3, IsAntialias = false };
        canvas.DrawLine(0, 0, size.Width, size.Height, pen);
        canvas.DrawLine(0, size.Height, size.Width, 0, pen);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        return data.ToArray();
    }

    private static Rendered Render(Photo photo, string path, IBookFiles files)
    {
        using var stream = files.Open(path);
        var (renditions, problem) = PhotoRenditions.Make(stream, photo.File);
        return new Rendered(renditions, renditions is not null ? null : new Problem(
            "picture", photo.Origin.At("file"), problem!.Message, StandIn, Severity.LeftOut));
    }

    private sealed record Rendered(PhotoRenditions? Renditions, Problem? Damage)
    {
        public MadeFile File((int Width, int Height) size, Action<Problem> damaged)
        {
            if (Renditions?.Sizes.FirstOrDefault(s => s.Width == size.Width) is { } made)
            {
                return MadeFile.Of(made.Jpeg);
            }

            if (Damage is not null)
            {
                damaged(Damage);
            }

            return MadeFile.Of(PlaceholderOf(size)) with { StandsIn = true };
        }
    }
}
