using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>What a publish knows of the exchange that it just made, and whoever mends a killed one has to find out.</summary>
/// <param name="Before">The old tree when it was looked at as the site.</param>
/// <param name="Now">The site's files.</param>
/// <param name="List">The hash of the list of them.</param>
/// <param name="HasFolderTimes">Whether the disk is known to set a folder's time when a name comes into it or leaves it.</param>
internal sealed record SettledSite(OldSite Before, SiteRegister Now, ContentHash List, bool HasFolderTimes);
