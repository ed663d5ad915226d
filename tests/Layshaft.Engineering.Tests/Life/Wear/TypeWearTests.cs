using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Wear;

public class TypeWearTests
{
    private static readonly Gen<WearReading[]> Unit =
        Gen.Select(Gen.Double[0.002, 0.03], Gen.Double[5, 25].Array[1, 4], Gen.Double[-0.03, 0.03].Array[4], (rate, steps, noise) =>
            steps.Select((_, i) => steps[..(i + 1)].Sum()).Select((use, i) => new WearReading(use, rate * use + noise[i])).ToArray());

    [Fact]
    public void Fewer_than_five_units_are_not_pooled() =>
        Unit.Array[0, TypeWear.LeastUnits - 1].Sample(units => Assert.Null(TypeWear.Of(units, 0.02)), iter: 20);

    [Fact]
    public void One_units_readings_move_the_median_to_a_neighbour_at_most()
    {
        Gen.Select(Unit.Array[TypeWear.LeastUnits + 1, 12], Unit, Gen.Double[0.01, 100]).Sample((units, other, factor) =>
        {
            // Single readings keep the common height at zero, so that the rates of the rest stay as they are.
            WearReading[][] single = [.. units.Select(u => u[..1])];
            WearReading[] changed = [other[0] with { Value = other[0].Value * factor }];
            var logs = single.Select(u => Math.Log(Math.Max(u[0].Value, 0.01) / u[0].Use)).Order().ToArray();
            var middle = logs.Length / 2;
            foreach (var now in new[] { TypeWear.Of([changed, .. single[1..]], 0.02)!, TypeWear.Of(single[1..], 0.02)! })
            {
                Assert.Equal(1, now.Rates[0].Power);
                Assert.InRange(now.Rounded().LogMedian, logs[middle - 2] - TypeWear.LogStep, logs[Math.Min(middle + 1, logs.Length - 1)] + TypeWear.LogStep);
            }
        }, iter: 300);
    }

    [Fact]
    public void Rounding_never_lowers_a_rate_or_its_spread()
    {
        Unit.Array[5, 9].Sample(units =>
        {
            var type = TypeWear.Of(units, 0.02)!;
            var rounded = type.Rounded();
            Assert.All(type.Rates.Zip(rounded.Rates), r => Assert.True(
                r.Second.LogMean >= r.First.LogMean - 1e-9 && r.Second.LogDeviation >= r.First.LogDeviation - 1e-9 && r.Second.LogMean <= r.First.LogMean + TypeWear.LogStep));
            Assert.Equal(rounded.Rates, rounded.Rounded().Rates);
        }, iter: 200);
    }

    [Fact]
    public void The_nearer_a_part_is_to_its_limit_the_sooner_it_is_looked_at()
    {
        Gen.Select(Unit.Array[5, 9], Gen.Double[10, 40], Gen.Double[0.05, 0.5], Gen.Double[0.01, 0.3]).Sample((units, use, share, more) =>
        {
            var type = TypeWear.Of(units, 0.02)!;
            if (PooledTrend.Of([new(use, share)], WearLimit.Share, type, new() { ReadingUncertainty = 0.02 }) is { } less
                && PooledTrend.Of([new(use, share + more)], WearLimit.Share, type, new() { ReadingUncertainty = 0.02 }) is { } worn)
            {
                Assert.True(worn.LookAgainWithin <= less.LookAgainWithin);
                Assert.True(less.LookAgainWithin <= less.Remaining + 1e-9);
            }
        }, iter: 200);
    }

    [Fact]
    public void Without_figures_of_an_instrument_or_several_readings_nothing_is_forecast()
    {
        WearReading[][] single = [.. Enumerable.Range(1, 6).Select(i => new WearReading[] { new(10 * i, 0.1 * i) })];
        Assert.Null(PooledTrend.Of([new(20, 0.2)], WearLimit.Share, TypeWear.Of(single, 0)!, new()));
        Assert.Null(RelativeRate.Of([new(20, 0.2)], TypeWear.Of(single, 0)!, 0));
    }

    [Fact]
    public void A_part_that_wears_twice_as_fast_differs_from_the_median_and_one_that_wears_alike_does_not()
    {
        WearReading[][] units = [.. new[] { 0.8, 0.9, 0.95, 1, 1.05, 1.1, 1.2 }.Select(f => new WearReading[] { new(20, 0.2 * f), new(40, 0.4 * f) })];
        var type = TypeWear.Of(units, 0.01)!.Rounded();
        var fast = RelativeRate.Of([new(20, 0.4), new(35, 0.7)], type, 0.01)!;
        Assert.True(fast.Differs);
        Assert.InRange(fast.Ratio, 1.85, 2.15);
        Assert.False(RelativeRate.Of([new(20, 0.21), new(35, 0.36)], type, 0.01)!.Differs);
        Assert.True(RelativeRate.Of([new(20, 0.1), new(35, 0.17)], type, 0.01) is { Differs: true, Ratio: < 0.6 });
    }

    // The benchmark named coverage runs many more cases: up to 2.5 % is what the level promises.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(1.5, 2)]
    public void Look_again_comes_before_the_limit(double power, int count)
    {
        var random = new Random(3);
        var (said, late) = (0, 0);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        WearReading[] Part(int readings, out double life)
        {
            var (rate, start) = (Math.Exp(0.4 * Normal()), 0.03 * Normal());
            life = 100 * Math.Pow((1 - start) / rate, 1 / power);
            return [.. Enumerable.Range(1, readings).Select(i => 60.0 * i / readings).Select(use => new WearReading(use, start + rate * Math.Pow(use / 100, power) + 0.02 * Normal()))];
        }

        for (var i = 0; i < 200; i++)
        {
            var own = Part(count, out var life);
            var others = Enumerable.Range(0, 8).Select(_ => Part(random.Next(1, 4), out var _)).ToArray();
            if (life > 60 && PooledTrend.Of(own, WearLimit.Share, TypeWear.Of(others, 0.02)!.Rounded(), new() { ReadingUncertainty = 0.02 }) is { } trend)
            {
                said++;
                late += 60 + trend.LookAgainWithin > life ? 1 : 0;
            }
        }

        Assert.InRange(said, 120, 200);
        Assert.InRange(late / (double)said, 0, 0.025);
    }
}
