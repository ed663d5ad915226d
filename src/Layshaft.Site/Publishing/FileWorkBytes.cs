namespace Layshaft.Site.Publishing;

/// <summary>Writing what is in memory already.</summary>
internal static class FileWorkBytes
{
    /// <summary>Writes a file whole: beside the old one, and then in its place.</summary>
    internal static void Replace(this IFileWork files, string path, byte[] content) => files.Replace(path, stream => stream.Write(content));
}
