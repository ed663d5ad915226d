namespace Layshaft.Engineering.Life;

/// <summary>One part's life as far as it was seen.</summary>
/// <param name="Amount">Use since new, in the measure of the sample; greater than 0.</param>
/// <param name="Failed">
/// <c>true</c> when it ended there because of its condition; <c>false</c> when it was still good (running, on the
/// shelf, or renewed as a precaution): right-censored.
/// </param>
public readonly record struct ObservedLife(double Amount, bool Failed);
