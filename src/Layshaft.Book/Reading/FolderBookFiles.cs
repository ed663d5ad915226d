using System.IO.Enumeration;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Reading;

/// <summary>The files of a book in a folder. Links are not followed; names that begin with a dot are left alone.</summary>
public sealed class FolderBookFiles : IBookFiles
{
    /// <summary>In how many others a folder may lie.</summary>
    public const int DeepestFolder = 8;

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

    /// <summary>The files of a folder that was looked through already.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="files">All files that a look at it would find, in any order.</param>
    public static FolderBookFiles Of(string folder, IEnumerable<BookFile> files) => new(Path.GetFullPath(folder), [.. files]);

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

        return new FolderBookFiles(root, Walk(root, problems));
    }

    /// <inheritdoc/>
    public bool Has(string path) => byPath.ContainsKey(path);

    /// <inheritdoc/>
    public long LengthOf(string path) => byPath.TryGetValue(path, out var file)
        ? file.Length
        : throw new FileNotFoundException($"The book has no file '{path}'.", path);

    /// <inheritdoc/>
    public byte[] Read(string path) => LengthOf(path) == 0 ? [] : RegularFile.ReadAll(Locate(path));

    /// <inheritdoc/>
    // Pipes, sockets and devices say that they hold nothing, so they count as empty files.
    public Stream Open(string path) => LengthOf(path) == 0
        ? Stream.Null
        : RegularFile.Open(Locate(path));

    // Only paths that the walk found: so '..', drives and links can't lead outside.
    private string Locate(string path) => byPath.ContainsKey(path)
        ? Path.Combine(root, path.Replace('/', Path.DirectorySeparatorChar))
        : throw new FileNotFoundException($"The book has no file '{path}'.", path);

    // Floor by floor, the folders of one side by side: ten seasons have tens of thousands.
    private static List<BookFile> Walk(string root, ProblemList problems)
    {
        var files = new List<BookFile>();
        List<string> floor = [string.Empty];
        for (var depth = 0; floor.Count > 0; depth++)
        {
            var seen = new Folder[floor.Count];
            Parallel.For(0, seen.Length, i => seen[i] = Folder.Look(root, floor[i]));
            floor = [];
            foreach (var folder in seen)
            {
                files.AddRange(folder.Files);
                problems.Add(folder.Problems);
                foreach (var inner in folder.Folders)
                {
                    if (depth >= DeepestFolder)
                    {
                        problems.Add("too-deep-folder", Place.WholeFile(inner), $"This folder is nested more than {DeepestFolder} levels deep.", "Move it out of the book.");
                        continue;
                    }

                    floor.Add($"{inner}/");
                }
            }
        }

        return files;
    }

    // What lies in one folder.
    private sealed record Folder(List<BookFile> Files, List<string> Folders, ProblemList Problems)
    {
        internal static Folder Look(string root, string prefix)
        {
            var folder = new Folder([], [], new ProblemList());
            try
            {
                foreach (var (path, kind, length, modified) in Entries(Path.Combine(root, prefix.Replace('/', Path.DirectorySeparatorChar)), prefix))
                {
                    folder.Add(path, kind, length, modified);
                }
            }
            catch (Exception e) when (e is UnauthorizedAccessException or IOException)
            {
                // A folder that cannot be looked into would otherwise vanish from the site without a word.
                folder.Problems.Add("unreadable", Place.WholeFile(prefix.TrimEnd('/')), "This folder cannot be opened.", "Check its permissions.");
            }

            return folder;
        }

        private static FileSystemEnumerable<(string Path, Kind Kind, long Length, long Modified)> Entries(string folder, string prefix) =>
            new(folder, (ref FileSystemEntry entry) => Entry(prefix, ref entry), new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = false, IgnoreInaccessible = false })
            {
                ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.FileName.StartsWith("."),
            };

        private static (string Path, Kind Kind, long Length, long Modified) Entry(string prefix, ref FileSystemEntry entry)
        {
            var path = string.Concat(prefix, entry.FileName);
            return entry.Attributes.HasFlag(FileAttributes.ReparsePoint) ? (path, Kind.Link, 0, 0)
                : entry.IsDirectory ? (path, Kind.Folder, 0, 0)
                : (path, Kind.File, entry.Length, entry.LastWriteTimeUtc.UtcTicks);
        }

        private void Add(string path, Kind kind, long length, long modified)
        {
            if (kind == Kind.Link)
            {
                Problems.Add("link", Place.WholeFile(path), "This is a link, and links in a book are not followed.", "Copy the file or folder into the book.");
            }
            else if (kind == Kind.Folder)
            {
                Folders.Add(path);
            }
            else
            {
                Files.Add(new BookFile(path, length, modified));
            }
        }
    }

    private enum Kind
    {
        File,
        Folder,
        Link,
    }
}
