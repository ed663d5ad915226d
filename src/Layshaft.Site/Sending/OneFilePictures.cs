using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Photos;

namespace Layshaft.Site.Sending;

/// <summary>The pictures of a report in falling sizes, each decoded once.</summary>
internal static class OneFilePictures
{
    private static readonly RenditionSettings Sizes = new() { LongEdges = [1600, 1200, 900, 680, 510, 380, 280, 200] };

    /// <summary>The sizes of each picture that the owner may see, under each address that the report has for it.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<ReadOnlyMemory<byte>>> Of(Composition composition, OwnerView view, Job job, IBookFiles files)
    {
        var found = new Dictionary<string, IReadOnlyList<ReadOnlyMemory<byte>>>(StringComparer.Ordinal);
        foreach (var photo in job.Photos.Where(p => ReportPictures.MaySee(p, view.IsOwn(job))))
        {
            var path = $"{job.Folder}/photos/{photo.File}";
            if (composition.Pictures.Get(path) is not { } usable)
            {
                continue;
            }

            using var stream = files.Open(path);
            IReadOnlyList<ReadOnlyMemory<byte>> sizes = PhotoRenditions.Make(stream, path, Sizes).Renditions is { } made
                ? [.. made.Sizes.OrderByDescending(s => s.Width).Select(s => s.Jpeg)]
                : [PictureFiles.PlaceholderOf(usable.Small)];
            foreach (var width in usable.Sizes.Select(s => s.Width))
            {
                found[composition.Addresses.Picture(view, job, photo.File, width)] = sizes;
            }
        }

        return found;
    }
}
