using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

internal static class Samples
{
    /// <summary>One life as inspections show it: fitted new or used, looked at two to six times, good to the last or found worn.</summary>
    public static readonly Gen<ObservedLife> Inspected =
        Gen.Select(Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 30]), Gen.Double[5, 40].Array[2, 6], Gen.Bool, (entry, steps, worn) =>
        {
            var good = entry + steps[..^1].Sum();
            return new ObservedLife(good, worn ? good + steps[^1] : null, entry);
        });

    /// <summary>Samples of 10 to 25 lives seen at inspections, enough of them failed, at different usages.</summary>
    public static readonly Gen<LifeSample> AnyInspected =
        Inspected.Array[10, 25]
            .Where(lives => lives.Where(life => life.Failed).Select(life => life.LastGood).Distinct().Count() >= Weibull.LeastFailures)
            .Select(lives => Of(lives))
            .Where(sample => Weibull.Fit(sample) is WeibullFit);

    /// <summary>Samples of 8 to 25 lives whose ends are known to the moment, enough of them failed, at different usages.</summary>
    public static readonly Gen<LifeSample> Any =
        Gen.Select(Gen.Double[1, 500], Gen.Bool, (usage, failed) => failed ? ObservedLife.FailedAt(usage) : ObservedLife.GoodAt(usage)).Array[8, 25]
            .Where(lives => lives.Where(life => life.Failed).Select(life => life.LastGood).Distinct().Count() >= Weibull.LeastFailures)
            .Select(lives => Of(lives));

    public static LifeSample Of(params IEnumerable<ObservedLife> lives) => LifeSample.Of(UseMeasure.Hours, lives);

    public static LifeSample Failing(params double[] usages) => Of(usages.Select(ObservedLife.FailedAt));
}
