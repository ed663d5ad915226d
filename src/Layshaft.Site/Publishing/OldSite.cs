using System.Security.Cryptography;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing.Links;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>The output folder as it stands before a publish: what is in it, what of that we wrote, what is whole. For many threads at once.</summary>
internal sealed class OldSite
{
    private readonly string _root;
    private readonly SiteScan _look;
    private readonly bool?[] _intact;

    private OldSite(string root, SiteScan look, SiteRegister register, long began)
    {
        (_root, _look, Register, Began) = (root, look, register, began);
        _intact = new bool?[register.Count];
    }

    /// <summary>What is in it but for the files that have the size and time that we noted.</summary>
    internal SiteTree Others => _look.Others;

    /// <summary>The files that we wrote; empty before the first publish.</summary>
    internal SiteRegister Register { get; }

    /// <summary>The links that it has or had.</summary>
    internal LinkHistory Links { get; private init; } = LinkHistory.None;

    /// <summary>When it was looked at, in ticks.</summary>
    internal long Began { get; }

    /// <summary>
    /// Whether some file's time lies so close to when the times were noted that a change just after would not show in it;
    /// such files are read, and noting the times anew spares the next publish that.
    /// </summary>
    internal bool HasFreshTimes { get; private set; }

    /// <summary>Looks at a folder, or says why it cannot be published into.</summary>
    internal static OldSite? Look(string root, string manifestPath, SiteRegister recorded, out PublishProblem? problem)
    {
        problem = null;
        var began = DateTime.UtcNow.Ticks;
        var look = SiteScan.At(root, recorded);
        if (look.Others.Find(manifestPath) is not { Kind: TreeKind.File })
        {
            // A wrongly typed folder with somebody's work in it would otherwise become a site.
            look = SiteScan.At(root, SiteRegister.None);
            if (look.Others.Entries.FirstOrDefault(e => e.Kind != TreeKind.File) is { } other)
            {
                problem = new(root, $"This folder contains '{other.Path}', and Layshaft did not create it. Name a new or empty folder.");
                return null;
            }

            return new(root, look, SiteRegister.None, began);
        }

        var place = StateFolder.Place(root, manifestPath);
        var list = HashOf(place);
        if (list == recorded.List)
        {
            return new(root, look, recorded, began) { Links = LinksIn(place) };
        }

        if (SiteManifest.Parse(RegularFile.ReadAll(place)) is { } manifest)
        {
            var register = SiteRegister.Of(manifest, list, recorded);
            return new(root, SiteScan.At(root, register), register, began) { Links = manifest.Links };
        }

        problem = new(manifestPath, "This list of the site's files is damaged, so Layshaft cannot distinguish them from other files. Move the folder away and publish again.");
        return null;
    }

    /// <summary>What stands at a path, or null.</summary>
    /// <param name="path">The path.</param>
    internal TreeEntry? Find(string path) => _look.Find(path);

    /// <summary>Whether a file that we wrote is still as we wrote it. Looks at size and time, and reads it only if the time is another.</summary>
    /// <param name="index">Its place in the register.</param>
    internal bool IsIntact(int index) => _intact[index] ??= IsSettled(index) || HasOurBytes(index);

    /// <summary>Whether a file that we wrote has the size and time that we noted.</summary>
    /// <param name="index">Its place in the register.</param>
    internal bool IsAsNoted(int index) => _look.IsAsNoted(index);

    private bool IsSettled(int index)
    {
        if (!IsAsNoted(index))
        {
            return false;
        }

        var isSettled = Register[index].Modified < Register.TrustBefore;
        HasFreshTimes |= !isSettled;
        return isSettled;
    }

    private bool HasOurBytes(int index) => Register.Paths.TextOf(index) is var path
        && Find(path) is { Kind: TreeKind.File } found && found.Size == Register[index].Size && HashOf(StateFolder.Place(_root, path)) == Register[index].Sha256;

    private static LinkHistory LinksIn(string list)
    {
        using var stream = RegularFile.Open(list);
        return ManifestText.ReadLinks(stream);
    }

    internal static ContentHash HashOf(string path)
    {
        using var stream = RegularFile.Open(path);
        return ContentHash.Of(SHA256.HashData(stream));
    }
}
