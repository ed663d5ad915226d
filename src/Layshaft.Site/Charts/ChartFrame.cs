namespace Layshaft.Site.Charts;

/// <summary>What every chart is told besides its data: who it is, for the page and for a screen reader.</summary>
/// <param name="IdPrefix">
/// Start of every id in the chart; unique on its page. An ASCII letter, then letters, digits, <c>-</c> or <c>_</c>.
/// </param>
/// <param name="Title">Short name of the chart, read aloud first.</param>
/// <param name="Description">What the chart shows, in words, for a reader who cannot see it.</param>
public sealed record ChartFrame(string IdPrefix, string Title, string Description);
