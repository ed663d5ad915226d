namespace Layshaft.Site.Tests.Photos;

/// <summary>
/// How alike two pictures look: the mean structural similarity of their luma, 1 for the same picture
/// (Wang, Bovik, Sheikh, Simoncelli, "Image quality assessment: from error visibility to structural similarity",
/// IEEE Transactions on Image Processing 13(4), 2004: Gaussian window of 11 with deviation 1.5, K1 0.01, K2 0.03).
/// </summary>
internal static class StructuralSimilarity
{
    private const int Reach = 5;
    private const double C1 = 0.01 * 255 * (0.01 * 255);
    private const double C2 = 0.03 * 255 * (0.03 * 255);

    /// <summary>Of two pictures in RGBA of the same size, over all windows that lie inside.</summary>
    public static double Of(ReadOnlySpan<byte> a, ReadOnlySpan<byte> b, int width, int height)
    {
        float[] x = Luma(a), y = Luma(b);
        float[] meanX = Blur(x, width, height), meanY = Blur(y, width, height);
        float[] xx = Blur(Product(x, x), width, height), yy = Blur(Product(y, y), width, height), xy = Blur(Product(x, y), width, height);
        double sum = 0;
        for (var row = Reach; row < height - Reach; row++)
        {
            for (var column = Reach; column < width - Reach; column++)
            {
                var i = (row * width) + column;
                double mx = meanX[i], my = meanY[i];
                double vx = xx[i] - (mx * mx), vy = yy[i] - (my * my), covariance = xy[i] - (mx * my);
                sum += ((2 * mx * my) + C1) * ((2 * covariance) + C2) / (((mx * mx) + (my * my) + C1) * (vx + vy + C2));
            }
        }

        return sum / ((width - (2.0 * Reach)) * (height - (2 * Reach)));
    }

    private static float[] Luma(ReadOnlySpan<byte> rgba)
    {
        var luma = new float[rgba.Length / 4];
        for (var i = 0; i < luma.Length; i++)
        {
            luma[i] = (0.299f * rgba[4 * i]) + (0.587f * rgba[(4 * i) + 1]) + (0.114f * rgba[(4 * i) + 2]);
        }

        return luma;
    }

    private static float[] Product(float[] a, float[] b) => [.. a.Zip(b, (p, q) => p * q)];

    private static float[] Blur(float[] values, int width, int height)
    {
        var window = Enumerable.Range(-Reach, (2 * Reach) + 1).Select(d => Math.Exp(-d * d / (2 * 1.5 * 1.5))).ToArray();
        var total = window.Sum();
        var weights = window.Select(w => (float)(w / total)).ToArray();
        return Pass(Pass(values, width, height, 1, weights), width, height, width, weights);
    }

    // Near the edge, where the window does not fit, the values stay as they are: nobody reads them
    private static float[] Pass(float[] values, int width, int height, int step, float[] weights)
    {
        var blurred = (float[])values.Clone();
        var (fromRow, fromColumn) = step == 1 ? (0, Reach) : (Reach, 0);
        for (var row = fromRow; row < height - fromRow; row++)
        {
            for (var column = fromColumn; column < width - fromColumn; column++)
            {
                var i = (row * width) + column;
                var sum = 0f;
                for (var d = -Reach; d <= Reach; d++)
                {
                    sum += weights[d + Reach] * values[i + (d * step)];
                }

                blurred[i] = sum;
            }
        }

        return blurred;
    }
}
