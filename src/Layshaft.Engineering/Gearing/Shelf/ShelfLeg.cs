namespace Layshaft.Engineering.Gearing;

/// <summary>What the search needs of one run down one straight.</summary>
/// <param name="TimeS">Time on it, s.</param>
/// <param name="TopMps">Greatest speed, m/s.</param>
/// <param name="TopGear">The gear of that speed, from 0.</param>
/// <param name="IsFinished">Whether the car comes to the end.</param>
internal readonly record struct ShelfLeg(double TimeS, double TopMps, int TopGear, bool IsFinished);
