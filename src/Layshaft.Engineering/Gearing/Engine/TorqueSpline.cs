using System.Runtime.CompilerServices;
using MathNet.Numerics.Interpolation;

namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Torque by engine speed: monotone piecewise cubic Hermite interpolation (Fritsch and Carlson 1980; slopes by Fritsch and
/// Butland 1984 from the numerics library), held flat outside the table, evaluated without allocation.
/// </summary>
internal sealed class TorqueSpline
{
    private const int BinsPerInterval = 8;
    private const double Hardly = 1e-4;

    private readonly double[] _rpm;
    private readonly Cubic[] _cubics; // one for each interval
    private readonly int[] _bins;            // the interval in which each of many equal slices of the range begins
    private readonly double _binsPerRpm;
    private readonly double _firstRpm;
    private readonly double _lastRpm;
    private readonly double _firstTorque;
    private readonly double _lastTorque;

    internal TorqueSpline(double[] rpm, double[] torqueNm)
    {
        _rpm = rpm;
        (_firstRpm, _lastRpm) = (rpm[0], rpm[^1]);
        _firstTorque = torqueNm[0];
        _lastTorque = torqueNm[^1];
        double[] slopes = Slopes(rpm, torqueNm);
        int intervals = rpm.Length - 1;
        _cubics = new Cubic[intervals];
        for (int i = 0; i < intervals; i++)
        {
            double width = rpm[i + 1] - rpm[i];
            double secant = (torqueNm[i + 1] - torqueNm[i]) / width;
            _cubics[i] = new Cubic(
                torqueNm[i],
                slopes[i],
                ((3 * secant) - (2 * slopes[i]) - slopes[i + 1]) / width,
                (slopes[i] + slopes[i + 1] - (2 * secant)) / (width * width));
        }

        _bins = new int[(BinsPerInterval * intervals) + 1];
        _binsPerRpm = BinsPerInterval * intervals / (rpm[^1] - rpm[0]);
        for (int bin = 0, i = 0; bin < _bins.Length; bin++)
        {
            while (i < intervals - 1 && rpm[i + 1] <= rpm[0] + (bin / _binsPerRpm))
            {
                i++;
            }

            _bins[bin] = i;
        }
    }

    internal double FirstRpm => _firstRpm;

    internal double LastRpm => _lastRpm;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double TorqueNm(double rpm)
    {
        double[] knots = _rpm;
        if (rpm <= _firstRpm)
        {
            return _firstTorque;
        }

        if (!(rpm < _lastRpm))
        {
            return _lastTorque;
        }

        int i = _bins[unchecked((int)((rpm - _firstRpm) * _binsPerRpm))];
        while (i > 0 && knots[i] > rpm)
        {
            i--;
        }

        while (knots[i + 1] < rpm)
        {
            i++;
        }

        double x = rpm - knots[i];
        ref readonly Cubic c = ref _cubics[i];
        return c.Torque + (x * (c.Slope + (x * (c.Second + (x * c.Third)))));
    }

    /// <summary>
    /// The engine speed of the next table point, where one cubic passes into another; one that is hardly away counts as passed.
    /// Null when there is none.
    /// </summary>
    internal double? NextKnot(double rpm, bool isRising)
    {
        double[] knots = _rpm;
        double from = rpm * (isRising ? 1 + Hardly : 1 - Hardly);
        int above = from < _firstRpm ? 0 : from < _lastRpm ? _bins[unchecked((int)((from - _firstRpm) * _binsPerRpm))] : knots.Length;
        while (above > 0 && knots[above - 1] > from)
        {
            above--;
        }

        while (above < knots.Length && knots[above] <= from)
        {
            above++;
        }

        int next = isRising ? above : above - 1;
        return next >= 0 && next < knots.Length ? knots[next] : null;
    }

    private static double[] Slopes(double[] rpm, double[] torqueNm)
    {
        // The numerics library wants three points or more for this interpolation; two points make a straight line.
        if (rpm.Length == 2)
        {
            double slope = (torqueNm[1] - torqueNm[0]) / (rpm[1] - rpm[0]);
            return [slope, slope];
        }

        CubicSpline spline = CubicSpline.InterpolatePchipSorted(rpm, torqueNm);
        return Array.ConvertAll(rpm, spline.Differentiate);
    }

    /// <summary>Torque over one interval, in rising powers of (rpm − start).</summary>
    private readonly record struct Cubic(double Torque, double Slope, double Second, double Third);
}
