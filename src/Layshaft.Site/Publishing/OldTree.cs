using Layshaft.Book.Reading;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Sorts the tree that was the site. What we wrote is removed, or left as far as the site still has it; a stranger's file that
/// came or changed while the new tree was being staged is moved over, or kept aside if the new site has another file there.
/// </summary>
internal sealed class OldTree(StateFolder state, string root, string manifestPath, IFileWork files, int parallelism)
{
    private readonly KeptAside _aside = new(state, files);
    private LeftAsSpare? _left;

    // Folders that were looked at a second time, and had the time that they had the first.
    private HashSet<string> _calm = [];

    /// <summary>The tree when it was looked at as the site, where that is at hand; otherwise its list is read when it is asked.</summary>
    internal OldSite? Seen { get; init; }

    /// <summary>The files that its list names, where they are known without reading that.</summary>
    internal SiteRegister? Listed { get; init; }

    /// <summary>Whether the disk is known to set a folder's time when a name comes into it or leaves it.</summary>
    internal bool HasFolderTimes { get; init; }

    /// <summary>The step in which it does.</summary>
    internal TimeSpan FolderClock { get; init; } = DiskClock.Coarsest;

    /// <summary>The files of the site, likewise.</summary>
    internal SiteRegister? Now { get; init; }

    /// <summary>Whether a stranger's file may go into the site: not from a tree that left it long ago.</summary>
    internal bool IntoSite { get; init; } = true;

    /// <summary>What the exchange changed, where that is known: there size and time prove nothing.</summary>
    internal SpareChanges? Changes { get; init; }

    /// <summary>Removes the tree.</summary>
    internal void Clear(ICollection<PublishProblem> warnings)
    {
        var old = Sort(leave: false, warnings);
        DeleteManifest(old);
        FolderSwap.RemoveFolders(old, root, files);
    }

    /// <summary>
    /// Leaves nothing but folders, second names of files that we wrote and the site still has, and one of the site's list, by which
    /// they can be told later.
    /// </summary>
    /// <returns>Whether the disk has second names.</returns>
    internal bool LeaveSecondNames(ICollection<PublishProblem> warnings)
    {
        var old = Sort(leave: true, warnings);
        DeleteManifest(old);
        files.CreateFolder(Path.GetDirectoryName(StateFolder.Place(root, manifestPath))!);
        return files.Link(StateFolder.Place(state.Output, manifestPath), StateFolder.Place(root, manifestPath));
    }

    /// <summary>How it was left; null where that cannot be told.</summary>
    /// <param name="place">Where the tree is now.</param>
    /// <param name="list">The hash of the site's list of files.</param>
    internal SpareNote? Note(string place, ContentHash list)
    {
        // All that the site kept must be there. That the folder of the list has another time than before shows that this disk keeps them.
        var folder = OutputPath.FoldersAbove(manifestPath).FirstOrDefault(string.Empty);
        if (_left is not { } left || left.Folders.FirstOrDefault(f => f.Path == folder) is not { } was
            || was.Modified == FolderTimes.At(StateFolder.Place(place, folder)) || !left.IsWhole)
        {
            return null;
        }

        var ofSite = left.Now.Paths.Folders().Concat(OutputPath.FoldersAbove(manifestPath)).Append(string.Empty).ToHashSet(StringComparer.Ordinal);
        return SpareNote.Of(place, [.. left.Folders.Select(f => (f.Path, left.Calm.Contains(f.Path) ? f.Modified : (long?)null))], list, ofSite, FolderClock, parallelism);
    }

