using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>Something that an output is made from.</summary>
/// <param name="Name">What it is, for instance the path of a job file, <c>templates</c> or <c>texts</c>.</param>
/// <param name="Hash">A hash of its content, or the content itself if it is short.</param>
public sealed record PlanInput(string Name, string Hash);

/// <summary>Outputs that are made one after the other because they are made from the same things.</summary>
/// <param name="Name">Its name, which no other group has.</param>
/// <param name="Finished">Called once no more of them are to be made, so that what they share can be released.</param>
public sealed record OutputGroup(string Name, Action Finished)
{
    /// <summary>Of groups in one queue one is made at a time, since each takes much memory; null for none.</summary>
    public string? Queue { get; init; }
}

/// <summary>Writes the bytes of an output: the same ones for the same key. Called at most once for each, from any thread.</summary>
/// <param name="path">Which output.</param>
/// <param name="stream">Where to.</param>
/// <returns>Whether the next publish shall make it again although its key is the same.</returns>
public delegate bool OutputMaker(string path, Stream stream);

/// <summary>One file of the site to be. A large site has hundreds of thousands, so it contains no more than it must.</summary>
/// <param name="path">Where it goes, relative, with forward slashes; see <see cref="OutputPath"/>.</param>
/// <param name="key">The hash of everything that its bytes depend on. While it stays the same, the file of the last publish is kept.</param>
/// <param name="make">Makes it.</param>
public sealed class PlannedOutput(string path, ContentHash key, OutputMaker make) : IPathed
{
    /// <summary>Where it goes.</summary>
    public string Path => path;

    /// <summary>The hash of everything that its bytes depend on.</summary>
    public ContentHash Key => key;

    /// <summary>The outputs that it is made with, one after the other; null for itself alone.</summary>
    public OutputGroup? Group { get; init; }

    /// <summary>Its turn within its group.</summary>
    public int Turn { get; init; }

    /// <summary>Writes its bytes.</summary>
    /// <returns>Whether the next publish shall make it again although its key is the same.</returns>
    internal bool Make(Stream stream) => make(path, stream);

    /// <summary>One hash over the version of the code that makes outputs and their inputs, in whatever order they are given.</summary>
    internal static ContentHash KeyOf(string version, IReadOnlyList<PlanInput> inputs)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(version));
        foreach (var input in inputs.OrderBy(i => i.Name, StringComparer.Ordinal).ThenBy(i => i.Hash, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"\0{input.Name.Length}:{input.Name}\0{input.Hash.Length}:{input.Hash}"));
        }

        return ContentHash.Of(hash.GetHashAndReset());
    }
}
