namespace Layshaft.Site.Publishing;

/// <summary>How to publish.</summary>
public sealed record PublishOptions
{
    /// <summary>The book folder, which a site may never replace; null if there is none.</summary>
    public string? Book { get; init; }

    /// <summary>
    /// Where in the site the list of its files goes. It names every customer's key, so it belongs into the folder that is
    /// never uploaded.
    /// </summary>
    public string ManifestPath { get; init; } = "shop/layshaft-manifest.json";

    /// <summary>Whether customers are sent links to this site, so that each must keep its reader; a preview in a temporary folder is for the shop's eyes only.</summary>
    public bool KeepsReaders { get; init; } = true;

    /// <summary>The folder of that list, which only its owner may look into; null if the list is in none.</summary>
    internal string? PrivateFolder => ManifestPath.IndexOf('/', StringComparison.Ordinal) is > 0 and var end ? ManifestPath[..end] : null;

    /// <summary>Whether a file of the site is in that folder.</summary>
    /// <param name="path">The file's path in the site.</param>
    internal bool IsPrivate(string path) => PrivateFolder is { } folder && path.StartsWith(folder, StringComparison.Ordinal) && path[folder.Length] == '/';

    /// <summary>What is known from the publish before, where somebody else reads it too; null to read it.</summary>
    internal TraceStore? Store { get; init; }

    /// <summary>How many outputs are made at once.</summary>
    public int Parallelism { get; init; } = Environment.ProcessorCount;

    /// <summary>Told after each output that was made; from any thread.</summary>
    public IProgress<PublishProgress>? Progress { get; init; }
}

/// <summary>How far a publish is.</summary>
/// <param name="Done">How many outputs are ready.</param>
/// <param name="Total">How many have to be made; kept ones are not counted.</param>
/// <param name="Path">The one that became ready.</param>
public readonly record struct PublishProgress(int Done, int Total, string Path);
