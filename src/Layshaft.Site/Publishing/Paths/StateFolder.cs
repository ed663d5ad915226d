namespace Layshaft.Site.Publishing;

/// <summary>
/// The hidden folder beside the output folder that a publish works in: on the same disk, so that renaming works, and
/// outside the site, so that nothing of it is uploaded.
/// </summary>
internal sealed class StateFolder
{
    internal StateFolder(string output)
    {
        Output = output;
        Root = Path.Combine(Path.GetDirectoryName(output) ?? output, $"{Prefix}{Path.GetFileName(output)}");
    }

    internal const string Prefix = ".layshaft-";

    internal string Output { get; }

    internal string Root { get; }

    internal string Lock => Path.Combine(Root, "lock");

    /// <summary>The stage: files that were made for the site and are not in it yet.</summary>
    internal string Made => Path.Combine(Root, "made");

    /// <summary>The next manifest, until it is whole and moves into the site.</summary>
    internal string NextManifest => Path.Combine(Root, "manifest-next");

    /// <summary>Files of others that could not stay in the site.</summary>
    internal string Kept => Path.Combine(Root, "kept");

    /// <summary>What a publish knows from the one before, see <see cref="TraceStore"/>; may be lost at any time.</summary>
    internal string Cache => Path.Combine(Root, "cache");

    /// <summary>What the host does not have yet, since the last upload that was confirmed.</summary>
    internal string Changes => Path.Combine(Root, "changes.txt");

    /// <summary>The same once the site is up to date; written before the update begins, so that no kill loses it.</summary>
    internal string NextChanges => Path.Combine(Root, "changes-next");

    /// <summary>The links that the site has and had, for a person to read; may be lost at any time.</summary>
    internal string Links => Path.Combine(Root, "links.txt");

    /// <summary>What book and site looked like after the last publish; may be lost at any time.</summary>
    internal string Stamp => Path.Combine(Root, "stamp");

    /// <summary>Makes the folder, for the publisher's eyes only, if it is not there.</summary>
    internal void Create()
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(Root);
        }
        else
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Root)!);
            Directory.CreateDirectory(Root, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>The place of a site's path below a tree's root.</summary>
    internal static string Place(string root, string path) => Path.Combine(root, path.Replace('/', Path.DirectorySeparatorChar));
}
