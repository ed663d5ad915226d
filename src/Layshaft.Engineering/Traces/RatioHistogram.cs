namespace Layshaft.Engineering.Traces;

/// <summary>How often each ratio of engine to road speed occurs, by its logarithm: a gear is a narrow peak. A fixed 74 kB.</summary>
internal sealed class RatioHistogram
{
    /// <summary>Width of a bin: 0.05 % of the ratio.</summary>
    internal const double BinWidth = 0.0005;

    private const double First = 2.3; // 10 rpm for each m/s
    private const int Bins = 9200;    // up to 1000 rpm for each m/s

    private readonly double[] _seconds = new double[Bins];

    /// <summary>Time that was counted, s.</summary>
    internal double TotalS { get; private set; }

    /// <summary>The logarithm of engine speed over road speed, 1/min for each m/s.</summary>
    internal static double LogRatio(double engineRpm, double speedMps) => Math.Log(engineRpm / speedMps);

    internal void Add(double logRatio, double seconds)
    {
        TotalS += seconds;
        int bin = BinOf(logRatio);
        if (bin is >= 0 and < Bins)
        {
            _seconds[bin] += seconds;
        }
    }

    /// <summary>Time within a distance of a ratio, s.</summary>
    internal double Within(double logRatio, double half)
    {
        double sum = 0;
        for (int i = Math.Max(0, BinOf(logRatio - half)); i <= Math.Min(Bins - 1, BinOf(logRatio + half)); i++)
        {
            sum += _seconds[i];
        }

        return sum;
    }

    /// <summary>The median within a distance of a ratio; the ratio itself when nothing is there.</summary>
    internal double MedianWithin(double logRatio, double half)
    {
        double left = Within(logRatio, half) / 2;
        if (left <= 0)
        {
            return logRatio;
        }

        for (int i = Math.Max(0, BinOf(logRatio - half)); i < Bins; i++)
        {
            if (left <= _seconds[i])
            {
                return First + ((i + (left / _seconds[i])) * BinWidth);
            }

            left -= _seconds[i];
        }

        return logRatio;
    }

    /// <summary>The same, smoothed with a parabola of this half width (Epanechnikov kernel, 1 at its centre).</summary>
    internal double[] Smoothed(double half)
    {
        int reach = (int)(half / BinWidth);
        var kernel = new double[(2 * reach) + 1];
        for (int k = -reach; k <= reach; k++)
        {
            double share = k / (double)(reach + 1);
            kernel[k + reach] = 1 - (share * share);
        }

        var smooth = new double[Bins];
        for (int i = 0; i < Bins; i++)
        {
            if (_seconds[i] > 0)
            {
                for (int k = Math.Max(-reach, -i); k <= reach && i + k < Bins; k++)
                {
                    smooth[i + k] += _seconds[i] * kernel[k + reach];
                }
            }
        }

        return smooth;
    }

    /// <summary>The bin of a ratio; it may lie outside.</summary>
    internal static int BinOf(double logRatio) => (int)Math.Floor((logRatio - First) / BinWidth);

    /// <summary>The ratio at the middle of a bin.</summary>
    internal static double Middle(int bin) => First + ((bin + 0.5) * BinWidth);
}
