using CsCheck;
using Layshaft.Site.Photos;

namespace Layshaft.Site.Tests.Photos;

public class ShrinkTests
{
    private static readonly Gen<(int From, int To)> Sides = Gen.Select(Gen.Int[1, 300], Gen.Double[0.01, 1]).Select((from, share) => (from, Math.Max(1, (int)(from * share))));

    [Fact]
    public void Weights_add_up_to_one_and_lie_inside() => Sides.Sample(side =>
    {
        var weights = new LanczosWeights(side.From, side.To);
        for (var i = 0; i < side.To; i++)
        {
            Assert.Equal(1 << LanczosWeights.Bits, weights.Of(i).ToArray().Sum(w => (int)w));
            for (var t = 0; t < weights.Taps; t++)
            {
                Assert.True(weights.Of(i)[t] == 0 || weights.Start(i) + t < side.From);
            }
        }
    });

    [Fact]
    public void Both_code_paths_give_the_same_bytes() => Gen.Select(Sides, Sides, Gen.Int).Sample((w, h, seed) =>
    {
        using var picture = Random(w.From, h.From, seed);
        using var fast = Shrinker.Shrink(new PictureRows(picture), w.To, h.To)!;
        using var portable = Shrinker.Shrink(new PictureRows(picture), w.To, h.To, portable: true)!;

        return fast.Bytes.SequenceEqual(portable.Bytes);
    }, iter: 60);

    [Fact]
    public void A_flat_picture_stays_as_it_is() => Gen.Select(Sides, Sides, Gen.UInt).Sample((w, h, colour) =>
    {
        using var picture = new Picture(w.From, h.From);
        picture.Pixels.Fill(colour);
        using var small = Shrinker.Shrink(new PictureRows(picture), w.To, h.To)!;

        return !small.Pixels.ContainsAnyExcept(colour);
    }, iter: 60);

    [Fact]
    public void Sums_agree_with_the_formula_in_floating_point()
    {
        using var picture = Random(97, 61, 5);
        using var small = Shrinker.Shrink(new PictureRows(picture), 40, 23)!;

        for (var y = 0; y < 23; y++)
        {
            for (var x = 0; x < 40; x++)
            {
                for (var c = 0; c < 4; c++)
                {
                    // Two roundings to whole numbers, the first one blown up by at most the absolute sum of the weights
                    Assert.InRange(small.Row(y)[(4 * x) + c] - Exact(picture, x, y, c), -1.6, 1.6);
                }
            }
        }
    }

    private static double Exact(Picture picture, int x, int y, int c)
    {
        double sum = 0, total = 0;
        for (var row = 0; row < 61; row++)
        {
            var down = Weight(row, y, 61.0 / 23);
            double across = 0, acrossTotal = 0;
            for (var column = 0; column < 97 && down != 0; column++)
            {
                var weight = Weight(column, x, 97.0 / 40);
                across += weight * picture.Row(row)[(4 * column) + c];
                acrossTotal += weight;
            }

            sum += down == 0 ? 0 : down * Math.Clamp(across / acrossTotal, 0, 255);
            total += down;
        }

        return Math.Clamp(sum / total, 0, 255);
    }

    private static double Weight(int from, int to, double shrink)
    {
        var d = (from + 0.5 - ((to + 0.5) * shrink)) / shrink;
        return Math.Abs(d) >= 3 ? 0 : d == 0 ? 1 : Math.Sin(Math.PI * d) * Math.Sin(Math.PI * d / 3) * 3 / (Math.PI * Math.PI * d * d);
    }

    private static Picture Random(int width, int height, int seed)
    {
        var picture = new Picture(width, height);
        new Random(seed).NextBytes(picture.Bytes);
        return picture;
    }
}
