using System.Collections.Concurrent;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Clears the tree that was the site. Only what we wrote is removed: a stranger's file that came or changed while the new
/// tree was being staged is moved over, or kept aside if the new site has another file there.
/// </summary>
internal sealed class OldTree(StateFolder state, string root, string manifestPath, IFileWork files, int parallelism)
{
    internal void Clear(ICollection<PublishProblem> warnings)
    {
        var old = SiteTree.Walk(root);
        var now = SiteTree.Walk(state.Output);
        var others = new ConcurrentBag<TreeEntry>();
        SideBySide.ForEach(old.Entries.Where(e => e.Kind != TreeKind.Folder && e.Path != manifestPath), parallelism, entry =>
        {
            if (IsInNewSite(entry, now))
            {
                files.DeleteFile(StateFolder.Place(root, entry.Path));
            }
            else
            {
                others.Add(entry);
            }
        });

        // Few: what was made anew, and what strangers did meanwhile. The lists are read only where they are asked.
        var manifest = new Lazy<SiteManifest?>(() => ReadManifest(root, old));
        var newManifest = new Lazy<SiteManifest?>(() => ReadManifest(state.Output, now));
        foreach (var entry in others.OrderBy(e => e.Path, StringComparer.Ordinal))
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

        // Last of all, so that a killed clearing can still tell what is ours.
        if (old.Find(manifestPath) is { Kind: not TreeKind.Folder })
        {
            files.DeleteFile(StateFolder.Place(root, manifestPath));
        }

        FolderSwap.RemoveFolders(old, root, files);
    }

    private SiteManifest? ReadManifest(string folder, SiteTree tree) =>
        tree.Find(manifestPath) is { Kind: TreeKind.File } ? SiteManifest.Parse(File.ReadAllBytes(StateFolder.Place(folder, manifestPath))) : null;

    // Kept files and strangers were given a second name in the new tree: one file, so one size and one time.
    private bool IsInNewSite(TreeEntry entry, SiteTree now) => now.Find(entry.Path) is { } other && other.Kind == entry.Kind
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
        if (other is null && OutputPath.FoldersAbove(entry.Path).All(f => now.Find(f) is null or { Kind: TreeKind.Folder }))
        {
            MoveTo(from, to);
        }
        else if (other is { Kind: TreeKind.File } && other.Modified < entry.Modified && newManifest.Value?.Find(entry.Path) is null)
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
        var place = StateFolder.Place(state.Kept, path);
        var name = place;
        for (var i = 2; Path.Exists(name); i++)
        {
            name = $"{place}.{i}";
        }

        MoveTo(from, name);
        warnings.Add(new(path, $"This file was changed by hand; the one that could not stay is kept as {name}."));
    }

    private void MoveTo(string from, string to)
    {
        files.CreateFolder(Path.GetDirectoryName(to)!);
        files.Move(from, to);
    }

    private static string? TargetOf(string tree, TreeEntry entry) => new FileInfo(StateFolder.Place(tree, entry.Path)).LinkTarget;
}
