namespace Layshaft.Engineering.Traces;

/// <summary>Compares engine over road speed under full drive with that while coasting, in the same gear: the difference is slip.</summary>
internal sealed class SlipTally(int gears)
{
    private const double FullThrottle = 0.95;
    private const double ClosedThrottle = 0.05;
    private const double LeastS = 0.5;

    private readonly Moments[] _drive = new Moments[gears];
    private readonly Moments[] _coast = new Moments[gears];

    internal void Add(in TracePointSeen point, int gear, double accelerationMps2)
    {
        double throttle = point.Sample.Throttle;
        if (gear == 0 || double.IsNaN(throttle))
        {
            return;
        }

        if (throttle >= FullThrottle && accelerationMps2 > 0)
        {
            _drive[gear - 1].Add(point.LogRatio, point.IntervalS);
        }
        else if (throttle <= ClosedThrottle && accelerationMps2 is > -2.5 and < 0)
        {
            _coast[gear - 1].Add(point.LogRatio, point.IntervalS);
        }
    }

    /// <summary>Mean slip over the gears that have both, weighted by their time, with its expanded uncertainty (k = 2); null without such a gear.</summary>
    internal (double Slip, double Uncertainty)? Result()
    {
        double sum = 0, weight = 0, variance = 0;
        for (int g = 0; g < gears; g++)
        {
            if (_drive[g].Seconds >= LeastS && _coast[g].Seconds >= LeastS)
            {
                double share = Math.Min(_drive[g].Seconds, _coast[g].Seconds);
                sum += share * (_drive[g].Mean - _coast[g].Mean);
                // Neighbouring rows are not independent: one reading each half second is taken as such.
                variance += share * share * ((_drive[g].Variance / (_drive[g].Seconds / LeastS)) + (_coast[g].Variance / (_coast[g].Seconds / LeastS)));
                weight += share;
            }
        }

        return weight > 0 ? (1 - Math.Exp(-sum / weight), 2 * Math.Sqrt(variance) / weight) : null;
    }

    private struct Moments
    {
        private double _square;

        internal double Seconds { get; private set; }

        internal double Mean { get; private set; }

        internal readonly double Variance => Seconds > 0 ? _square / Seconds : 0;

        internal void Add(double value, double seconds)
        {
            Seconds += seconds;
            double from = value - Mean;
            Mean += seconds / Seconds * from;
            _square += seconds * from * (value - Mean);
        }
    }
}
