using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Slices;

/// <summary>A slice of the book as it is to be published.</summary>
/// <param name="Record">What is kept of it for the next publish.</param>
/// <param name="Outputs">Its files, where it was read; gone through once.</param>
/// <param name="Kept">Its files, where the site has them all already; null where it was read.</param>
internal sealed record PlannedSlice(CachedSlice Record, IEnumerable<PlannedOutput> Outputs, UnchangedGroup? Kept);
