using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>Something that an output was made from.</summary>
/// <param name="Name">What it is, for instance the path of a job file, <c>templates</c> or <c>texts</c>.</param>
/// <param name="Hash">A hash of its content, or the content itself if it is short.</param>
public sealed record PlanInput(string Name, string Hash);

/// <summary>One file of the site to be.</summary>
/// <param name="Path">Where it goes, relative, with forward slashes; see <see cref="OutputPath"/>.</param>
/// <param name="Inputs">Everything that its bytes depend on besides the program itself. While they stay the same, the file of
/// the last publish is kept and <paramref name="Write"/> is not called.</param>
/// <param name="Write">Writes the bytes: the same ones for the same inputs. Called at most once, from any thread.</param>
public sealed record PlannedOutput(string Path, IReadOnlyList<PlanInput> Inputs, Action<Stream> Write)
{
    /// <summary>The outputs that it is made with, one after the other; null for itself alone.</summary>
    public OutputGroup? Group { get; init; }

    /// <summary>Its turn within its group.</summary>
    public int Turn { get; init; }

    /// <summary>Asked after it was written: whether the next publish shall make it again although its inputs are the same.</summary>
    public Func<bool>? MakeAgain { get; init; }

    /// <summary>An output of text in UTF-8 without a mark.</summary>
    /// <param name="path">Where it goes.</param>
    /// <param name="inputs">What it depends on.</param>
    /// <param name="text">Makes the text.</param>
    public static PlannedOutput OfText(string path, IReadOnlyList<PlanInput> inputs, Func<string> text) =>
        new(path, inputs, stream => stream.Write(Encoding.UTF8.GetBytes(text())));

    /// <summary>One hash over the program's mark and all inputs, in whatever order they were given.</summary>
    internal ContentHash Key(string generator)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(generator));
        foreach (var input in Inputs.OrderBy(i => i.Name, StringComparer.Ordinal).ThenBy(i => i.Hash, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"\0{input.Name.Length}:{input.Name}\0{input.Hash.Length}:{input.Hash}"));
        }

        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        hash.GetHashAndReset(bytes);
        return ContentHash.Of(bytes);
    }
}
