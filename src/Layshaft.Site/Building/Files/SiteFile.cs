using Layshaft.Book.Reading;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>A file of the site before it is made.</summary>
/// <param name="Path">From the output folder, with forward slashes.</param>
/// <param name="Scope">What it may quote.</param>
/// <param name="Make">Makes its bytes; the same bytes for the same inputs.</param>
public sealed record SiteFile(string Path, PageScope Scope, Func<MadeFile> Make)
{
    /// <summary>The key of what it is made from where that is not all of its scope, such as a photo.</summary>
    public ContentHash? OwnKey { get; init; }

    /// <summary>The key of what it is made from.</summary>
    public ContentHash Key => OwnKey ?? Scope.Key;

    /// <summary>As the publisher plans it.</summary>
    /// <param name="turn">Its place among the files of its scope.</param>
    public PlannedOutput ToPlan(int turn) => new(Path, Key, (_, stream) => WriteTo(stream)) { Group = Scope.Group, Turn = turn };

    /// <summary>Makes it and writes its bytes.</summary>
    /// <param name="stream">Where to.</param>
    /// <returns>Whether it stands in for something that could not be made.</returns>
    /// <exception cref="PageException">Its template has mistakes.</exception>
    public bool WriteTo(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        var made = Make();
        if (made.Write is not { } write)
        {
            throw new PageException(Path, made.Problems);
        }

        write(stream);
        return made.StandsIn;
    }

    /// <summary>
    /// Makes the files of a scope: what they are is listed when the first of them is to be made and released with the scope, so that
    /// a plan of very many files contains no more than their paths.
    /// </summary>
    /// <param name="scope">What the files may quote.</param>
    /// <param name="list">Lists them.</param>
    /// <returns>A maker, which throws <see cref="BookChangedException"/> if the book was changed since the file was planned.</returns>
    internal static OutputMaker MakerOf(PageScope scope, Func<IEnumerable<SiteFile>> list) => (path, stream) =>
        scope.Once("files", () => list().ToDictionary(f => f.Path, StringComparer.Ordinal)).TryGetValue(path, out var file)
            ? file.WriteTo(stream)
            : throw new BookChangedException();
}

/// <summary>A made file, or why it could not be made.</summary>
/// <param name="Write">Writes its bytes; null when there are problems.</param>
/// <param name="Problems">Mistakes in the templates.</param>
public sealed record MadeFile(Action<Stream>? Write, IReadOnlyList<TemplateProblem> Problems)
{
    /// <summary>Its bytes, written anew each time; null when there are problems.</summary>
    public ReadOnlyMemory<byte>? Bytes
    {
        get
        {
            if (Write is null)
            {
                return null;
            }

            using var stream = new MemoryStream();
            Write(stream);
            return stream.ToArray();
        }
    }

    /// <summary>Whether it stands in for something that could not be made: the next publish makes it again, and says so again.</summary>
    public bool StandsIn { get; init; }

    /// <summary>A file that was made.</summary>
    public static MadeFile Of(ReadOnlyMemory<byte> bytes) => new(stream => stream.Write(bytes.Span), []);

    /// <summary>A file that is written as it is made, for one that may be very long.</summary>
    public static MadeFile Of(Action<Stream> write) => new(write, []);

    /// <summary>A rendered page, or the mistakes of its template.</summary>
    public static MadeFile Of(RenderResult rendered)
    {
        ArgumentNullException.ThrowIfNull(rendered);

        return rendered.Utf8 is { } bytes ? Of(bytes) with { Problems = rendered.Problems } : new MadeFile((Action<Stream>?)null, rendered.Problems);
    }
}

/// <summary>A page could not be rendered because its template has mistakes. Nothing is published then.</summary>
public sealed class PageException : Exception
{
    /// <summary>With the template's mistakes.</summary>
    /// <param name="page">The page's path.</param>
    /// <param name="problems">The mistakes, each with its place.</param>
    public PageException(string page, IReadOnlyList<TemplateProblem> problems)
        : base(string.Join(Environment.NewLine, problems)) => (Page, Problems) = (page, problems);

    /// <summary>The page's path.</summary>
    public string Page { get; }

    /// <summary>The template's mistakes, each with its place.</summary>
    public IReadOnlyList<TemplateProblem> Problems { get; }
}
