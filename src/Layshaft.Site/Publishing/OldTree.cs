namespace Layshaft.Site.Publishing;

/// <summary>
/// Sorts the tree that was the site. What we wrote is removed, or left as far as the site still has it; a stranger's file that
/// came or changed while the new tree was being staged is moved over, or kept aside if the new site has another file there.
/// </summary>
internal sealed class OldTree(StateFolder state, string root, string manifestPath, IFileWork files, int parallelism)
{
    private readonly KeptAside _aside = new(state, files);

    /// <summary>The list of files that the tree had as the site, where it is at hand; otherwise it is read when it is asked.</summary>
    internal SiteManifest? Before { get; init; }

    /// <summary>The list of files of the site, likewise.</summary>
    internal SiteManifest? Now { get; init; }

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

    private SiteTree Sort(bool leave, ICollection<PublishProblem> warnings)
    {
        var walk = Task.Run(() => SiteTree.Walk(root));
        var now = SiteTree.Walk(state.Output);
        var old = walk.GetAwaiter().GetResult();
        var manifest = new Lazy<SiteManifest?>(() => Before ?? ReadManifest(root, old));
        var newManifest = new Lazy<SiteManifest?>(() => Now ?? ReadManifest(state.Output, now));
        var (others, known) = (new List<TreeEntry>(), new List<TreeEntry>());
        foreach (var (entry, other) in Pairs(old, now))
        {
            if (Changes?.Contains(entry.Path) == true || !IsInNewSite(entry, other))
            {
                others.Add(entry);
            }
            else if (!leave || entry.Kind == TreeKind.Link || newManifest.Value?.Find(entry.Path) is null)
            {
                // Strangers' files have no second name in a spare: what they are later, only they know.
                known.Add(entry);
            }
        }

        SideBySide.ForEach(known, parallelism, entry => files.DeleteFile(StateFolder.Place(root, entry.Path)));

        // Few: what was made anew, and what strangers did meanwhile.
        foreach (var entry in others)
        {
            if (IsOurs(entry, manifest))
            {
                files.DeleteFile(StateFolder.Place(root, entry.Path));
            }
            else
            {
                Keep(entry, now, newManifest, warnings);
            }
        }

        return old;
    }

    // Every file and link of the old tree but our list, with what stands at its path in the new one. Both are in order of path.
    private IEnumerable<(TreeEntry Old, TreeEntry? Now)> Pairs(SiteTree old, SiteTree now)
    {
        using var later = now.Entries.GetEnumerator();
        var more = later.MoveNext();
        foreach (var entry in old.Entries)
        {
            while (more && string.CompareOrdinal(later.Current.Path, entry.Path) < 0)
            {
                more = later.MoveNext();
            }

            if (entry.Kind != TreeKind.Folder && entry.Path != manifestPath)
            {
                yield return (entry, more && later.Current.Path == entry.Path ? later.Current : null);
            }
        }
    }

    // Last of all, so that a killed clearing can still tell what is ours.
    private void DeleteManifest(SiteTree old)
    {
        if (old.Entries.Any(e => e.Path == manifestPath && e.Kind != TreeKind.Folder))
        {
            files.DeleteFile(StateFolder.Place(root, manifestPath));
        }
    }

    private SiteManifest? ReadManifest(string folder, SiteTree tree) =>
        tree.Find(manifestPath) is { Kind: TreeKind.File } ? SiteManifest.Parse(File.ReadAllBytes(StateFolder.Place(folder, manifestPath))) : null;

    // Kept files and strangers were given a second name in the new tree: one file, so one size and one time.
    private bool IsInNewSite(TreeEntry entry, TreeEntry? other) => other?.Kind == entry.Kind
        && (entry.Kind == TreeKind.Link
            ? TargetOf(root, entry) == TargetOf(state.Output, entry)
            : other.Size == entry.Size && other.Modified == entry.Modified);

    private bool IsOurs(TreeEntry entry, Lazy<SiteManifest?> manifest) =>
        entry.Kind == TreeKind.File && manifest.Value?.Find(entry.Path) is { } listed && listed.Size == entry.Size
        && OldSite.HashOf(StateFolder.Place(root, entry.Path)) == listed.Sha256;

    private void Keep(TreeEntry entry, SiteTree now, Lazy<SiteManifest?> newManifest, ICollection<PublishProblem> warnings)
    {
        var from = StateFolder.Place(root, entry.Path);
        var to = StateFolder.Place(state.Output, entry.Path);
        var other = now.Find(entry.Path);
        if (IntoSite && other is null && OutputPath.FoldersAbove(entry.Path).All(f => now.Find(f) is null or { Kind: TreeKind.Folder }))
        {
            MoveTo(from, to);
        }
        else if (IntoSite && other is { Kind: TreeKind.File } && other.Modified < entry.Modified && newManifest.Value?.Find(entry.Path) is null)
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
        warnings.Add(new(path, $"This file was changed by hand; the one that could not stay is kept as {name}."));
    }

    private void MoveTo(string from, string to)
    {
        files.CreateFolder(Path.GetDirectoryName(to)!);
        files.Move(from, to);
    }

    private static string? TargetOf(string tree, TreeEntry entry) => new FileInfo(StateFolder.Place(tree, entry.Path)).LinkTarget;
}
