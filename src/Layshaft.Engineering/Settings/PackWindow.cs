using Layshaft.Engineering.Measurement.Gears;

namespace Layshaft.Engineering.Settings;

/// <summary>The pack thicknesses that give a value in the band, in tenths of a micrometre.</summary>
/// <param name="FromTenths">Least thickness; may be below 0.</param>
/// <param name="ToTenths">Greatest thickness.</param>
/// <param name="TwiceMiddleTenths">Twice the thickness that gives the middle of the band, whole also for an odd band.</param>
/// <param name="TrialTenths">Thickness of the trial pack.</param>
/// <param name="MeasuredTenths">The value measured with it.</param>
internal sealed record PackWindow(int FromTenths, int ToTenths, int TwiceMiddleTenths, int TrialTenths, int MeasuredTenths)
{
    /// <summary>Works out the window from a trial: the value moves by as much as the pack.</summary>
    public static PackWindow Of(ShimTask task)
    {
        var trial = TenthMicrometres.Nearest(task.Trial.PackThickness, "trial pack");
        ArgumentOutOfRangeException.ThrowIfNegative(trial, "trial pack");
        var measured = TenthMicrometres.Measured(task.Trial.Measured.AsLength(), "measured value");
        var low = TenthMicrometres.AtLeast(task.Target.Low, "lower end of the band");
        var high = TenthMicrometres.AtMost(task.Target.High, "upper end of the band");
        return task.Effect == ShimEffect.Reduces
            ? new PackWindow(trial + measured - high, trial + measured - low, (2 * (trial + measured)) - low - high, trial, measured)
            : new PackWindow(trial - measured + low, trial - measured + high, (2 * (trial - measured)) + low + high, trial, measured);
    }
}
