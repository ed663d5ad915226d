namespace Layshaft.Engineering.Life;

/// <summary>What was measured on a part after some use.</summary>
/// <param name="Use">The part's own use since it was fitted new, in the measure of the trend.</param>
/// <param name="Value">
/// The measured value: a share of the allowance, or a length, a play, a torque in one unit that readings, new value and
/// limit have in common.
/// </param>
public readonly record struct WearReading(double Use, double Value);