    private SiteTree Sort(bool leave, ICollection<PublishProblem> warnings)
    {
        var before = new Lazy<SiteRegister>(() => Seen?.Register ?? Listed ?? ReadRegister(root));

        // What puts nothing into the site need not know what is listed there.
        var now = Now ?? (leave || IntoSite ? ReadRegister(state.Output) : SiteRegister.None);

        // Nearly all are as one of the registers notes them; of those no more than that is held.
        var (kept, left) = (new bool[now.Count], new bool[Seen?.Register.Count ?? 0]);
        var listed = new bool[leave ? 0 : before.Value.Count];
        bool IsOther(ReadOnlySpan<char> path, long size, long modified) => !(IsKept(path, size, modified, now, kept) || IsAsWritten(path, size, modified, left)
            || (!leave && IsListed(path, size, modified, before.Value, listed)));
        var old = leave && HasFolderTimes && Seen is { } seen && Changes is { } changes ? LookAtChanged(seen, changes, now, kept, IsOther) : SiteTree.Walk(root, IsOther);
        if (!leave)
        {
            Delete(now.Paths, kept);
            Delete(before.Value.Paths, listed);
        }

        Delete(Seen?.Register.Paths ?? PathTable.None, left);

        // Few: what strangers have, and what somebody changed meanwhile.
        var others = new List<TreeEntry>();
        foreach (var entry in old.Entries.Where(e => e.Kind != TreeKind.Folder && e.Path != manifestPath))
        {
            if (Changes?.Contains(entry.Path) == true || !IsInNewSite(entry))
            {
                others.Add(entry);
            }
            else if (!leave || entry.Kind == TreeKind.Link || now.Paths.IndexOf(entry.Path) < 0)
            {
                // Strangers' files have no second name in a spare: what they are later, only they know.
                files.DeleteFile(StateFolder.Place(root, entry.Path));
            }
        }

        foreach (var entry in others)
        {
            if (IsOurs(entry, before.Value))
            {
                files.DeleteFile(StateFolder.Place(root, entry.Path));
            }
            else
            {
                Keep(entry, now, warnings);
            }
        }

        var isWhole = Enumerable.Range(0, kept.Length).All(i => kept[i] || (Changes is { } other && now.Paths.PlaceIn(other.Paths, i) >= 0));
        _calm.ExceptWith(Touched(old, left));
        _left = leave ? new(now, [.. (Seen?.Others.Folders ?? []).UnionBy(old.Folders, f => f.Path, StringComparer.Ordinal)], _calm, isWhole) : null;
        return old;
    }

