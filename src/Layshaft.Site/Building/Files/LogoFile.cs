using System.Security.Cryptography;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Photos;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>The shop's logo: made ready like a photo, so that nothing but the picture itself is published.</summary>
internal static class LogoFile
{
    // Shown at most 48 px high; three times that is sharp on a phone and on paper.
    private static readonly RenditionSettings Settings = new() { LongEdges = [400], JpegQuality = 92, Progressive = false };

    /// <summary>Looks at the logo; one that cannot be read is a problem at its line, and pages show the shop's name instead.</summary>
    public static UsablePicture? Inspect(Shop shop, IBookFiles files, ProblemList problems)
    {
        if (shop.Logo is not { } logo || !files.Has(logo))
        {
            return null;
        }

        var (made, problem) = Make(logo, files);
        if (problem is not null)
        {
            problems.Add(new Problem("picture", shop.Origin.At("logo"), problem.Message, string.Empty, made is null ? Severity.LeftOut : Severity.Notice));
        }

        return made is { Sizes: [var size, ..] }
            ? new UsablePicture(logo, (size.Width, size.Height), (size.Width, size.Height)) { Hash = Convert.ToHexStringLower(SHA256.HashData(files.Read(logo))) }
            : null;
    }

    /// <summary>The file of the logo in a tree of the site; none where it cannot be shown.</summary>
    public static IEnumerable<SiteFile> Of(string tree, PageScope scope, Composition composition, IBookFiles files)
    {
        if (composition.Shop.Logo is { } logo && composition.Pictures.Get(logo) is { } usable)
        {
            yield return new SiteFile(
                Addresses.Logo(tree),
                scope,
                () => MadeFile.Of(scope.Once(logo, () => Make(logo, files)).Renditions?.Sizes[0].Jpeg ?? PictureFiles.PlaceholderOf(usable.Large)))
            { OwnKey = PlannedOutput.KeyOf(ProgramFingerprint.Value, [new PlanInput(logo, usable.Hash)]) };
        }
    }

    private static RenditionResult Make(string logo, IBookFiles files)
    {
        using var stream = files.Open(logo);
        return PhotoRenditions.Make(stream, logo, Settings);
    }
}
