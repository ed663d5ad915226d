using System.Security.Cryptography;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>The output folder before a publish: what is in it, what of that we wrote, what is unchanged. For many threads at once.</summary>
internal sealed class OldSite
{
    private readonly string _root;
    private readonly SiteTraces _traces;
    private readonly bool[] _asNoted;
    private readonly bool?[] _intact;

    private OldSite(string root, SiteTraces traces)
    {
        (_root, _traces, _asNoted, _intact) = (root, traces, new bool[traces.Files.Count], new bool?[traces.Files.Count]);
        Others = SiteTree.Walk(root, (path, size, modified) =>
        {
            if (Files.IndexOf(path) is not (>= 0 and var index) || Files[index].Size != size || Files[index].Modified != modified)
            {
                return true;
            }

            _asNoted[index] = true;
            return false;
        });
    }

    /// <summary>What is in it but for the files that have the size and time that we noted.</summary>
    internal PathIndex<TreeEntry> Others { get; }

    /// <summary>The files that we wrote; empty before the first publish.</summary>
    internal PathIndex<Trace> Files => _traces.Files;

    /// <summary>What is known of them.</summary>
    internal SiteTraces Traces => _traces;

    /// <summary>The links that it has or had.</summary>
    internal LinkHistory Links => _traces.Links;

    /// <summary>Scans a folder, or says why it cannot be published into.</summary>
    internal static OldSite? Look(string root, string manifestPath, SiteTraces recorded, out PublishProblem? problem)
    {
        problem = null;
        var place = StateFolder.Place(root, manifestPath);
        if (SiteTree.EntryAt(root, manifestPath) is not { Kind: TreeKind.File })
        {
            // A wrongly typed folder with somebody's work in it would otherwise become a site.
            var empty = new OldSite(root, SiteTraces.None);
            if (empty.Others.FirstOrDefault(e => e.Kind != TreeKind.File) is { } other)
            {
                problem = new(root, $"This folder contains '{other.Path}', and Layshaft did not create it. Name a new or empty folder.");
                return null;
            }

            return empty;
        }

        var hash = HashOf(place);
        if (hash == recorded.Manifest)
        {
            return new(root, recorded);
        }

        if (SiteManifest.Parse(RegularFile.ReadAll(place)) is { } manifest)
        {
            return new(root, recorded.For(manifest, hash));
        }

        problem = new(manifestPath, "This list of the site's files is damaged, so Layshaft cannot distinguish them from other files. Move the folder away and publish again.");
        return null;
    }

    /// <summary>What is at a path, or null.</summary>
    /// <param name="path">The path.</param>
    internal TreeEntry? Find(string path) => Files.IndexOf(path) is >= 0 and var index && _asNoted[index]
        ? new(path, TreeKind.File, Files[index].Size, Files[index].Modified)
        : Others.Find(path);

    /// <summary>Whether a file that we wrote is still as we wrote it. Looks at size and time, and reads it only if the time is another.</summary>
    /// <param name="index">Its place among our files.</param>
    internal bool IsIntact(int index) => _intact[index] ??= (_asNoted[index] && Files[index].Modified < _traces.TrustBefore) || HasOurBytes(Files[index]);

    /// <summary>A file that we wrote, with the time that it has now.</summary>
    /// <param name="index">Its place among our files.</param>
    internal Trace AsItIs(int index) => _asNoted[index] ? Files[index] : Files[index] with { Modified = Find(Files[index].Path)!.Modified };

    /// <summary>The hash of a file's bytes.</summary>
    internal static ContentHash HashOf(string path)
    {
        using var stream = RegularFile.Open(path);
        return ContentHash.Of(SHA256.HashData(stream));
    }

    private bool HasOurBytes(Trace file) => Find(file.Path) is { Kind: TreeKind.File } found
        && found.Size == file.Size && HashOf(StateFolder.Place(_root, file.Path)) == file.Sha256;
}
