
namespace Layshaft.Site.Publishing;

/// <summary>
/// What is in the output folder and not ours: files that we did not write, ones that we wrote and someone changed after
/// they had left the plan, and folders that hold nothing of ours.
/// </summary>
internal sealed class ForeignFiles
{
    private ForeignFiles(IReadOnlyList<TreeEntry> entries, IReadOnlyList<string> edited, IReadOnlyList<string> names) =>
        (Entries, Edited, Names) = (entries, edited, names);

    internal IReadOnlyList<TreeEntry> Entries { get; }

    /// <summary>Files of ours that left the plan and stay because someone changed them.</summary>
    internal IReadOnlyList<string> Edited { get; }

    /// <summary>Their names for a person to read; a folder is named in place of everything in it.</summary>
    internal IReadOnlyList<string> Names { get; }

    /// <summary>Finds them.</summary>
    /// <param name="old">The site before the publish.</param>
    /// <param name="left">The places of our files that the site to be does not have.</param>
    /// <param name="manifestPath">Where the manifest is.</param>
    internal static ForeignFiles Find(OldSite old, IEnumerable<int> left, string manifestPath)
    {
        var edited = left.Where(i => !old.IsIntact(i)).Select(i => old.Files[i].Path).Where(p => old.Find(p) is not null).ToHashSet(StringComparer.Ordinal);
        var ours = edited.Count == 0 ? old.Files : new(old.Files.Where(f => !edited.Contains(f.Path)));

        // A link or folder at the path of one of our files is not the file that we wrote.
        var foreign = old.Others.Where(e => e.Kind switch
        {
            TreeKind.Folder => !manifestPath.StartsWith($"{e.Path}/", StringComparison.Ordinal) && !ours.HasFolder(e.Path),
            TreeKind.Link => true,
            _ => e.Path != manifestPath && (edited.Contains(e.Path) || old.Files.IndexOf(e.Path) < 0),
        });

        // One that was changed so soon after we wrote it that its time does not show it is not among the others.
        var entries = foreign.Concat(edited.Where(p => old.Others.Find(p) is null).Select(p => old.Find(p)!)).OrderBy(e => e.Path, StringComparer.Ordinal).ToList();
        var folders = entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path).ToHashSet(StringComparer.Ordinal);
        var names = entries.Select(e => NameOf(e, folders)).Distinct(StringComparer.Ordinal);
        return new(entries, [.. edited.Order(StringComparer.Ordinal)], [.. names]);
    }

    /// <summary>Where a planned file and a foreign one need the same path.</summary>
    internal IEnumerable<PublishProblem> InTheWayOf(SitePlan plan, string manifestPath)
    {
        // A folder can be both's.
        string[] paths = [.. Entries.Select(e => e.Path)];
        PathIndex<Trace> manifest = new([new Trace(manifestPath, 0, default)]);
        var wanted = PathClashes.Met(plan.Files, paths).Concat(PathClashes.Met(manifest, paths)).ToLookup(m => m.Place, m => m.IsFolder, StringComparer.Ordinal);
        return Entries
            .Where(e => wanted[e.Path].Any(isFolder => !isFolder || e.Kind != TreeKind.Folder))
            .Select(e => new PublishProblem(e.Path, "Layshaft did not create this, and the site needs its path. Move or rename it."));
    }

    /// <summary>Every folder of a site that contains our files and these.</summary>
    internal HashSet<string> FoldersWith(PathIndex<Trace> ours, string manifestPath)
    {
        var folders = ours.Folders.ToHashSet(StringComparer.Ordinal);
        folders.UnionWith(Entries.Select(e => e.Path).Append(manifestPath).SelectMany(OutputPath.FoldersAbove));
        folders.UnionWith(Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path));
        return folders;
    }

    private static string NameOf(TreeEntry entry, HashSet<string> strangeFolders)
    {
        var name = entry.Kind == TreeKind.Folder ? entry.Path + "/" : entry.Path;
        foreach (var folder in OutputPath.FoldersAbove(entry.Path))
        {
            if (strangeFolders.Contains(folder))
            {
                name = folder + "/";
            }
        }

        return name;
    }
}
