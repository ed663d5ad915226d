using Layshaft.Book.Reading;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Publishing;

/// <summary>Which folders a site may be published into.</summary>
public static class OutputFolder
{
    // Never an output folder themselves.
    private static readonly string[] WellKnown =
    [
        "/home", "/root", "/opt", "/srv", "/tmp", "/var", "/var/tmp", "/mnt", "/media", "/run", "/usr/local",
        "/Users", "/Volumes", "/private", "/private/tmp", "/private/var",
    ];

    // Nor anything below these.
    private static readonly string[] System =
    [
        "/bin", "/boot", "/dev", "/etc", "/lib", "/lib32", "/lib64", "/proc", "/sbin", "/sys", "/usr/bin", "/usr/lib", "/usr/sbin",
        "/Applications", "/Library", "/System", "/private/etc",
        Environment.GetFolderPath(Environment.SpecialFolder.Windows),
        Environment.GetFolderPath(Environment.SpecialFolder.ProgramFiles),
        Environment.GetFolderPath(Environment.SpecialFolder.ProgramFilesX86),
    ];

    private static readonly Environment.SpecialFolder[] Personal =
    [
        Environment.SpecialFolder.UserProfile, Environment.SpecialFolder.Desktop, Environment.SpecialFolder.MyDocuments,
        Environment.SpecialFolder.MyPictures, Environment.SpecialFolder.MyMusic, Environment.SpecialFolder.MyVideos,
        Environment.SpecialFolder.ApplicationData, Environment.SpecialFolder.LocalApplicationData,
    ];

    // Where case does not tell names apart, a book must not be missed because of it; elsewhere this refuses a little too much.
    private const StringComparison Names = StringComparison.OrdinalIgnoreCase;

    /// <summary>What is wrong with an output folder, or null.</summary>
    /// <param name="folder">The folder, which need not exist.</param>
    /// <param name="book">The book folder, or null.</param>
    public static PublishProblem? ProblemWith(string folder, string? book)
    {
        if (string.IsNullOrWhiteSpace(folder))
        {
            return new("", "The output folder is missing. Name a folder, such as 'reports'.");
        }

        var real = RealPath(folder);
        if (FileOn(real) is { } file)
        {
            return new(folder, $"'{file}' is a file. Name a folder.");
        }

        if (Path.GetDirectoryName(real) is null || IsAny(WellKnown, real) || IsAny(Personal.Select(Environment.GetFolderPath), real)
            || System.Any(s => s.Length > 0 && IsSameOrBelow(real, s)))
        {
            return new(folder, "This folder belongs to the system or contains more than a site. Name a folder used only for the site, such as 'reports'.");
        }

        if (Path.GetFileName(real).StartsWith(StateFolder.Prefix, Names))
        {
            return new(folder, $"Folder names that begin with '{StateFolder.Prefix}' are reserved. Name another folder.");
        }

        return book is null ? null : ProblemWithin(folder, real, RealPath(book));
    }

    private static PublishProblem? ProblemWithin(string folder, string real, string book)
    {
        if (IsSameOrBelow(book, real))
        {
            return new(folder, $"This folder is the book or contains it. Name a folder outside the book, or a new folder, such as '{Path.Combine(folder, "reports")}'.");
        }

        return BookLayout.Folders.Append("jobs").Append(TemplateFolders.BookFolder).FirstOrDefault(f => IsSameOrBelow(real, Path.Combine(book, f))) is { } own
            ? new(folder, $"This folder is in '{own}' of the book, which contains the book's own files. Name another folder, such as '{Path.Combine(book, "reports")}'.")
            : null;
    }

    // A folder's own path, or the one of a folder above it, may be that of a file.
    private static string? FileOn(string? path)
    {
        while (path is not null && !Directory.Exists(path))
        {
            if (File.Exists(path))
            {
                return path;
            }

            path = Path.GetDirectoryName(path);
        }

        return null;
    }

    /// <summary>The full path with every link in it followed, as far as it exists.</summary>
    internal static string RealPath(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        var root = Path.GetPathRoot(full)!;
        var real = root;
        foreach (var part in full[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            real = Path.Combine(real, part);
            if (new DirectoryInfo(real) is { Exists: true, LinkTarget: not null } link
                && link.ResolveLinkTarget(returnFinalTarget: true) is { } target)
            {
                real = RealPath(target.FullName);
            }
        }

        return real;
    }

    private static bool IsAny(IEnumerable<string> folders, string real) =>
        folders.Any(f => f.Length > 0 && string.Equals(RealPath(f), real, Names));

    private static bool IsSameOrBelow(string inner, string outer) =>
        string.Equals(inner, outer, Names)
        || inner.StartsWith(Path.TrimEndingDirectorySeparator(outer) + Path.DirectorySeparatorChar, Names);
}
