namespace Layshaft.Engineering.Gearing;

/// <summary>
/// The gears that can count on one straight with one drop pair and final drive, and the runs made for them. Gears outside it are either
/// past their limiter at the corner exit whatever pair they have, or shifted into only above a speed that the car cannot reach.
/// </summary>
internal sealed class ShelfWindow
{
    // Momentum that an engine brings into an upshift may take the car past the ideal's speed; this is several times as much.
    private const double PastIdeal = 1.02;

    private readonly Dictionary<long, ShelfLeg> _legs = [];
    private ShelfPairs _pairs = null!;
    private int _low;
    private int _high;
    private bool _withTop;

    internal void Begin(ShelfPairs pairs, ShelfSpeeds speeds, in StraightTask task, double idealTopMps, double idealMps2)
    {
        _legs.Clear();
        _pairs = pairs;
        int top = pairs.Gears - 1;
        (_low, _high, _withTop) = (0, top, false);
        double exitMps = task.StartMps;
        if (exitMps >= speeds.LeastLimiter[top])
        {
            return; // top gear's limiter decides over the exit: everything may count
        }

        // The longest gear that is past its limiter at the exit with every pair: a shift inside the corner may still begin in it.
        while (_low < top && speeds.MostLimiter[_low + 1] < exitMps)
        {
            _low++;
        }

        double mostMps = Math.Max(idealTopMps, exitMps) * PastIdeal;
        int last = top;
        while (last > 0 && speeds.LeastShift[last - 1] > mostMps)
        {
            last--;
        }

        int first = 0;
        while (first < top && speeds.LeastShift[first] <= exitMps)
        {
            first++;
        }

        // Out of the corner the next longer gear is tried too.
        _high = Math.Min(top, Math.Max(last, first + 1));

        // LongerGear asks top gear's limiter whether the car can come as far as the speed that decides.
        MotionBounds bounds = task.Bounds;
        double perTwice = 1 / (2 * Math.Max(idealMps2, 1e-6));
        double farMps = Math.Sqrt(
            (bounds.FinishM + (bounds.EndSpeedSquare * bounds.PerTwiceBraking) + (exitMps * exitMps * perTwice)) / (bounds.PerTwiceBraking + perTwice));
        _withTop = _high < top && speeds.LeastLimiter[top] <= farMps * PastIdeal;
    }

    internal bool TryGet(int[] choice, out ShelfLeg leg) => _legs.TryGetValue(Key(choice), out leg);

    internal void Add(int[] choice, ShelfLeg leg, int downshifts)
    {
        // A car that falls back may come to gears below the window.
        if (downshifts > 0 && _low > 0)
        {
            _legs.Clear();
            _low = 0;
        }

        _legs[Key(choice)] = leg;
    }

    private long Key(int[] choice)
    {
        long key = 0;
        for (int gear = _low; gear <= _high; gear++)
        {
            key = (key * _pairs[gear].Count) + choice[gear];
        }

        return _withTop ? (key * _pairs[_pairs.Gears - 1].Count) + choice[^1] : key;
    }
}