    // Only folders into which a name came since the tree was looked at, and files that the site does not keep or that somebody wrote to. What
    // else somebody writes to the site has by a second name.
    private SiteTree LookAtChanged(OldSite seen, SpareChanges changes, SiteRegister now, bool[] kept, FileChoice isOther)
    {
        TreeEntry[] folders = [.. seen.Others.Folders];
        var freshFrom = DiskClock.FreshFrom(seen.Began, FolderClock);
        var times = FolderTimes.Of(root, [.. folders.Select(f => f.Path)], parallelism);
        string[] restless = [.. folders.Where((f, i) => times[i] != f.Modified || f.Modified >= freshFrom).Select(f => f.Path)];
        _calm = folders.Select(f => f.Path).Except(restless, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        Array.Fill(kept, true);
        var unsure = SecondNames.Unsure(seen, now.Paths, kept, changes, restless)
            .Concat(seen.Others.Entries.Where(e => e.Kind != TreeKind.Folder).Select(e => e.Path));
        return SiteTree.LookAt(root, unsure.Append(manifestPath).Distinct(StringComparer.Ordinal), restless, folders.Select(f => f.Path).ToHashSet(StringComparer.Ordinal), isOther);
    }

    // Where we removed something, or put the list.
    private IEnumerable<string> Touched(SiteTree old, bool[] left) => old.Entries.Where(e => e.Kind != TreeKind.Folder).Select(e => e.Path)
        .Concat(Enumerable.Range(0, left.Length).Where(i => left[i]).Select(i => Seen!.Register.Paths.TextOf(i)))
        .Append(manifestPath)
        .Select(p => OutputPath.FoldersAbove(p).FirstOrDefault(string.Empty));

    private void Delete(PathTable paths, bool[] which) => SideBySide.ForEach(
        Enumerable.Range(0, which.Length).Where(i => which[i]), parallelism, i => files.DeleteFile(StateFolder.Place(root, paths.TextOf(i))));

    // Kept files were given a second name in the new tree: one file, so one size and one time.
    private bool IsKept(ReadOnlySpan<char> path, long size, long modified, SiteRegister now, bool[] kept)
    {
        var index = now.Paths.IndexOf(path);
        return index >= 0 && now[index].Size == size && now[index].Modified == modified && Changes?.Contains(path) != true && (kept[index] = true);
    }

    // What left the site or was made anew, and was last seen whole long enough ago that any change since shows in its time.
    private bool IsAsWritten(ReadOnlySpan<char> path, long size, long modified, bool[] left)
    {
        if (Seen?.Register is not { } before)
        {
            return false;
        }

        var index = before.Paths.IndexOf(path);
        return index >= 0 && before[index].Size == size && before[index].Modified == modified && modified < before.TrustBefore && (left[index] = true);
    }

    // The site has it, or it has our bytes. Asked while the tree is walked: where nothing is known of their times, that is every file.
    private bool IsListed(ReadOnlySpan<char> path, long size, long modified, SiteRegister before, bool[] listed)
    {
        if (before.Paths.IndexOf(path) is not (>= 0 and var index) || Changes?.Contains(path) == true)
        {
            return false;
        }

        var entry = new TreeEntry(new string(path), TreeKind.File, size, modified);
        return (IsInNewSite(entry) || IsOurs(entry, before)) && (listed[index] = true);
    }

    // Last of all, so that a killed clearing can still tell what is ours.
    private void DeleteManifest(SiteTree old)
    {
        if (old.Entries.Any(e => e.Path == manifestPath && e.Kind != TreeKind.Folder))
        {
            files.DeleteFile(StateFolder.Place(root, manifestPath));
        }
    }

    private SiteRegister ReadRegister(string folder)
    {
        var list = StateFolder.Place(folder, manifestPath);
        return File.Exists(list) && SiteManifest.Parse(RegularFile.ReadAll(list)) is { } manifest ? SiteRegister.Of(manifest, OldSite.HashOf(list), SiteRegister.None) : SiteRegister.None;
    }

    // Strangers were given a second name too, so that is one file, of one size and one time.
    private bool IsInNewSite(TreeEntry entry) => SiteTree.EntryAt(state.Output, entry.Path) is { } other && other.Kind == entry.Kind
        && (entry.Kind == TreeKind.Link
            ? TargetOf(root, entry) == TargetOf(state.Output, entry)
            : other.Size == entry.Size && other.Modified == entry.Modified);

    private bool IsOurs(TreeEntry entry, SiteRegister before) =>
        entry.Kind == TreeKind.File && before.Find(entry.Path) is { } listed && listed.Size == entry.Size
        && OldSite.HashOf(StateFolder.Place(root, entry.Path)) == listed.Sha256;

    private void Keep(TreeEntry entry, SiteRegister now, ICollection<PublishProblem> warnings)
    {
        var from = StateFolder.Place(root, entry.Path);
        var to = StateFolder.Place(state.Output, entry.Path);
        var other = SiteTree.EntryAt(state.Output, entry.Path);
        if (IntoSite && other is null && OutputPath.FoldersAbove(entry.Path).All(f => SiteTree.EntryAt(state.Output, f) is null or { Kind: TreeKind.Folder }))
        {
            MoveTo(from, to);
        }
        else if (IntoSite && other is { Kind: TreeKind.File } && other.Modified < entry.Modified && now.Find(entry.Path) is null)
        {
            // A stranger saved his file after the new tree got the one before: the later one is his.
            KeepAside(to, entry.Path, warnings);
            MoveTo(from, to);
        }
        else
        {
            KeepAside(from, entry.Path, warnings);
        }
    }

    private void KeepAside(string from, string path, ICollection<PublishProblem> warnings)
    {
        var name = _aside.Take(from, path);
        warnings.Add(new(path, $"This file was edited by hand. The edited version is kept as {name}."));
    }

    private void MoveTo(string from, string to)
    {
        files.CreateFolder(Path.GetDirectoryName(to)!);
        files.Move(from, to);
    }

    private static string? TargetOf(string tree, TreeEntry entry) => new FileInfo(StateFolder.Place(tree, entry.Path)).LinkTarget;

    // What is left of the tree: the site's files, its folders as they were looked at, those of which the time is still that, and whether all that
    // the site kept is there.
    private sealed record LeftAsSpare(SiteRegister Now, IReadOnlyList<TreeEntry> Folders, IReadOnlySet<string> Calm, bool IsWhole);
}
