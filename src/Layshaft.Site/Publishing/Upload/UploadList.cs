using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing.Upload;

/// <summary>What waits for upload since the last upload that was confirmed.</summary>
/// <param name="Path">Where the list is.</param>
/// <param name="Uploads">How many files to upload.</param>
/// <param name="Deletions">How many files to delete at the host.</param>
/// <param name="PrivateDeletions">How many of those are customers' own: whoever has the link reads them until they are deleted.</param>
public sealed record UploadList(string Path, int Uploads, int Deletions, int PrivateDeletions)
{
    /// <summary>How many files wait.</summary>
    public int Count => Uploads + Deletions;

    /// <summary>What waits; null where nothing was published yet.</summary>
    /// <param name="output">The site's folder.</param>
    /// <exception cref="IOException">The list cannot be read.</exception>
    public static UploadList? Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var list = new StateFolder(OutputFolder.RealPath(output)).Changes;
        return File.Exists(list) ? Of(list) : null;
    }

    /// <summary>Whether a file of a folder of the site waits.</summary>
    /// <param name="folder">The folder, from the site's, with forward slashes.</param>
    /// <exception cref="IOException">The list cannot be read.</exception>
    public bool Names(string folder) => UploadLines.In(Path).Any(c => c.Path.StartsWith($"{folder}/", StringComparison.Ordinal));

    internal static UploadList Of(string list)
    {
        // Only counted, and as bytes: this is asked at every publish, and all files of a large site may wait.
        var (uploads, deletions, own) = (0, 0, 0);
        ReadOnlySpan<byte> text = RegularFile.ReadAll(list);
        foreach (var range in text.Split((byte)'\n'))
        {
            var line = text[range];
            var isRemoved = line.StartsWith("- "u8);
            uploads += isRemoved || line.Length < 2 ? 0 : 1;
            deletions += isRemoved ? 1 : 0;
            own += line.StartsWith("- customers/"u8) ? 1 : 0;
        }

        return new(list, uploads, deletions, own);
    }
}
