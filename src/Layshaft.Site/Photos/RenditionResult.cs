namespace Layshaft.Site.Photos;

/// <summary>
/// The outcome of making renditions: the renditions, a problem, or both (a usable photo with an odd file name).
/// Never neither.
/// </summary>
/// <param name="Renditions">What was made; null when the photo cannot be used.</param>
/// <param name="Problem">What is wrong; null when nothing is.</param>
public sealed record RenditionResult(PhotoRenditions? Renditions, PhotoProblem? Problem);
