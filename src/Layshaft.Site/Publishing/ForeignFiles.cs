using Layshaft.Site.Publishing.Register;

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

    internal static ForeignFiles Find(OldSite old, PathTable planned, string manifestPath)
    {
        var edited = Enumerable.Range(0, old.Register.Count).Where(i => old.Register.Paths.PlaceIn(planned, i) < 0 && !old.IsIntact(i))
            .Select(old.Register.Paths.TextOf).Where(p => old.Find(p) is not null).ToHashSet(StringComparer.Ordinal);

        // A link or folder at the path of one of our files is not the file that we wrote.
        var strange = old.Others.Entries.Where(e => e.Kind switch
        {
            TreeKind.Folder => !manifestPath.StartsWith($"{e.Path}/", StringComparison.Ordinal)
                && old.Register.Paths.Below(e.Path).All(i => edited.Count > 0 && edited.Contains(old.Register.Paths.TextOf(i))),
            TreeKind.Link => true,
            _ => e.Path != manifestPath && (edited.Contains(e.Path) || old.Register.Paths.IndexOf(e.Path) < 0),
        });

        // One that was changed so soon after we wrote it that its time does not show it is not among the others.
        var entries = strange.Concat(edited.Where(p => old.Others.Find(p) is null).Select(p => old.Find(p)!)).OrderBy(e => e.Path, StringComparer.Ordinal).ToList();
        var folders = entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path).ToHashSet(StringComparer.Ordinal);
        var names = entries.Select(e => NameOf(e, folders)).Distinct(StringComparer.Ordinal);
        return new(entries, [.. edited.Order(StringComparer.Ordinal)], [.. names]);
    }

    /// <summary>Where a planned file and a foreign one need the same path.</summary>
    internal IEnumerable<PublishProblem> InTheWayOf(PathTable planned, string manifestPath)
    {
        // A folder can be both's.
        var places = new TakenPaths(Entries.Select(e => e.Path));
        var wanted = places.Met(planned).Concat(places.Met(PathTable.Of([manifestPath], out _))).ToLookup(m => m.Place, m => m.IsFolder, StringComparer.Ordinal);
        return Entries
            .Where(e => wanted[e.Path].Any(isFolder => !isFolder || e.Kind != TreeKind.Folder))
            .Select(e => new PublishProblem(e.Path, "Layshaft did not create this, and the site needs its path. Move or rename it."));
    }

    /// <summary>Every folder of a site that contains our files and these.</summary>
    internal HashSet<string> FoldersWith(PathTable ours, string manifestPath)
    {
        var folders = ours.Folders().ToHashSet(StringComparer.Ordinal);
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
