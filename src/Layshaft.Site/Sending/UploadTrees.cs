using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Sending;

/// <summary>Keeps what is meant for one customer out of the folders that are uploaded for all.</summary>
public static class UploadTrees
{
    /// <summary>Whether a folder is, or lies in, one that is uploaded: <c>customers/</c> or <c>reference/</c> of a published site.</summary>
    /// <param name="folder">The folder; it need not exist.</param>
    public static bool Holds(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        for (var at = new DirectoryInfo(OutputFolder.RealPath(folder)); at.Parent is { } above; at = above)
        {
            if (at.Name.ToLowerInvariant() is Addresses.Customers or Addresses.Reference && File.Exists(Path.Combine(above.FullName, new PublishOptions().ManifestPath)))
            {
                return true;
            }
        }

        return false;
    }
}
