namespace Layshaft.Site.Publishing;

/// <summary>
/// What is in the output folder and not ours: files that we did not write, ones that we wrote and someone changed after
/// they had left the plan, and folders that hold nothing of ours.
/// </summary>
internal sealed class Strangers
{
    private Strangers(IReadOnlyList<TreeEntry> entries, IReadOnlyList<string> edited, IReadOnlyList<string> names) =>
        (Entries, Edited, Names) = (entries, edited, names);

    internal IReadOnlyList<TreeEntry> Entries { get; }

    /// <summary>Files of ours that left the plan and stay because someone changed them.</summary>
    internal IReadOnlyList<string> Edited { get; }

    /// <summary>The strangers for a person to read; a folder stands for all that is in it.</summary>
    internal IReadOnlyList<string> Names { get; }

    internal static Strangers Find(OldSite old, IReadOnlySet<string> planned, string manifestPath)
    {
        var edited = old.Manifest.Entries
            .Where(e => !planned.Contains(e.Path) && old.Tree.Find(e.Path) is not null && !old.IsIntact(e))
            .Select(e => e.Path).ToList();
        var ours = old.Manifest.Entries.Select(e => e.Path).Append(manifestPath).Except(edited, StringComparer.Ordinal)
            .ToHashSet(StringComparer.Ordinal);
        var ourFolders = ours.SelectMany(OutputPath.FoldersAbove).ToHashSet(StringComparer.Ordinal);

        // A link or folder at the path of one of our files is not the file that we wrote.
        var entries = old.Tree.Entries
            .Where(e => e.Kind == TreeKind.Folder ? !ourFolders.Contains(e.Path) : e.Kind == TreeKind.Link || !ours.Contains(e.Path))
            .ToList();
        var folders = entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path).ToHashSet(StringComparer.Ordinal);
        var names = entries.Select(e => NameOf(e, folders)).Distinct(StringComparer.Ordinal);
        return new(entries, edited, [.. names]);
    }

    /// <summary>Where a planned file and a stranger want the same place.</summary>
    internal IEnumerable<PublishProblem> InTheWayOf(IEnumerable<string> planned)
    {
        var places = new Dictionary<string, TreeKind>(StringComparer.OrdinalIgnoreCase);
        foreach (var path in planned)
        {
            foreach (var folder in OutputPath.FoldersAbove(path))
            {
                places[folder] = TreeKind.Folder;
            }

            places[path] = TreeKind.File;
        }

        return Entries
            .Where(e => places.TryGetValue(e.Path, out var kind) && !(kind == TreeKind.Folder && e.Kind == TreeKind.Folder))
            .Select(e => new PublishProblem(e.Path, "This is not ours and stands where the site needs a file or folder; move it away or rename it."));
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
