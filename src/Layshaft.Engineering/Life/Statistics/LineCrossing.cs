namespace Layshaft.Engineering.Life;

/// <summary>Where a fitted line reaches a given height.</summary>
/// <param name="Estimate">The abscissa at which the fitted line itself reaches the height.</param>
/// <param name="Bounds">
/// The abscissae at which the interval about the line reaches it (Fieller 1954; inverse prediction). Open on a side
/// where the slope is too uncertain for the interval ever to leave the height behind.
/// </param>
public sealed record LineCrossing(double Estimate, Bounds Bounds);
