namespace Layshaft.Site.Photos;

/// <summary>
/// How much each stored pixel gives to each pixel of a smaller row (or column): a sinc windowed by a wider sinc over
/// three zero crossings, stretched by the shrink (C. Lanczos' window; K. Turkowski, "Filters for common resampling
/// tasks", Graphics Gems I, 1990).
/// </summary>
/// <remarks>
/// The weights are whole numbers that add up to exactly 16384 for every pixel, so the sums are exact, a flat area keeps
/// its value, and every processor gives the same bytes.
/// </remarks>
internal sealed class LanczosWeights
{
    /// <summary>Bits behind the point; the weights of one pixel add up to 1 &lt;&lt; Bits.</summary>
    public const int Bits = 14;

    private const int Lobes = 3;
    private readonly short[] _weights;
    private readonly int[] _starts;

    public LanczosWeights(int from, int to)
    {
        var shrink = Math.Max(1.0, (double)from / to);
        var reach = Lobes * shrink;
        Taps = (((int)Math.Ceiling(2 * reach) + 3) / 4) * 4; // Fours fill the vectors
        _weights = new short[to * Taps];
        _starts = new int[to];
        var exact = new double[Taps];
        for (var i = 0; i < to; i++)
        {
            var centre = (i + 0.5) * from / to;
            var start = Math.Max(0, Math.Min((int)Math.Ceiling(centre - reach - 0.5), from - Taps));
            _starts[i] = start;
            for (var t = 0; t < Taps; t++)
            {
                exact[t] = start + t < from ? Lanczos((start + t + 0.5 - centre) / shrink) : 0;
            }

            Round(exact, _weights.AsSpan(i * Taps, Taps));
        }
    }

    /// <summary>Weights for each pixel, a multiple of four.</summary>
    public int Taps { get; }

    /// <summary>All weights, one pixel's after the other's.</summary>
    public ReadOnlySpan<short> All => _weights;

    /// <summary>All starts; the last is the greatest.</summary>
    public ReadOnlySpan<int> Starts => _starts;

    /// <summary>The first stored pixel that pixel <paramref name="i"/> is made of.</summary>
    public int Start(int i) => _starts[i];

    /// <summary>The weights of pixel <paramref name="i"/>.</summary>
    public ReadOnlySpan<short> Of(int i) => _weights.AsSpan(i * Taps, Taps);

    private static double Lanczos(double x) => Math.Abs(x) >= Lobes ? 0 : Sinc(x) * Sinc(x / Lobes);

    private static double Sinc(double x) => Math.Abs(x) < 1e-9 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x);

    private static void Round(double[] exact, Span<short> weights)
    {
        var sum = exact.Sum();
        int left = 1 << Bits, heaviest = 0;
        for (var t = 0; t < exact.Length; t++)
        {
            weights[t] = (short)Math.Round(exact[t] / sum * (1 << Bits));
            left -= weights[t];
            heaviest = weights[t] > weights[heaviest] ? t : heaviest;
        }

        weights[heaviest] += (short)left; // What rounding lost, where it shows least
    }
}
