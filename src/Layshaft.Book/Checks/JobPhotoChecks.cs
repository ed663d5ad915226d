using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class JobPhotoChecks
{
    /// <summary>The name of a photo's file on the pages, which must be the same on every system.</summary>
    public static string NameOnPages(string file) =>
        string.Concat(Path.ChangeExtension(file, null).ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    public static void Run(Checker check, Job job)
    {
        var folder = $"{job.Folder}/photos/";
        check.Unique(job.Photos, p => p.File, "photos", "file");
        foreach (var twins in job.Photos.GroupBy(p => NameOnPages(p.File)).Where(g => g.Select(p => p.File).Distinct().Count() > 1))
        {
            var last = twins.Last();
            check.Problems.Add("duplicate-id", last.Origin.At("file"), $"'{last.File}' and '{twins.First().File}' would have the same file name on the pages, which ignore case, extension and punctuation.", "Rename one of them.");
        }

        string[] listed = [.. job.Photos.Select(p => p.File)];
        string[] there = [.. check.Draft.Files.Below(folder).Select(f => f.Path[folder.Length..])];
        foreach (var photo in job.Photos)
        {
            if (!there.Contains(photo.File))
            {
                check.Problems.Add("missing-file", photo.Origin.At("file"), $"There is no photo '{photo.File}' in {folder}.", Elsewhere(check, job, photo.File) is { } path ? $"Move {path} there." : NearestWord.Advice(photo.File, there));
            }

            check.Names(photo.PairedWith, listed, photo.Origin.At("paired_with"), "photo", "This job");
            foreach (var callout in photo.Callouts)
            {
                if (callout.Kind == CalloutKind.Arrow && (callout.FromX is null || callout.FromY is null))
                {
                    check.Problems.Add("arrow-without-tail", callout.Origin.Place, "An arrow needs 'from_x' and 'from_y'.", "Write the position of its tail, such as 'from_x: 20 %'.");
                }
            }
        }

        foreach (var finding in job.Findings)
        {
            foreach (var file in finding.Photos)
            {
                check.Names(file, listed, finding.Origin.At("photos"), "photo", "This job");
            }
        }

        foreach (var beside in check.Draft.Files.Below($"{job.Folder}/").Select(f => f.Path).Where(p => !p.StartsWith(folder, StringComparison.Ordinal) && IsPhoto(p) && !listed.Contains(Path.GetFileName(p))))
        {
            check.Problems.Note("photo-misplaced", Place.WholeFile(beside), $"This photo is not in {folder}, so it is not read.", "Move it there.");
        }

        foreach (var file in there.Except(listed))
        {
            check.Problems.Note("photo-not-listed", Place.WholeFile(folder + file), "This photo is in the folder, but the job does not list it.", "Add it under 'photos', name it after its part, such as ring-12-before.jpg, or move it out of the folder.");
        }
    }

    private static bool IsPhoto(string path) => Path.GetExtension(path).ToLowerInvariant() is ".jpg" or ".jpeg" or ".png" or ".webp" or ".heic" or ".avif";

    private static string? Elsewhere(Checker check, Job job, string file) =>
        check.Draft.Files.Below($"{job.Folder}/").Select(f => f.Path).FirstOrDefault(p => Path.GetFileName(p) == Path.GetFileName(file));
}
