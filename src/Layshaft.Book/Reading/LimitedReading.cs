using Layshaft.Book.Yaml;

namespace Layshaft.Book.Reading;

/// <summary>Reads text files of a book no further than their limit.</summary>
public static class LimitedReading
{
    /// <summary>
    /// A text file's bytes. Of one that is too large, which is refused before it is in memory, just so many that
    /// <see cref="YamlText.Decode"/> tells of it.
    /// </summary>
    /// <param name="files">The book's files.</param>
    /// <param name="path">Path in the book.</param>
    /// <exception cref="IOException">It can't be read.</exception>
    public static byte[] ReadLimited(this IBookFiles files, string path)
    {
        ArgumentNullException.ThrowIfNull(files);
        return files.LengthOf(path) > YamlText.LargestFile ? new byte[YamlText.LargestFile + 1] : files.Read(path);
    }
}
