using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>A trial assembly: the pack that was in it and what was measured with it.</summary>
/// <param name="PackThickness">Thickness of the trial pack, 0 or more; rounded to tenths of a micrometre.</param>
/// <param name="PackUncertainty">Standard uncertainty of that thickness, 0 or more.</param>
/// <param name="Measured">The float, preload (as an interference) or backlash measured with it; a length.</param>
public sealed record TrialBuild(Length PackThickness, Length PackUncertainty, MeasuredQuantity Measured);
