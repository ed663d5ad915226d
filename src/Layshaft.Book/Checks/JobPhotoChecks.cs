using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class JobPhotoChecks
{
    /// <summary>What a picture's name becomes on the pages, where every system must take it for the same.</summary>
    public static string NameOnPages(string file) =>
        string.Concat(Path.ChangeExtension(file, null).ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    public static void Run(Checker check, Job job)
    {
        var folder = $"{job.Folder}/photos/";
        check.Unique(job.Photos, p => p.File, "pictures", "file");
        foreach (var twins in job.Photos.GroupBy(p => NameOnPages(p.File)).Where(g => g.Select(p => p.File).Distinct().Count() > 1))
        {
            var last = twins.Last();
            check.Problems.Add("duplicate-id", last.Origin.At("file"), $"On the pages '{last.File}' and '{twins.First().File}' would be one file: case, ending and signs do not count there.", "Rename one of them.");
        }

        string[] listed = [.. job.Photos.Select(p => p.File)];
        string[] there = [.. check.Draft.Files.Below(folder).Select(f => f.Path[folder.Length..])];
        foreach (var photo in job.Photos)
        {
            if (!there.Contains(photo.File))
            {
                check.Problems.Add("missing-file", photo.Origin.At("file"), $"There is no picture '{photo.File}' in {folder}.", NearestWord.Advice(photo.File, there));
            }

            check.Names(photo.PairedWith, listed, photo.Origin.At("paired_with"), "picture", "This job");
            foreach (var callout in photo.Callouts)
            {
                if (callout.Kind == CalloutKind.Arrow && (callout.FromX is null || callout.FromY is null))
                {
                    check.Problems.Add("arrow-without-tail", callout.Origin.Place, "An arrow needs from_x and from_y.", "Write where its tail is, such as from_x: 20 %.");
                }
            }
        }

        foreach (var finding in job.Findings)
        {
            foreach (var file in finding.Photos)
            {
                check.Names(file, listed, finding.Origin.At("photos"), "picture", "This job");
            }
        }

        foreach (var file in there.Except(listed))
        {
            check.Problems.Note("photo-not-listed", Place.WholeFile(folder + file), "This picture is in the folder, but the job does not mention it.", "Add it under photos, or move it out.");
        }
    }
}
