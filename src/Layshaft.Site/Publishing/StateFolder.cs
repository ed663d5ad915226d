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

    /// <summary>Stands in a complete staged tree, and so tells after a kill which of two trees is the new one.</summary>
    internal const string MarkName = ".layshaft-staged";

    internal string Output { get; }

    internal string Root { get; }

    internal string Lock => Path.Combine(Root, "lock");

    /// <summary>What was made for the new site, until the stage is there that it goes into.</summary>
    internal string Made => Path.Combine(Root, "made");

    /// <summary>The tree that becomes the site; after an exchange, the tree that was.</summary>
    internal string Stage => Path.Combine(Root, "stage");

    /// <summary>The tree that was, where the system cannot exchange two folders in one step.</summary>
    internal string Old => Path.Combine(Root, "old");

    /// <summary>
    /// What is left of the tree that was: second names of those files that the site still has, for the next publish to begin its
    /// stage from; may be lost at any time.
    /// </summary>
    internal string Spare => Path.Combine(Root, "spare");

    /// <summary>Where the spare may differ from the site, see <see cref="Publishing.SpareChanges"/>; without it there is no spare.</summary>
    internal string SpareChanges => Path.Combine(Root, "spare-changes");

    /// <summary>How the spare was left, see <see cref="Publishing.SpareNote"/>; may be lost at any time.</summary>
    internal string SpareNote => Path.Combine(Root, "spare-note");

    /// <summary>Files of others that could not stay in the site.</summary>
    internal string Kept => Path.Combine(Root, "kept");

    /// <summary>What each file was made from and when it was last seen; may be lost at any time.</summary>
    internal string Register => Path.Combine(Root, "register");

    /// <summary>What the host does not have yet, since the last upload that was confirmed.</summary>
    internal string Changes => Path.Combine(Root, "changes.txt");

    /// <summary>The same once the staged tree is in place; written before the exchange, so that no kill between loses it.</summary>
    internal string NextChanges => Path.Combine(Root, "changes-next");

    /// <summary>The links that the site has and had, for a person to read; may be lost at any time.</summary>
    internal string Links => Path.Combine(Root, "links.txt");

    /// <summary>What book and site looked like after the last publish; may be lost at any time.</summary>
    internal string Stamp => Path.Combine(Root, "stamp");

    /// <summary>What is known of the book's texts and pictures; may be lost at any time.</summary>
    internal string Files => Path.Combine(Root, "files");

    /// <summary>What is known of the parts of the book; may be lost at any time.</summary>
    internal string Parts => Path.Combine(Root, "parts");

    internal string OutputMark => Path.Combine(Output, MarkName);

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
