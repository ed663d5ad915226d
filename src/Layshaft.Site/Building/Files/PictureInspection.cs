using System.Security.Cryptography;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Pages;
using Layshaft.Site.Photos;

namespace Layshaft.Site.Building;

/// <summary>Looks at the header of each picture: what can be shown, and how large.</summary>
public static class PictureInspection
{
    /// <summary>What is wrong with the photos of a book and its logo, by their headers and ends; no picture library is loaded for it unless one looks damaged.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files.</param>
    public static IReadOnlyList<Problem> ProblemsOf(ShopBook book, IBookFiles files)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(files);
        var photos = book.Jobs.SelectMany(j => j.Photos.Select(p => (Path: PathOf(j, p), Place: p.Origin.At("file"), StandIn: PictureFiles.StandIn)));
        var logo = book.Shop.Logo is { } path && files.Has(path) ? new[] { (Path: path, Place: book.Shop.Origin.At("logo"), StandIn: string.Empty) } : [];
        (string Path, Place Place, string StandIn)[] pictures = [.. photos.Concat(logo)];
        var problems = new Problem?[pictures.Length];
        Parallel.For(0, pictures.Length, i => problems[i] = ProblemInFile(pictures[i].Path, pictures[i].Place, pictures[i].StandIn, files));
        return [.. problems.OfType<Problem>()];
    }

    /// <summary>The pictures of a book, the shop's logo among them.</summary>
    internal static PictureIndex Of(ShopBook book, IBookFiles files, FileCache? memory, ProblemList problems)
    {
        var usable = OfJobs(book.Jobs, files, memory, problems);
        if (LogoFile.Inspect(book.Shop, files, problems) is { } logo)
        {
            usable[logo.Path] = logo;
        }

        return new PictureIndex(usable);
    }

    /// <summary>The pictures of some jobs, by path.</summary>
    internal static Dictionary<string, UsablePicture> OfJobs(IReadOnlyList<Job> jobs, IBookFiles files, FileCache? memory, ProblemList problems)
    {
        var usable = new Dictionary<string, UsablePicture>(StringComparer.Ordinal);
        foreach (var job in jobs)
        {
            foreach (var photo in job.Photos)
            {
                var path = PathOf(job, photo);
                var file = files.Below(path).First();
                if (memory?.Recall(file) is { } known)
                {
                    usable[path] = known;
                    continue;
                }

                using var stream = files.Open(path);
                var inspection = PhotoFile.Inspect(stream, photo.File);
                var (facts, problem) = inspection;
                if (ProblemOf(inspection, photo.Origin.At("file")) is { } told)
                {
                    problems.Add(told);
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

    private static string PathOf(Job job, Photo photo) => $"{job.Folder}/photos/{photo.File}";

    private static Problem? ProblemInFile(string path, Place place, string standIn, IBookFiles files)
    {
        try
        {
            using var stream = files.Open(path);
            var name = Path.GetFileName(path);
            var head = PhotoFile.InspectHead(stream, name);
            return head.Facts is { } facts && !PhotoEnd.LooksWhole(stream, facts.Format)
                ? ProblemOf(Decoded(stream, name), place, standIn)
                : ProblemOf(head, place);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Problem("unreadable", place, "This file cannot be opened.", "Close it in other programs and check its permissions.");
        }
    }

    // Only the decoder can tell whether a doubtful picture can be shown; a publish asks the same.
    private static PhotoInspection Decoded(Stream stream, string name)
    {
        var (made, problem) = PhotoRenditions.Make(stream, name);
        return new(made?.Facts, problem);
    }

    private static Problem? ProblemOf(PhotoInspection inspection, Place place, string remedy = "") => inspection.Problem is { } problem
        ? new Problem("picture", place, problem.Message, inspection.Facts is null ? remedy : string.Empty, inspection.Facts is null ? Severity.LeftOut : Severity.Notice)
        : null;
}
