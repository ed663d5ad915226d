using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>
/// A look at a tree beside the register of what we wrote: of a file that has the size and time that the register notes a single
/// byte is held, and only of all else what was found.
/// </summary>
internal sealed class SiteScan
{
    private readonly SiteRegister _register;
    private readonly bool[] _asNoted;

    private SiteScan(SiteRegister register, bool[] asNoted, SiteTree others) => (_register, _asNoted, Others) = (register, asNoted, others);

    /// <summary>Everything but those files, in order of path.</summary>
    internal SiteTree Others { get; }

    /// <summary>Looks at a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="register">What we wrote.</param>
    internal static SiteScan At(string root, SiteRegister register)
    {
        var asNoted = new bool[register.Count];
        var others = SiteTree.Walk(root, (path, size, modified) =>
        {
            if (register.Paths.IndexOf(path) is not (>= 0 and var index) || register[index].Size != size || register[index].Modified != modified)
            {
                return true;
            }

            asNoted[index] = true;
            return false;
        });
        return new(register, asNoted, others);
    }

    /// <summary>Whether a file that we wrote has the size and time that is noted.</summary>
    /// <param name="index">Its place in the register.</param>
    internal bool IsAsNoted(int index) => _asNoted[index];

    /// <summary>What stands at a path, or null.</summary>
    /// <param name="path">The path.</param>
    internal TreeEntry? Find(string path) => _register.Paths.IndexOf(path) is >= 0 and var index && _asNoted[index]
        ? new(path, TreeKind.File, _register[index].Size, _register[index].Modified)
        : Others.Find(path);
}
