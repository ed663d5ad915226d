using CsCheck;
using Layshaft.Engineering.Settings;

namespace Layshaft.Engineering.Tests.Settings;

public class ShimPackSearchPropertyTests
{
    // Up to five thicknesses in steps of 5 or 1 µm, none or up to four of each: few enough to try every pack.
    private static readonly Gen<(int Um, int Count)[]> Stock =
        Gen.Select(Gen.Select(Gen.Int[1, 120], Gen.Int[0, 4]).Array[1, 5], Gen.Bool).Select((kinds, coarse) => kinds
            .Select(kind => (Um: kind.Item1 * (coarse ? 5 : 1), Count: kind.Item2))
            .DistinctBy(kind => kind.Um)
            .ToArray());

    [Fact]
    public void Packs_are_the_best_three_of_all_that_could_be_built() =>
        Gen.Select(Stock, Gen.Int[0, 900], Gen.Int[-300, 600], Gen.Int[0, 60], Gen.Bool).Sample(
            (stock, trial, measured, width, reduces) =>
            {
                var (low, high) = (40, 40 + width);
                var plan = ShimPacks.For(Shims.Task(
                    trial / 1000.0, measured / 1000.0, (low / 1000.0, high / 1000.0),
                    reduces ? ShimEffect.Reduces : ShimEffect.Increases,
                    [.. stock.Select(kind => (kind.Um / 1000.0, kind.Count))]));

                var expected = EveryPack(stock)
                    .Select(pack => (pack.Shims, Value: reduces ? measured + trial - pack.Total : measured - trial + pack.Total))
                    .Where(pack => pack.Value >= low && pack.Value <= high)
                    .Select(pack => (pack.Shims, TwiceOff: Math.Abs((2 * pack.Value) - low - high)))
                    .Order().Take(3).ToArray();
                var found = plan.Packs.Select(pack =>
                    (pack.ShimCount, (int)Math.Round(pack.OffMiddle.Micrometers * 2))).ToArray();

                Assert.Equal(expected, found);
            }, iter: 2000);

    [Fact]
    public void Shims_in_thou_give_the_same_packs_as_shims_in_micrometres() =>
        Gen.Select(Stock, Gen.Int[0, 300], Gen.Int[0, 300], Gen.Int[0, 60]).Sample((stock, trial, measured, width) =>
        {
            string Packs(double unit) => string.Join('\n', ShimPacks.For(Shims.Task(
                trial * unit, measured * unit, (40 * unit, (40 + width) * unit), ShimEffect.Reduces,
                [.. stock.Select(kind => (kind.Um * unit, kind.Count))])).Packs.Select(pack => string.Join(' ', pack.Shims.Select(s => $"{s.Count}×{Math.Round(s.Thickness.Millimeters / unit)}"))));

            Assert.Equal(Packs(0.001), Packs(0.0254));
        }, iter: 300);

    [Fact]
    public void Each_pack_is_built_from_what_is_there_and_adds_up() =>
        Gen.Select(Stock, Gen.Int[0, 900], Gen.Int[0, 60]).Sample((stock, measured, width) =>
        {
            var plan = ShimPacks.For(Shims.Task(
                0, measured / 1000.0, (0, width / 1000.0), ShimEffect.Reduces,
                [.. stock.Select(kind => (kind.Um / 1000.0, kind.Count))]));
            foreach (var pack in plan.Packs)
            {
                Assert.Equal(pack.Thickness.Micrometers, pack.Shims.Sum(shim => shim.Thickness.Micrometers * shim.Count), 1e-6);
                Assert.All(pack.Shims, shim => Assert.InRange(
                    shim.Count, 1, stock.Single(kind => kind.Um == (int)Math.Round(shim.Thickness.Micrometers)).Count));
            }

            Assert.Equal(plan.Packs.Count, plan.Packs.Select(pack => string.Join(' ', Shims.Of(pack))).Distinct().Count());
        });

    [Fact]
    public void The_purchase_has_the_fewest_shims_to_buy_of_all_that_could_be_built() =>
        Gen.Select(Stock, Gen.Int[0, 700], Gen.Int[0, 20]).Sample((stock, measured, width) =>
        {
            var plan = ShimPacks.For(Shims.Task(
                0, measured / 1000.0, (0, width / 1000.0), ShimEffect.Reduces,
                [.. stock.Select(kind => (kind.Um / 1000.0, kind.Count))]));
            if (plan.StockSuffices || stock.Length > 3)
            {
                return;
            }

            var least = EveryPack([.. stock.Select(kind => (kind.Um, kind.Count + 4))])
                .Where(pack => pack.Total >= measured - width && pack.Total <= measured)
                .Select(pack => (int?)pack.Counts.Zip(stock, (used, kind) => Math.Max(0, used - kind.Count)).Sum())
                .Min();
            Assert.Equal(least, plan.Purchase?.Shims.Sum(shim => shim.ToBuy));
        });

    private static IEnumerable<(int Shims, int Total, int[] Counts)> EveryPack((int Um, int Count)[] stock)
    {
        IEnumerable<int[]> packs = [[]];
        foreach (var kind in stock)
        {
            packs = packs.SelectMany(pack => Enumerable.Range(0, kind.Count + 1).Select(used => (int[])[.. pack, used])).ToArray();
        }

        return packs.Select(pack => (pack.Sum(), pack.Zip(stock, (used, kind) => used * kind.Um).Sum(), pack));
    }
}
