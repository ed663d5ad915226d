using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Photos;

namespace Layshaft.Site.Building;

/// <summary>Makes the renditions of pictures: decoded once for all sizes.</summary>
internal static class PictureFiles
{
    public static IEnumerable<SiteFile> Of(Photo photo, OwnerView view, Job job, Composition composition, IBookFiles files)
    {
        var path = $"{job.Folder}/photos/{photo.File}";
        if (composition.Pictures.Get(path) is not { } usable)
        {
            yield break;
        }

        var input = Fingerprints.OfFile(files, path);
        var made = new Lazy<PhotoRenditions?>(() => Render(path, files));
        foreach (var size in new[] { usable.Large, usable.Small }.Distinct())
        {
            yield return new SiteFile(
                composition.Addresses.Picture(view, job, photo.File, size.Width),
                () => MadeFile.Of(made.Value?.Sizes.FirstOrDefault(s => s.Width == size.Width)?.Jpeg ?? PicturePlaceholder.Jpeg(size)))
            { Inputs = [input] };
        }
    }

    private static PhotoRenditions? Render(string path, IBookFiles files)
    {
        using var stream = files.Open(path);
        return PhotoRenditions.Make(stream, path).Renditions;
    }
}
