using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

internal static class Samples
{
    /// <summary>Samples of 6 to 25 lives, at least three of them failed at different uses.</summary>
    public static readonly Gen<LifeSample> Any =
        Gen.Select(Gen.Double[1, 500], Gen.Bool, (amount, failed) => new ObservedLife(amount, failed)).Array[6, 25]
            .Where(lives => lives.Where(life => life.Failed).Select(life => life.Amount).Distinct().Count() >= 3)
            .Select(lives => Of(lives));

    public static LifeSample Of(params IEnumerable<ObservedLife> lives) => LifeSample.Of(UseMeasure.Hours, lives);

    public static LifeSample Failing(params double[] amounts) => Of(amounts.Select(amount => new ObservedLife(amount, true)));
}
