namespace Layshaft.Cli.Entering;

/// <summary>Puts a new content in the place of a file in one step: whoever reads it, or is killed meanwhile, has the old one or the new one.</summary>
internal static class SafeFile
{
    /// <summary>Writes the content beside the file, through to the disk, and renames it.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> content)
    {
        // A name with a dot is left alone by the reader of books.
        var draft = Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.part");
        using (var file = new FileStream(draft, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            file.Write(content);
            file.Flush(flushToDisk: true);
        }

        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(draft, File.GetUnixFileMode(path));
        }

        File.Move(draft, path, overwrite: true);
    }
}
