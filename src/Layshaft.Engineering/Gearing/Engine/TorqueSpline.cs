using MathNet.Numerics.Interpolation;

namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Torque by engine speed: monotone piecewise cubic Hermite interpolation (Fritsch and Carlson 1980; slopes by Fritsch and
/// Butland 1984 from the numerics library), held flat outside the table, evaluated without allocation.
/// </summary>
internal sealed class TorqueSpline
{
    private const int BinsPerInterval = 8;

    private readonly double[] _rpm;
    private readonly double[] _coefficients; // four for each interval, in rising powers of (rpm − start)
    private readonly int[] _bins;            // the interval in which each of many equal slices of the range begins
    private readonly double _binsPerRpm;
    private readonly double _firstTorque;
    private readonly double _lastTorque;

    internal TorqueSpline(double[] rpm, double[] torqueNm)
    {
        _rpm = rpm;
        _firstTorque = torqueNm[0];
        _lastTorque = torqueNm[^1];
        double[] slopes = Slopes(rpm, torqueNm);
        int intervals = rpm.Length - 1;
        _coefficients = new double[4 * intervals];
        for (int i = 0; i < intervals; i++)
        {
            double width = rpm[i + 1] - rpm[i];
            double secant = (torqueNm[i + 1] - torqueNm[i]) / width;
            _coefficients[4 * i] = torqueNm[i];
            _coefficients[(4 * i) + 1] = slopes[i];
            _coefficients[(4 * i) + 2] = ((3 * secant) - (2 * slopes[i]) - slopes[i + 1]) / width;
            _coefficients[(4 * i) + 3] = (slopes[i] + slopes[i + 1] - (2 * secant)) / (width * width);
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

    internal double FirstRpm => _rpm[0];

    internal double LastRpm => _rpm[^1];

    internal double TorqueNm(double rpm)
    {
        if (rpm <= _rpm[0])
        {
            return _firstTorque;
        }

        if (!(rpm < _rpm[^1]))
        {
            return _lastTorque;
        }

        int i = _bins[(int)((rpm - _rpm[0]) * _binsPerRpm)];
        while (i > 0 && _rpm[i] > rpm)
        {
            i--;
        }

        while (_rpm[i + 1] < rpm)
        {
            i++;
        }

        double x = rpm - _rpm[i];
        int k = 4 * i;
        return _coefficients[k] + (x * (_coefficients[k + 1] + (x * (_coefficients[k + 2] + (x * _coefficients[k + 3])))));
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
}
