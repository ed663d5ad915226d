using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>What is known of a file of the site that we wrote: what it was made from, and what came out.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Size">Its length in bytes.</param>
/// <param name="Sha256">The hash of its bytes.</param>
internal sealed record Trace(string Path, long Size, ContentHash Sha256) : IPathed
{
    /// <summary>The key of what it was made from, see <see cref="PlannedOutput"/>; none where the next publish shall make it again.</summary>
    public ContentHash Key { get; init; }

    /// <summary>Its time of change when we last saw it whole, in ticks; 0 where that is not known.</summary>
    public long Modified { get; init; }

    /// <summary>The name of the group that it was made with, see <see cref="OutputGroup"/>; null for none.</summary>
    public string? Group { get; init; }
}

/// <summary>Every file of a site that we wrote, with the links that the site has or had. Immutable.</summary>
/// <param name="Files">The files.</param>
/// <param name="Links">The links.</param>
internal sealed record SiteTraces(PathIndex<Trace> Files, LinkHistory Links)
{
    /// <summary>The traces of nothing.</summary>
    internal static SiteTraces None { get; } = new(new([]), LinkHistory.None);

    /// <summary>The hash of the site's manifest that they belong to; null where there is none.</summary>
    internal ContentHash? Manifest { get; init; }

    /// <summary>When they were written, in ticks; 0 where they were not.</summary>
    internal long Noted { get; init; }

    /// <summary>A file of a time before this one that has the size and time that are noted is as it was: a later change would show.</summary>
    internal long TrustBefore => DiskClock.FreshFrom(Noted);

    /// <summary>The traces of a site whose manifest is another than the one that these belong to.</summary>
    /// <param name="manifest">The site's manifest.</param>
    /// <param name="hash">Its hash.</param>
    /// <returns>Of files with the same bytes the rest is known.</returns>
    internal SiteTraces For(SiteManifest manifest, ContentHash hash) => new(
        new(manifest.Files.Select(f => Files.Find(f.Path) is { } known && known.Sha256 == f.Sha256 && known.Size == f.Size ? known : f)),
        manifest.Links)
    { Manifest = hash, Noted = Noted };
}
