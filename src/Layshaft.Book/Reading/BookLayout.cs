using System.Text.RegularExpressions;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Reading;

/// <summary>Which file of a book is what.</summary>
public static partial class BookLayout
{
    /// <summary>The shop's own file.</summary>
    public const string ShopFile = "shop.yaml";

    /// <summary>The folders whose files are read, besides <c>jobs/</c>.</summary>
    public static IReadOnlyList<string> Folders { get; } = ["customers", "gearboxes", "cars", "venues", "units"];

    /// <summary>Which kind of file stands at a path: its folder, empty for the shop's file, null for a file that is not read.</summary>
    internal static string? FolderOf(string path) =>
        path == ShopFile ? string.Empty
        : JobPath().IsMatch(path) ? "jobs"
        : path.EndsWith(".yaml", StringComparison.Ordinal) && path.Split('/') is [var folder, _] && Folders.Contains(folder) ? folder
        : null;

    internal static IEnumerable<string> FilesIn(IBookFiles files, string folder) =>
        files.Below($"{folder}/").Select(f => f.Path).Where(p => p.EndsWith(".yaml", StringComparison.Ordinal) && p.IndexOf('/', folder.Length + 1) < 0);

    internal static IEnumerable<string> JobFiles(IBookFiles files) =>
        files.Below("jobs/").Select(f => f.Path).Where(p => p.EndsWith("/job.yaml", StringComparison.Ordinal) && JobPath().IsMatch(p));

    /// <summary>The year of the latest job by the names of the folders; null if there is no job.</summary>
    /// <param name="files">The book's files.</param>
    public static int? LatestYear(IBookFiles files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return files.Below("jobs/").LastOrDefault() is { Path: { } last } ? YearOf(last) : null;
    }

    internal static int? YearOf(string jobFolder) =>
        jobFolder.Length > 9 && int.TryParse(jobFolder.AsSpan(5, 4), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var year) ? year : null;

    internal static void Check(IBookFiles files, ProblemList problems)
    {
        if (files.Has($"{ShopFile}.txt") && !files.Has(ShopFile))
        {
            Doubled($"{ShopFile}.txt", problems);
        }
        else if (!files.Has(ShopFile))
        {
            problems.Add("no-shop-file", Place.WholeFile(ShopFile), "This folder has no shop.yaml, so it is not a book.", "Name the folder with shop.yaml, or create a book with 'layshaft new-book FOLDER'.");
        }

        string[] known = [.. Folders, "jobs"];
        var told = new HashSet<string>(StringComparer.Ordinal);
        var sound = string.Empty;
        foreach (var file in files.All)
        {
            var slash = file.Path.IndexOf('/', StringComparison.Ordinal);
            var top = slash < 0 ? string.Empty : file.Path[..slash];
            if (slash > 0 && !known.Contains(top))
            {
                // Other folders may lie beside those of the book; only a likely slip is reported.
                if (NearestWord.Of(top, known) is { } near && told.Add(top))
                {
                    problems.Add("unknown-folder", Place.WholeFile(top), $"The folder '{top}' is not part of a book.", $"Did you mean '{near}'?");
                }

                continue;
            }

            if (file.Path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase) && slash > 0)
            {
                problems.Add("wrong-ending", Place.WholeFile(file.Path), "A file of a book must have the extension .yaml.", $"Rename it to '{Path.GetFileNameWithoutExtension(file.Path)}.yaml'.");
            }

            if (slash > 0 && file.Path.EndsWith(".yaml.txt", StringComparison.OrdinalIgnoreCase) && !files.Has(file.Path[..^4]))
            {
                Doubled(file.Path, problems);
                if (top == "jobs")
                {
                    told.Add(file.Path[..Math.Max(0, file.Path.LastIndexOf('/'))]);
                }
            }

            // Nearly all files lie in the folder of a job beside others.
            if (sound.Length == 0 || !file.Path.StartsWith(sound, StringComparison.Ordinal))
            {
                sound = JobFolderOf(file.Path, top, files, told, problems) ?? sound;
            }

            if (Folders.Contains(top) && file.Path.EndsWith(".yaml", StringComparison.Ordinal) && !IdName().IsMatch(file.Path[(slash + 1)..^5]))
            {
                problems.Add("bad-name", Place.WholeFile(file.Path), "A file name in a book may contain only lower-case letters, digits and hyphens.", $"Rename it, for example to '{ShortName(file.Path[(slash + 1)..^5])}.yaml'.");
            }

            Device(file.Path, problems);
        }
    }

    // Editors add .txt, and Windows hides it.
    private static void Doubled(string path, ProblemList problems) =>
        problems.Add("wrong-ending", Place.WholeFile(path), "This file has the extension .txt after .yaml, which some systems hide.", $"Rename it to '{Path.GetFileNameWithoutExtension(path)}'.");

    private static string ShortName(string name)
    {
        var words = NotInNames().Split(name.ToLowerInvariant()).Where(w => w.Length > 0);
        return string.Join('-', words) is { Length: > 0 } made ? made : "ring-2";
    }

    // The name becomes that of a page or a folder, which Windows then could not make.
    private static void Device(string path, ProblemList problems)
    {
        if (path.EndsWith(".yaml", StringComparison.Ordinal) && path.Split('/').FirstOrDefault(DeviceNames.Holds) is { } name)
        {
            problems.Add("bad-name", Place.WholeFile(path), $"'{name}' is a device name on Windows.", "Rename it.");
        }
    }

    // The folder of a job that a file is well placed in, with a slash at its end; null where there is something to say, or no job.
    private static string? JobFolderOf(string path, string top, IBookFiles files, HashSet<string> told, ProblemList problems)
    {
        if (top != "jobs")
        {
            return null;
        }

        var parts = path.Split('/');
        if (parts.Length < 4 || !JobFolder().IsMatch($"{parts[0]}/{parts[1]}/{parts[2]}"))
        {
            problems.Add("misplaced-file", Place.WholeFile(path), "The files of a job must be in jobs/YEAR/NUMBER/.", "Move the file there, for example to jobs/2026/0142/job.yaml.");
            return null;
        }

        var folder = $"{parts[0]}/{parts[1]}/{parts[2]}";
        if (files.Has(folder + "/job.yaml"))
        {
            return $"{folder}/";
        }

        if (told.Add(folder))
        {
            problems.Add("no-job-file", Place.WholeFile(folder), "This job's folder has no job.yaml.", "Add the file, or remove the folder.");
        }

        return null;
    }

    [GeneratedRegex("^jobs/[0-9]{4}/[a-z0-9]+(-[a-z0-9]+)*/job[.]yaml\\z")]
    private static partial Regex JobPath();

    [GeneratedRegex("^jobs/[0-9]{4}/[a-z0-9]+(-[a-z0-9]+)*\\z")]
    private static partial Regex JobFolder();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotInNames();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*\\z")]
    private static partial Regex IdName();
}
