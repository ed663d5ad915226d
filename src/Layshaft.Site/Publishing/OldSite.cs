using System.Security.Cryptography;

namespace Layshaft.Site.Publishing;

/// <summary>The output folder as it stands before a publish: what is in it, what of that we wrote, what is whole.</summary>
internal sealed class OldSite
{
    private readonly string _root;
    private readonly Dictionary<string, ReuseEntry> _reuse;
    private readonly Dictionary<string, bool> _intact = new(StringComparer.Ordinal);

    private OldSite(string root, SiteTree tree, SiteManifest manifest, byte[] manifestBytes, Dictionary<string, ReuseEntry> reuse) =>
        (_root, Tree, Manifest, ManifestBytes, _reuse) = (root, tree, manifest, manifestBytes, reuse);

    internal SiteTree Tree { get; }

    /// <summary>The files that we wrote; empty before the first publish.</summary>
    internal SiteManifest Manifest { get; }

    internal byte[] ManifestBytes { get; }

    /// <summary>Looks at a folder, or says why it cannot be published into.</summary>
    internal static OldSite? Look(string root, string manifestPath, string reusePath, out PublishProblem? problem)
    {
        problem = null;
        var tree = SiteTree.Walk(root);
        if (tree.Find(manifestPath) is { Kind: TreeKind.File })
        {
            var bytes = File.ReadAllBytes(StateFolder.Place(root, manifestPath));
            if (SiteManifest.Parse(bytes) is { } manifest)
            {
                return new(root, tree, manifest, bytes, ReuseRecord.Read(reusePath));
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

        return new(root, tree, new([]), [], []);
    }

    /// <summary>Whether a file that we wrote is still as we wrote it. Looks at size and time, and reads it only if the time is another.</summary>
    internal bool IsIntact(ManifestEntry entry)
    {
        if (!_intact.TryGetValue(entry.Path, out var intact))
        {
            _intact[entry.Path] = intact = Tree.Find(entry.Path) is { Kind: TreeKind.File } found && found.Size == entry.Size
                && ((_reuse.TryGetValue(entry.Path, out var seen) && seen.Sha256 == entry.Sha256 && seen.Modified == found.Modified)
                    || HashOf(StateFolder.Place(_root, entry.Path)) == entry.Sha256);
        }

        return intact;
    }

    /// <summary>The key that a file was made from, if that is known.</summary>
    internal string? KeyOf(ManifestEntry entry) =>
        _reuse.TryGetValue(entry.Path, out var seen) && seen.Sha256 == entry.Sha256 ? seen.Key : null;

    internal static string HashOf(string path)
    {
        using var stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }
}
