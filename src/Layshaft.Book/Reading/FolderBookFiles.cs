using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Reading;

/// <summary>The files of a book in a folder. Links are not followed; names that begin with a dot are left alone.</summary>
public sealed class FolderBookFiles : IBookFiles
{
    private const int DeepestFolder = 8;

    private readonly string root;
    private readonly Dictionary<string, BookFile> byPath;

    private FolderBookFiles(string root, List<BookFile> files)
    {
        this.root = root;
        files.Sort((a, b) => string.CompareOrdinal(a.Path, b.Path));
        All = files;
        byPath = files.ToDictionary(f => f.Path, StringComparer.Ordinal);
    }

    /// <inheritdoc/>
    public IReadOnlyList<BookFile> All { get; }

    /// <summary>Looks through a folder.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="problems">Receives what can't be used, such as links.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static FolderBookFiles Look(string folder, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var root = Path.GetFullPath(folder);
        if (!Directory.Exists(root))
        {
            throw new DirectoryNotFoundException($"There is no folder '{folder}'.");
        }

        var files = new List<BookFile>();
        Walk(new DirectoryInfo(root), string.Empty, 0, files, problems);
        return new FolderBookFiles(root, files);
    }

    /// <inheritdoc/>
    public bool Has(string path) => byPath.ContainsKey(path);

    /// <inheritdoc/>
    public long LengthOf(string path) => byPath.TryGetValue(path, out var file)
        ? file.Length
        : throw new FileNotFoundException($"The book has no file '{path}'.", path);

    /// <inheritdoc/>
    public byte[] Read(string path) => LengthOf(path) == 0 ? [] : File.ReadAllBytes(Locate(path));

    /// <inheritdoc/>
    // Pipes, sockets and devices say that they hold nothing; opened, they might never end. So nothing empty is opened.
    public Stream Open(string path) => LengthOf(path) == 0
        ? Stream.Null
        : new FileStream(Locate(path), FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);

    // Only paths that the walk found: so '..', drives and links can't lead outside.
    private string Locate(string path) => byPath.ContainsKey(path)
        ? Path.Combine(root, path.Replace('/', Path.DirectorySeparatorChar))
        : throw new FileNotFoundException($"The book has no file '{path}'.", path);

    // A folder that cannot be looked into would otherwise vanish from the site without a word.
    private static FileSystemInfo[] Entries(DirectoryInfo folder, string prefix, ProblemList problems)
    {
        try
        {
            return folder.GetFileSystemInfos("*", new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = false, IgnoreInaccessible = false });
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            problems.Add("unreadable", Place.WholeFile(prefix.TrimEnd('/')), "This folder can't be looked into.", "Check its permissions.");
            return [];
        }
    }

    private static void Walk(DirectoryInfo folder, string prefix, int depth, List<BookFile> files, ProblemList problems)
    {
        foreach (var entry in Entries(folder, prefix, problems))
        {
            if (entry.Name.StartsWith('.'))
            {
                continue;
            }

            var path = prefix + entry.Name;
            if (entry.Attributes.HasFlag(FileAttributes.ReparsePoint))
            {
                problems.Add("link", Place.WholeFile(path), "This is a link to somewhere else; a book holds its files itself.", "Copy the file or folder into the book.");
            }
            else if (entry is DirectoryInfo inner)
            {
                if (depth >= DeepestFolder)
                {
                    problems.Add("too-deep-folder", Place.WholeFile(path), $"Folders are nested deeper than {DeepestFolder} levels here.", "Move this out of the book.");
                    continue;
                }

                Walk(inner, path + "/", depth + 1, files, problems);
            }
            else if (entry is FileInfo file)
            {
                files.Add(new BookFile(path, file.Length, file.LastWriteTimeUtc.Ticks));
            }
        }
    }
}
