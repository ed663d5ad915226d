using System.Security.Cryptography;

namespace Layshaft.Site.Publishing;

/// <summary>The output folder as it stands before a publish: what is in it, what of that we wrote, what is whole.</summary>
internal sealed class OldSite
{
    private readonly string _root;
    private readonly ReuseRecord _reuse;
    private readonly long _trustBefore;
    private readonly Dictionary<string, bool> _intact = new(StringComparer.Ordinal);

    private OldSite(
        string root, SiteTree tree, SiteManifest manifest, ContentHash? manifestHash, ReuseRecord reuse) =>
        (_root, Tree, Manifest, ManifestHash, _reuse, _trustBefore) = (root, tree, manifest, manifestHash, reuse, reuse.Noted - DiskClock.Coarsest.Ticks);

    internal SiteTree Tree { get; }

    /// <summary>The files that we wrote; empty before the first publish.</summary>
    internal SiteManifest Manifest { get; }

    /// <summary>The hash of their list as it stands; null before the first publish.</summary>
    internal ContentHash? ManifestHash { get; }

    /// <summary>
    /// Whether some file's time lies so close to when the times were noted that a change just after would not show in it;
    /// such files are read, and noting the times anew spares the next publish that.
    /// </summary>
    internal bool HasFreshTimes { get; private set; }

    /// <summary>The hash of what the last publish recorded; null where that is not known.</summary>
    internal ContentHash? RecordHash => _reuse.Hash;

    /// <summary>Looks at a folder, or says why it cannot be published into.</summary>
    internal static OldSite? Look(string root, string manifestPath, ReuseRecord reuse, out PublishProblem? problem)
    {
        problem = null;
        var tree = SiteTree.Walk(root, reuse.TextOf);
        if (tree.Find(manifestPath) is { Kind: TreeKind.File })
        {
            var bytes = File.ReadAllBytes(StateFolder.Place(root, manifestPath));
            if (SiteManifest.Parse(bytes, reuse.TextOf) is { } manifest)
            {
                return new(root, tree, manifest, ContentHash.Of(SHA256.HashData(bytes)), reuse);
            }

            problem = new(manifestPath, "This list of our files is damaged, so we cannot tell which are ours. Move the folder away and publish anew.");
            return null;
        }

        // A wrongly typed folder with somebody's work in it would otherwise become a site.
        if (tree.Entries.FirstOrDefault(e => e.Kind != TreeKind.File) is { } other)
        {
            problem = new(root, $"This folder is not a site of ours and already holds `{other.Path}`; name a new or empty folder.");
            return null;
        }

        return new(root, tree, new([]), null, ReuseRecord.None);
    }

    /// <summary>Whether a file that we wrote is still as we wrote it. Looks at size and time, and reads it only if the time is another.</summary>
    internal bool IsIntact(ManifestEntry entry)
    {
        if (!_intact.TryGetValue(entry.Path, out var intact))
        {
            _intact[entry.Path] = intact = Tree.Find(entry.Path) is { Kind: TreeKind.File } found && found.Size == entry.Size
                && (IsAsNoted(entry, found) || HashOf(StateFolder.Place(_root, entry.Path)) == entry.Sha256);
        }

        return intact;
    }

    private bool IsAsNoted(ManifestEntry entry, TreeEntry found)
    {
        if (_reuse.Find(entry.Path) is not { } seen || seen.Sha256 != entry.Sha256 || seen.Modified != found.Modified)
        {
            return false;
        }

        var settled = found.Modified < _trustBefore;
        HasFreshTimes |= !settled;
        return settled;
    }

    /// <summary>The key that a file was made from, if that is known.</summary>
    internal ContentHash? KeyOf(ManifestEntry entry) =>
        _reuse.Find(entry.Path) is { } seen && seen.Sha256 == entry.Sha256 ? seen.Key : null;

    internal static ContentHash HashOf(string path)
    {
        using var stream = File.OpenRead(path);
        return ContentHash.Of(SHA256.HashData(stream));
    }
}
