using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Photos;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Makes the renditions of pictures: decoded once for all sizes and all owners of the unit that may see them.</summary>
internal static class PictureFiles
{
    /// <summary>The renditions of a job's pictures, for each owner who may see them.</summary>
    public static IEnumerable<SiteFile> Of(Job job, IReadOnlyList<OwnerView> views, PageScope scope, Composition whole, IBookFiles files)
    {
        foreach (var photo in job.Photos)
        {
            var path = $"{job.Folder}/photos/{photo.File}";
            if (whole.Pictures.Get(path) is not { } usable)
            {
                continue;
            }

            PlanInput[] inputs = [new PlanInput(path, usable.Hash)];
            foreach (var view in views.Where(v => ReportPictures.MaySee(photo, v.IsOwn(job))))
            {
                foreach (var size in new[] { usable.Large, usable.Small }.Distinct())
                {
                    yield return new SiteFile(
                        whole.Addresses.Picture(view, job, photo.File, size.Width),
                        scope,
                        () => MadeFile.Of(scope.Latest(path, () => Render(path, files)).Jpeg(size)))
                    { Inputs = inputs };
                }
            }
        }
    }

    private static Rendered Render(string path, IBookFiles files)
    {
        using var stream = files.Open(path);
        return new Rendered(PhotoRenditions.Make(stream, path).Renditions);
    }

    private sealed record Rendered(PhotoRenditions? Renditions)
    {
        public ReadOnlyMemory<byte> Jpeg((int Width, int Height) size) =>
            Renditions?.Sizes.FirstOrDefault(s => s.Width == size.Width)?.Jpeg ?? PicturePlaceholder.Jpeg(size);
    }
}
