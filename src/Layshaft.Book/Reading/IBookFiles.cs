namespace Layshaft.Book.Reading;

/// <summary>The files of a book, and the only way to them: nothing outside the book can be named.</summary>
public interface IBookFiles
{
    /// <summary>Every file below the book's folder, by path (ordinal order).</summary>
    IReadOnlyList<BookFile> All { get; }

    /// <summary>Whether the book has a file with exactly this path.</summary>
    bool Has(string path);

    /// <summary>The length of a file in bytes.</summary>
    /// <exception cref="FileNotFoundException">The book has no such file.</exception>
    long LengthOf(string path);

    /// <summary>Reads a file whole.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    byte[] Read(string path);

    /// <summary>Opens a file for reading.</summary>
    /// <exception cref="IOException">It can't be opened.</exception>
    Stream Open(string path);
}

/// <summary>A file of a book.</summary>
/// <param name="Path">From the book's folder, with forward slashes.</param>
/// <param name="Length">In bytes.</param>
/// <param name="Modified">Ticks (UTC) of the last change, for telling whether it changed; never shown.</param>
public sealed record BookFile(string Path, long Length, long Modified);
