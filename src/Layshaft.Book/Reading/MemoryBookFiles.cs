using System.Text;

namespace Layshaft.Book.Reading;

/// <summary>The files of a book in memory: for tests, and for books that are made up on the way.</summary>
public sealed class MemoryBookFiles : IBookFiles
{
    private readonly SortedDictionary<string, byte[]> files;
    private readonly BookFile[] all;

    /// <summary>From paths and contents.</summary>
    public MemoryBookFiles(IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        this.files = new SortedDictionary<string, byte[]>(files.ToDictionary(f => f.Key, f => f.Value), StringComparer.Ordinal);
        all = [.. this.files.Select(f => new BookFile(f.Key, f.Value.Length, 0))];
    }

    /// <inheritdoc/>
    public IReadOnlyList<BookFile> All => all;

    /// <summary>From paths and texts.</summary>
    public static MemoryBookFiles OfTexts(IEnumerable<KeyValuePair<string, string>> texts) =>
        new(texts.Select(t => KeyValuePair.Create(t.Key, Encoding.UTF8.GetBytes(t.Value))));

    /// <inheritdoc/>
    public bool Has(string path) => files.ContainsKey(path);

    /// <inheritdoc/>
    public long LengthOf(string path) => Read(path).Length;

    /// <inheritdoc/>
    public byte[] Read(string path) => files.TryGetValue(path, out var bytes) ? bytes : throw new FileNotFoundException($"The book has no file '{path}'.", path);

    /// <inheritdoc/>
    public Stream Open(string path) => new MemoryStream(Read(path), writable: false);
}
