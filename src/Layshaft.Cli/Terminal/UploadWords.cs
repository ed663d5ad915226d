using Layshaft.Site.Publishing.Upload;

namespace Layshaft.Cli.Terminal;

/// <summary>Says what waits for upload: first what must be deleted at the host.</summary>
internal static class UploadWords
{
    /// <summary>The lines; none while nothing waits.</summary>
    /// <param name="folder">The site's folder.</param>
    public static IEnumerable<string> Of(DirectoryInfo folder)
    {
        if (UploadList.Beside(folder.FullName) is not { Count: > 0 } list)
        {
            yield break;
        }

        if (list.PrivateDeletions > 0)
        {
            yield return $"DELETE AT THE HOST: {Files(list.PrivateDeletions)} of customer pages. Until then, anyone with the old link can read them.";
        }

        yield return $"{Changes(list)} for upload, listed in {Path.GetRelativePath(Directory.GetCurrentDirectory(), list.Path)}. When the host is up to date: layshaft uploaded --out {folder}";
    }

    private static string Changes(UploadList list) => list.Count == 1 ? "1 change waits" : $"{list.Count} changes wait";

    private static string Files(int count) => count == 1 ? "1 file" : $"{count} files";
}
