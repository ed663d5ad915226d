using Layshaft.Engineering.Measurement.Gears;

namespace Layshaft.Engineering.Settings;

/// <summary>The pack thicknesses that give a value in the band, in whole micrometres.</summary>
/// <param name="FromUm">Least thickness; may be below 0.</param>
/// <param name="ToUm">Greatest thickness.</param>
/// <param name="TwiceMiddleUm">Twice the thickness that gives the middle of the band, whole also for an odd band.</param>
/// <param name="TrialUm">Thickness of the trial pack.</param>
/// <param name="MeasuredUm">The value measured with it.</param>
internal sealed record PackWindow(int FromUm, int ToUm, int TwiceMiddleUm, int TrialUm, int MeasuredUm)
{
    /// <summary>Works out the window from a trial: each micrometre of shim moves the value by one.</summary>
    public static PackWindow Of(ShimTask task)
    {
        var trial = Micrometres.Nearest(task.Trial.PackThickness, "trial pack");
        ArgumentOutOfRangeException.ThrowIfNegative(trial, "trial pack");
        var measured = Micrometres.Nearest(task.Trial.Measured.AsLength(), "measured value");
        var low = Micrometres.Exact(task.Target.Low, "lower end of the band");
        var high = Micrometres.Exact(task.Target.High, "upper end of the band");
        return task.Effect == ShimEffect.Reduces
            ? new PackWindow(trial + measured - high, trial + measured - low, (2 * (trial + measured)) - low - high, trial, measured)
            : new PackWindow(trial - measured + low, trial - measured + high, (2 * (trial - measured)) + low + high, trial, measured);
    }
}
