namespace Layshaft.Site.Publishing;

/// <summary>
/// What of a spare tree the site to be can keep as it stands, and what has to leave it. A file stays only where the site keeps its own
/// file of that path, both have the same size and time, and the exchange that the spare comes from did not change that path.
/// </summary>
/// <remarks>
/// Where the times of its folders show that no name came or went since it was left, its files are the site's own, by a second name: what
/// was seen of those in the site need not be looked at once more. Otherwise nothing of it is believed.
/// </remarks>
internal sealed class SpareReview
{
    private readonly string _root;
    private readonly string _siteRoot;
    private readonly OldSite _site;
    private readonly SpareChanges _changes;
    private readonly string _manifestPath;
    private readonly List<string> _ours = [];
    private readonly List<string> _strange = [];

    private SpareReview(StateFolder state, OldSite site, SpareChanges changes, string manifestPath) =>
        (_root, _siteRoot, _site, _changes, _manifestPath) = (state.Spare, state.Output, site, changes, manifestPath);

    /// <summary>Kept files of the site that the spare does not have for certain, by their place in the plan.</summary>
    internal IReadOnlyList<int> Lacking { get; private init; } = [];

    /// <summary>Files of ours that leave it.</summary>
    internal IReadOnlyList<string> Ours => _ours;

    /// <summary>Files and links that somebody else put into it or changed in it.</summary>
    internal IReadOnlyList<string> Strange => _strange;

    /// <summary>Its folders, in order of path.</summary>
    internal IReadOnlyList<string> Folders { get; private init; } = [];

    /// <summary>Whether the times of its folders told what is in it.</summary>
    internal bool IsByNote { get; private init; }

    /// <summary>Looks at a spare.</summary>
    /// <param name="state">The folder that it is in.</param>
    /// <param name="site">The site that it was left behind by.</param>
    /// <param name="changes">Where it may differ from that.</param>
    /// <param name="note">How it was left; null where that is not known.</param>
    /// <param name="staged">The files of the site to be.</param>
    /// <param name="manifestPath">Where the list of files goes.</param>
    /// <param name="parallelism">The most threads at once.</param>
    internal static SpareReview Of(StateFolder state, OldSite site, SpareChanges changes, SpareNote? note, StagedFiles staged, string manifestPath, int parallelism)
    {
        var has = new bool[staged.Paths.Count];
        bool Leaves(ReadOnlySpan<char> path, long size, long modified)
        {
            var index = staged.Paths.IndexOf(path);
            var stays = index >= 0 && !staged.IsStaged(index) && !changes.Contains(path)
                && staged[index].Size == size && staged[index].Modified == modified;
            if (stays)
            {
                has[index] = true;
            }

            return !stays;
        }

        var known = note is null ? null : KnownFolders(state, site, note, parallelism);
        var tree = note is null || known is null
            ? SiteTree.Walk(state.Spare, Leaves)
            : SiteTree.LookAt(state.Spare, Unsure(site, changes, staged, note.Young, has).Append(manifestPath), note.Young, known, Leaves);
        var review = new SpareReview(state, site, changes, manifestPath)
        {
            Folders = [.. tree.Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path).Union(known ?? [], StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            Lacking = [.. staged.Where(i => !has[i] && !staged.IsStaged(i))],
            IsByNote = known is not null,
        };
        foreach (var entry in tree.Entries.Where(e => e.Kind != TreeKind.Folder))
        {
            review.Leave(entry);
        }

        return review;
    }

    // Its folders, but for that itself, if they all have the times that were noted.
    private static HashSet<string>? KnownFolders(StateFolder state, OldSite site, SpareNote note, int parallelism)
    {
        string[] folders = [.. site.Others.Folders.Select(f => f.Path).Union(note.More, StringComparer.Ordinal)];
        var times = FolderTimes.Of(state.Spare, folders, parallelism);
        return FolderTimes.NumberOf(folders, times) == note.Folders
            ? folders.Where((f, i) => times[i] != FolderTimes.None && f.Length > 0).ToHashSet(StringComparer.Ordinal)
            : null;
    }

    // Notes what the spare has for certain, and gives what is to be looked at there.
    private static IEnumerable<string> Unsure(OldSite site, SpareChanges changes, StagedFiles staged, IReadOnlyList<string> young, bool[] has)
    {
        foreach (var i in staged.Where(i => !staged.IsStaged(i)))
        {
            has[i] = true;
        }

        return SecondNames.Unsure(site, staged.Paths, has, changes, young);
    }

    private void Leave(TreeEntry entry) => (IsOurs(entry) ? _ours : _strange).Add(entry.Path);

    private bool IsSame(TreeEntry entry) => entry.Kind == TreeKind.File && !_changes.Contains(entry.Path)
        && _site.Find(entry.Path) is { Kind: TreeKind.File } other && other.Size == entry.Size && other.Modified == entry.Modified;

    // A file of ours that somebody changed in the site as it stands is changed here too: that one is kept from the site.
    private bool IsOurs(TreeEntry entry)
    {
        if (entry.Path == _manifestPath)
        {
            return entry.Kind == TreeKind.File;
        }

        if (entry.Kind != TreeKind.File || _site.Register.Find(entry.Path) is not { } listed)
        {
            return false;
        }

        if (IsSame(entry))
        {
            return true;
        }

        var hash = OldSite.HashOf(StateFolder.Place(_root, entry.Path));
        return hash == listed.Sha256 || (_site.Find(entry.Path) is { Kind: TreeKind.File } && hash == OldSite.HashOf(StateFolder.Place(_siteRoot, entry.Path)));
    }
}
