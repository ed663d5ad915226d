namespace Layshaft.Site.Publishing;

/// <summary>
/// What of a spare tree the site to be can keep as it stands, and what has to leave it. Nothing of the spare is believed: a file
/// stays only where the site keeps its own file of that path, both have the same size and time, and the exchange that the spare comes
/// from did not change that path.
/// </summary>
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

    /// <summary>Looks at a spare.</summary>
    /// <param name="state">The folder that it is in.</param>
    /// <param name="site">The site that it was left behind by.</param>
    /// <param name="changes">Where it may differ from that.</param>
    /// <param name="staged">The files of the site to be.</param>
    /// <param name="manifestPath">Where the list of files goes.</param>
    internal static SpareReview Of(StateFolder state, OldSite site, SpareChanges changes, StagedFiles staged, string manifestPath)
    {
        var has = new bool[staged.Paths.Count];
        var tree = SiteTree.Walk(state.Spare, (path, size, modified) =>
        {
            var index = staged.Paths.IndexOf(path);
            var stays = index >= 0 && !staged.IsStaged(index) && !changes.Contains(path)
                && staged[index].Size == size && staged[index].Modified == modified;
            if (stays)
            {
                has[index] = true;
            }

            return !stays;
        });
        var review = new SpareReview(state, site, changes, manifestPath)
        {
            Folders = [.. tree.Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path)],
            Lacking = [.. staged.Where(i => !has[i] && !staged.IsStaged(i))],
        };
        foreach (var entry in tree.Entries.Where(e => e.Kind != TreeKind.Folder))
        {
            review.Leave(entry);
        }

        return review;
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
