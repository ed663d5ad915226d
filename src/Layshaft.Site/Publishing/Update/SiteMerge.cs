using System.Collections.Concurrent;

namespace Layshaft.Site.Publishing;

/// <summary>The steps of an update that change the site: what it removes, and what it moves in. Each can be repeated.</summary>
/// <param name="state">The folder beside the site.</param>
/// <param name="before">The files of the site before the update.</param>
/// <param name="files">Changes the disk.</param>
/// <param name="parallelism">The most threads at once.</param>
internal sealed class SiteMerge(StateFolder state, SiteTraces before, IFileWork files, int parallelism)
{
    // Entries of one folder that one thread takes at a time.
    private const int Share = 16;

    private readonly MovedAside _aside = new(state, files);
    private readonly ConcurrentBag<PublishProblem> _warnings = [];
    private readonly ConcurrentDictionary<string, bool> _realFolders = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();

    /// <summary>Whether a file in the stage (its path, its place on disk) is to go into the site; otherwise it came out of it.</summary>
    internal required Func<string, string, bool> IsStaged { get; init; }

    /// <summary>Which files of others were moved aside.</summary>
    internal IEnumerable<PublishProblem> Aside => _warnings;

    /// <summary>Removes our files that the site no longer has, and the folders that this empties.</summary>
    /// <param name="next">The paths of the site's files after the update.</param>
    internal void Remove(PathIndex<Trace> next)
    {
        string[] gone = [.. before.Files.Select(f => f.Path).Where(p => next.IndexOf(p) < 0)];
        Workers.ForEachInShares(gone, parallelism, path =>
        {
            if (IsInRealFolder(path) && IsAsWritten(state.Output, path))
            {
                files.DeleteFile(InSite(path));
            }
        });
        foreach (var folder in gone.SelectMany(OutputPath.FoldersAbove).Distinct(StringComparer.Ordinal).Where(f => !next.HasFolder(f)).OrderDescending(StringComparer.Ordinal))
        {
            if (IsInRealFolder(folder) && IsEmpty(state.Output, folder))
            {
                files.DeleteFolder(InSite(folder));
            }
        }

        _realFolders.Clear();
    }

    /// <summary>Moves the staged files into the site; nothing is left of the stage.</summary>
    /// <param name="next">The paths of the site's files after the update.</param>
    internal void MoveIn(PathIndex<Trace> next)
    {
        if (Directory.Exists(state.Made))
        {
            files.CreateFolder(state.Output);
            MoveIn(string.Empty, next);
        }
    }

    private void MoveIn(string folder, PathIndex<Trace> next)
    {
        string[] names = [.. Directory.EnumerateFileSystemEntries(InStage(folder)).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];
        Workers.ForEachInShares(names, parallelism, name => MoveInOne(folder.Length == 0 ? name : $"{folder}/{name}", next), Share);
        files.DeleteFolder(InStage(folder));
    }

    private void MoveInOne(string path, PathIndex<Trace> next)
    {
        var isFolder = SiteTree.EntryAt(state.Made, path) is { Kind: TreeKind.Folder };
        var there = SiteTree.EntryAt(state.Output, path);
        if (isFolder ? !next.HasFolder(path) : !IsStaged(path, InStage(path)))
        {
            PutAway(path);
        }
        else if (isFolder && there?.Kind == TreeKind.Folder)
        {
            MoveIn(path, next);
        }
        else if (there is null)
        {
            try
            {
                files.Move(InStage(path), InSite(path));
            }
            catch (IOException) when (SiteTree.EntryAt(state.Output, path) is not null)
            {
                // Somebody was quicker.
                MoveInOne(path, next);
            }
        }
        else if (files.TryExchange(InStage(path), InSite(path)))
        {
            PutAway(path);
        }
        else
        {
            if (SiteTree.EntryAt(state.Output, path) is not null && !IsAsWritten(state.Output, path))
            {
                KeepAside(InSite(path), path);
            }

            files.MoveOver(InStage(path), InSite(path));
        }
    }

    // Something that the site had.
    private void PutAway(string path)
    {
        if (IsAsWritten(state.Made, path))
        {
            files.DeleteFile(InStage(path));
        }
        else if (IsEmpty(state.Made, path))
        {
            files.DeleteFolder(InStage(path));
        }
        else
        {
            KeepAside(InStage(path), path);
        }
    }

    private void KeepAside(string from, string path)
    {
        lock (_gate)
        {
            _warnings.Add(new(path, $"This file was edited by hand. The edited version is kept as {_aside.Take(from, path)}."));
        }
    }

    // A file of ours with the size and time that were recorded long enough ago, or with the bytes.
    private bool IsAsWritten(string root, string path) => before.Files.Find(path) is { } row
        && SiteTree.EntryAt(root, path) is { Kind: TreeKind.File } there && there.Size == row.Size
        && ((there.Modified == row.Modified && row.Modified < before.TrustBefore) || OldSite.HashOf(StateFolder.Place(root, path)) == row.Sha256);

    // What is behind a link is not in the site.
    private bool IsInRealFolder(string path) => OutputPath.FoldersAbove(path).All(
        f => _realFolders.GetOrAdd(f, folder => SiteTree.EntryAt(state.Output, folder) is { Kind: TreeKind.Folder }));

    private static bool IsEmpty(string root, string folder) => SiteTree.EntryAt(root, folder) is { Kind: TreeKind.Folder }
        && !Directory.EnumerateFileSystemEntries(StateFolder.Place(root, folder)).Any();

    private string InSite(string path) => StateFolder.Place(state.Output, path);

    private string InStage(string path) => StateFolder.Place(state.Made, path);
}

/// <summary>The folder for what is not ours and could not stay where it was.</summary>
internal sealed class MovedAside(StateFolder state, IFileWork files)
{
    /// <summary>Moves something there.</summary>
    /// <param name="from">What.</param>
    /// <param name="path">Its path in the site, which it keeps, with a number behind what is taken already.</param>
    /// <returns>Where it is now.</returns>
    internal string Take(string from, string path)
    {
        var parts = path.Split('/');
        var folder = state.Kept;
        foreach (var part in parts[..^1])
        {
            folder = FirstFree(Path.Combine(folder, part), p => Path.Exists(p) && !Directory.Exists(p));
        }

        var name = FirstFree(Path.Combine(folder, parts[^1]), Path.Exists);
        files.CreateFolder(folder);
        files.Move(from, name);
        return name;
    }

    private static string FirstFree(string place, Func<string, bool> isTaken)
    {
        var name = place;
        for (var i = 2; isTaken(name); i++)
        {
            name = $"{place}.{i}";
        }

        return name;
    }
}
