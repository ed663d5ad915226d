using Layshaft.Book.Problems;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Building.Parts;

/// <summary>A job of a part as it is known without reading it.</summary>
/// <param name="Content">The hash of its file.</param>
/// <param name="Links">What ties it to the rest of the book.</param>
internal sealed record KnownJob(string Content, JobLinks Links);

/// <summary>What is kept of a part besides its tally.</summary>
/// <param name="Jobs">Its jobs.</param>
/// <param name="Bench">The paths of the files of those jobs of which a unit is still in the shop.</param>
/// <param name="Newest">The newest day of anything done in its jobs; null without any.</param>
/// <param name="Problems">What is wrong or worth knowing in it.</param>
internal sealed record PartRest(IReadOnlyList<KnownJob> Jobs, IReadOnlyList<string> Bench, DateOnly? Newest, IReadOnlyList<Problem> Problems);
