namespace Layshaft.Site.Publishing;

/// <summary>Writing what is in memory already.</summary>
internal static class FileWorkBytes
{
    /// <summary>Writes a file that does not exist yet, so that it outlives a power cut.</summary>
    internal static void WriteThrough(this IFileWork files, string path, byte[] content) => files.WriteThrough(path, stream => stream.Write(content));

    /// <summary>Writes a file whole: beside the old one, and then in its place.</summary>
    internal static void Replace(this IFileWork files, string path, byte[] content) => files.Replace(path, stream => stream.Write(content));
}
