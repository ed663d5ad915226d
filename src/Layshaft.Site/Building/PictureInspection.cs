using System.Security.Cryptography;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Photos;

namespace Layshaft.Site.Building;

/// <summary>Looks at the header of each picture: what can be shown, and how large.</summary>
internal static class PictureInspection
{
    /// <summary>The pictures of a book, the shop's logo among them.</summary>
    public static PictureIndex Of(ShopBook book, IBookFiles files, FileMemory? memory, ProblemList problems)
    {
        var usable = OfJobs(book.Jobs, files, memory, problems);
        if (LogoFile.Inspect(book.Shop, files, problems) is { } logo)
        {
            usable[logo.Path] = logo;
        }

        return new PictureIndex(usable);
    }

    /// <summary>The pictures of some jobs, by path.</summary>
    public static Dictionary<string, UsablePicture> OfJobs(IReadOnlyList<Job> jobs, IBookFiles files, FileMemory? memory, ProblemList problems)
    {
        var usable = new Dictionary<string, UsablePicture>(StringComparer.Ordinal);
        foreach (var job in jobs)
        {
            foreach (var photo in job.Photos)
            {
                var path = $"{job.Folder}/photos/{photo.File}";
                var file = files.Below(path).First();
                if (memory?.Recall(file) is { } known)
                {
                    usable[path] = known;
                    continue;
                }

                using var stream = files.Open(path);
                var (facts, problem) = PhotoFile.Inspect(stream, photo.File);
                if (problem is not null)
                {
                    var severity = facts is null ? Severity.LeftOut : Severity.Notice;
                    problems.Add(new Problem("picture", photo.Origin.At("file"), problem.Message, string.Empty, severity));
                }

                if (facts is not null)
                {
                    var sizes = PhotoRenditions.SizesOf(facts);
                    stream.Position = 0;
                    usable[path] = new UsablePicture(path, sizes[0], sizes[^1]) { Middle = sizes[Math.Min(1, sizes.Count - 1)], Hash = Convert.ToHexStringLower(SHA256.HashData(stream)) };
                    if (problem is null)
                    {
                        memory?.Note(file, usable[path]);
                    }
                }
            }
        }

        return usable;
    }
}
