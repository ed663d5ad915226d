using System.Security.Cryptography;
using System.Text;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>Something that an output was made from.</summary>
/// <param name="Name">What it is, for instance the path of a job file, <c>templates</c> or <c>texts</c>.</param>
/// <param name="Hash">A hash of its content, or the content itself if it is short.</param>
public sealed record PlanInput(string Name, string Hash);

/// <summary>One file of the site to be. A large site has hundreds of thousands, so it holds no more than it must.</summary>
public sealed class PlannedOutput
{
    private readonly IOutputMaker _maker;
    private readonly ContentHash? _key;

    /// <summary>An output.</summary>
    /// <param name="path">Where it goes, relative, with forward slashes; see <see cref="OutputPath"/>.</param>
    /// <param name="inputs">Everything that its bytes depend on besides the program itself. While they stay the same, the file
    /// of the last publish is kept and <paramref name="write"/> is not called.</param>
    /// <param name="write">Writes the bytes: the same ones for the same inputs. Called at most once, from any thread.</param>
    public PlannedOutput(string path, IReadOnlyList<PlanInput> inputs, Action<Stream> write)
        : this(path, inputs, new Written(write))
    {
    }

    /// <summary>An output.</summary>
    /// <param name="path">Where it goes.</param>
    /// <param name="inputs">What it depends on.</param>
    /// <param name="maker">Makes it.</param>
    public PlannedOutput(string path, IReadOnlyList<PlanInput> inputs, IOutputMaker maker) => (Place, Inputs, _maker) = (new(path), inputs, maker);

    /// <summary>An output whose inputs are known by their key alone.</summary>
    internal PlannedOutput(PlacedPath path, ContentHash key, IOutputMaker maker) => (Place, Inputs, _key, _maker) = (path, [], key, maker);

    /// <summary>Where it goes.</summary>
    public string Path => Place.Text;

    /// <summary>What it depends on besides the program itself; empty where only their key is known.</summary>
    public IReadOnlyList<PlanInput> Inputs { get; }

    /// <summary>The outputs that it is made with, one after the other; null for itself alone.</summary>
    public OutputGroup? Group { get; init; }

    /// <summary>Its turn within its group.</summary>
    public int Turn { get; init; }

    /// <summary>An output of text in UTF-8 without a mark.</summary>
    /// <param name="path">Where it goes.</param>
    /// <param name="inputs">What it depends on.</param>
    /// <param name="text">Makes the text.</param>
    public static PlannedOutput OfText(string path, IReadOnlyList<PlanInput> inputs, Func<string> text) =>
        new(path, inputs, stream => stream.Write(Encoding.UTF8.GetBytes(text())));

    /// <summary>Where it goes, as it is known.</summary>
    internal PlacedPath Place { get; }

    /// <summary>Its key, where it is known by that alone.</summary>
    internal ContentHash? KnownKey => _key;

    /// <summary>Whether another is made by the same maker in the same group.</summary>
    internal bool IsLike(PlannedOutput other) => KnownKey is not null && other._maker == _maker && other.Group == Group;

    /// <summary>Another output that is made by the same maker in the same group.</summary>
    internal PlannedOutput With(PlacedPath path, ContentHash key, int turn) => new(path, key, _maker) { Group = Group, Turn = turn };

    /// <summary>Writes its bytes.</summary>
    /// <returns>Whether the next publish shall make it again although its inputs are the same.</returns>
    internal bool Make(Stream stream) => _maker.Make(Path, stream);

    /// <summary>One hash over the program's mark and all inputs, in whatever order they were given.</summary>
    internal ContentHash Key(string generator) => _key ?? KeyOf(generator, Inputs);

    /// <summary>One hash over the program's mark and inputs, in whatever order they are given.</summary>
    internal static ContentHash KeyOf(string generator, IReadOnlyList<PlanInput> inputs)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(generator));
        foreach (var input in inputs.OrderBy(i => i.Name, StringComparer.Ordinal).ThenBy(i => i.Hash, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"\0{input.Name.Length}:{input.Name}\0{input.Hash.Length}:{input.Hash}"));
        }

        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        hash.GetHashAndReset(bytes);
        return ContentHash.Of(bytes);
    }

    private sealed class Written(Action<Stream> write) : IOutputMaker
    {
        public bool Make(string path, Stream stream)
        {
            write(stream);
            return false;
        }
    }
}
