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
    private readonly List<StagedOutput> _lacking = [];
    private readonly List<string> _ours = [];
    private readonly List<string> _strange = [];

    private SpareReview(StateFolder state, OldSite site, SpareChanges changes, string manifestPath) =>
        (_root, _siteRoot, _site, _changes, _manifestPath) = (state.Spare, state.Output, site, changes, manifestPath);

    /// <summary>Kept files of the site that the spare does not have for certain.</summary>
    internal IReadOnlyList<StagedOutput> Lacking => _lacking;

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
    /// <param name="outputs">The files of the site to be, in order of path.</param>
    /// <param name="manifestPath">Where the list of files goes.</param>
    internal static SpareReview Of(StateFolder state, OldSite site, SpareChanges changes, IReadOnlyList<StagedOutput> outputs, string manifestPath)
    {
        var tree = SiteTree.Walk(state.Spare);
        var review = new SpareReview(state, site, changes, manifestPath)
        {
            Folders = [.. tree.Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path)],
        };
        using var wanted = outputs.GetEnumerator();
        var more = wanted.MoveNext();
        foreach (var entry in tree.Entries.Where(e => e.Kind != TreeKind.Folder))
        {
            while (more && string.CompareOrdinal(wanted.Current.Entry.Path, entry.Path) < 0)
            {
                review.Lack(wanted.Current);
                more = wanted.MoveNext();
            }

            if (more && wanted.Current.Entry.Path == entry.Path && !wanted.Current.Staged && review.IsSame(entry))
            {
                more = wanted.MoveNext();
            }
            else
            {
                review.Leave(entry);
            }
        }

        for (; more; more = wanted.MoveNext())
        {
            review.Lack(wanted.Current);
        }

        return review;
    }

    private void Lack(StagedOutput output)
    {
        if (!output.Staged)
        {
            _lacking.Add(output);
        }
    }

    private void Leave(TreeEntry entry) => (IsOurs(entry) ? _ours : _strange).Add(entry.Path);

    private bool IsSame(TreeEntry entry) => entry.Kind == TreeKind.File && !_changes.Contains(entry.Path)
        && _site.Tree.Find(entry.Path) is { Kind: TreeKind.File } other && other.Size == entry.Size && other.Modified == entry.Modified;

    // A file of ours that somebody changed in the site as it stands is changed here too: that one is kept from the site.
    private bool IsOurs(TreeEntry entry)
    {
        if (entry.Path == _manifestPath)
        {
            return entry.Kind == TreeKind.File;
        }

        if (entry.Kind != TreeKind.File || _site.Manifest.Find(entry.Path) is not { } listed)
        {
            return false;
        }

        if (IsSame(entry))
        {
            return true;
        }

        var hash = OldSite.HashOf(StateFolder.Place(_root, entry.Path));
        return hash == listed.Sha256 || (_site.Tree.Find(entry.Path) is { Kind: TreeKind.File } && hash == OldSite.HashOf(StateFolder.Place(_siteRoot, entry.Path)));
    }
}
