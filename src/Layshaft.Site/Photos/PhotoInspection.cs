namespace Layshaft.Site.Photos;

/// <summary>
/// The outcome of looking at a photo's header: its facts, a problem, or both (a usable photo with an odd file name).
/// Never neither.
/// </summary>
/// <param name="Facts">What the header says; null when the photo cannot be used.</param>
/// <param name="Problem">What is wrong; null when nothing is.</param>
public sealed record PhotoInspection(PhotoFacts? Facts, PhotoProblem? Problem)
{
    /// <summary>Whether renditions can be made of it, as far as the header tells.</summary>
    public bool IsUsable => Facts is not null;
}
