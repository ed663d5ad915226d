using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>Follows the gear from row to row. What is held is the rows of the shift that is going on, at most three seconds of them.</summary>
internal sealed class GearTracker(GearFit fit, TraceQuestion question)
{
    private const double ConfirmS = 0.08;
    private const double LongestShiftS = 3;
    private const double ReferenceS = 0.3;
    private const double LeastSpeedMps = 3;
    private const double LeastRpm = 900;

    // Closer rows would not show a shift's end: half a shift of 80 ms.
    private const double LongestIntervalForDogsS = 0.0251;

    private readonly List<TracePointSeen> _open = [];
    private TracePointSeen _last;
    private double _reference;
    private double _noise = 2.5e-5; // mean square of the logarithm's scatter from row to row
    private double _previous = double.NaN;
    private int _steady;

    /// <summary>The gear that is in, from 1; 0 for none.</summary>
    internal int Gear { get; private set; }

    internal List<ShiftSeen> Shifts { get; } = [];

    /// <summary>Time in each gear, s, first gear first; shifts belong to none.</summary>
    internal double[] SecondsInGear { get; } = new double[fit.Centres.Length];

    /// <summary>Forgets what went before: rows are missing.</summary>
    internal void Break()
    {
        _open.Clear();
        Gear = 0;
        _previous = double.NaN;
    }

    /// <summary>Takes a row.</summary>
    /// <returns>The gear that the row surely belongs to, from 1; 0 for none or not yet known.</returns>
    internal int Add(in TracePointSeen point)
    {
        int candidate = CandidateOf(point);
        if (candidate != 0 && candidate == Gear && Math.Abs(point.LogRatio - _reference) <= Edge)
        {
            _open.Clear();
            Follow(point);
            return Gear;
        }

        _open.Add(point);
        _previous = double.NaN;
        int first = FirstOfRun(candidate);
        if (candidate != 0 && _open.Count - first >= 2 && point.Sample.TimeS - _open[first].Sample.TimeS >= ConfirmS - 1e-9)
        {
            Confirm(candidate, first);
            return Gear;
        }

        if (point.Sample.TimeS - _open[0].Sample.TimeS > LongestShiftS)
        {
            _open.Clear();
            Gear = 0;
        }

        return 0;
    }

    /// <summary>How far a row may be from those just before it and still be in the same gear.</summary>
    private double Edge => Math.Max(0.012, 4 * Math.Sqrt(_noise));

    /// <summary>How far a row may be from the new gear and still be on the way to it.</summary>
    private double ArrivalEdge => Math.Max(0.004, 3 * Math.Sqrt(_noise));

    private int CandidateOf(in TracePointSeen point)
    {
        if (point.Sample.SpeedMps < LeastSpeedMps || point.Sample.EngineRpm < LeastRpm)
        {
            return 0;
        }

        for (int g = 0; g < fit.Centres.Length; g++)
        {
            if (Math.Abs(point.LogRatio - fit.Centres[g]) <= fit.Halves[g])
            {
                return g + 1;
            }
        }

        return 0;
    }

    // The rows at the end that are steady in one gear.
    private int FirstOfRun(int candidate)
    {
        int first = _open.Count;
        while (first > 0 && candidate != 0 && CandidateOf(_open[first - 1]) == candidate
            && Math.Abs(_open[first - 1].LogRatio - _open[^1].LogRatio) <= Edge)
        {
            first--;
        }

        return first;
    }

    private void Follow(in TracePointSeen point)
    {
        if (!double.IsNaN(_previous))
        {
            double step = point.LogRatio - _previous;
            _noise += 0.02 * ((step * step / 2) - _noise);
        }

        _previous = point.LogRatio;
        _reference += Math.Min(1, point.IntervalS / ReferenceS) * (point.LogRatio - _reference);
        _last = point;
        _steady++;
        SecondsInGear[Gear - 1] += point.IntervalS;
    }

    private void Confirm(int gear, int first)
    {
        // The first rows may still be on their way.
        double target = 0;
        int half = (first + _open.Count) / 2;
        for (int i = half; i < _open.Count; i++)
        {
            target += _open[i].LogRatio / (_open.Count - half);
        }

        if (Gear != 0 && Gear != gear && _steady >= 2)
        {
            Shifts.Add(Shift(gear, first, target));
        }

        bool isSame = gear == Gear;
        Gear = gear;
        _reference = target;
        _steady = isSame ? _steady : 0;
        _previous = double.NaN;
        for (int i = first; i < _open.Count; i++)
        {
            Follow(_open[i]);
        }

        _open.Clear();
    }

    private ShiftSeen Shift(int gear, int arrival, double target)
    {
        while (arrival < _open.Count - 1 && Math.Abs(_open[arrival].LogRatio - target) > ArrivalEdge)
        {
            arrival++;
        }

        TracePointSeen after = _open[arrival];
        double gap = after.Sample.TimeS - _last.Sample.TimeS;
        double interval = gap / (arrival + 1);
        double longest = 0;
        for (int i = 0; i <= arrival; i++)
        {
            longest = Math.Max(longest, _open[i].Sample.TimeS - (i == 0 ? _last : _open[i - 1]).Sample.TimeS);
        }

        // The last row in the old gear may already be on its way.
        double beforeRpm = _last.Sample.SpeedMps * Math.Exp(_reference);

        // A shift shows when it has passed the edge and ends when it is within the edge of the next gear.
        double step = Math.Abs(target - _reference);
        double hidden = Math.Min(0.5, (Edge + ArrivalEdge) / 2 / step);
        double time = Math.Max(0, gap - interval) / (1 - hidden);
        bool isWhole = longest <= 1.6 * interval && longest <= 2.1 * Math.Max(after.IntervalS, _last.IntervalS);
        double uncertainty = Math.Sqrt((interval * interval / 6) + (hidden * hidden * time * time / 3));
        return new ShiftSeen(
            Gear,
            gear,
            _last.Place,
            Speed.FromMetersPerSecond(after.Sample.SpeedMps),
            RotationalSpeed.FromRevolutionsPerMinute(beforeRpm),
            RotationalSpeed.FromRevolutionsPerMinute(after.Sample.SpeedMps * Math.Exp(target)),
            Duration.FromSeconds(time),
            isWhole ? Duration.FromSeconds(uncertainty) : null,
            isWhole && longest <= LongestIntervalForDogsS ? Engagement(gear, arrival, target) : null)
        {
            FullDifference = RotationalSpeed.FromRevolutionsPerMinute(
                Math.Abs(beforeRpm - (after.Sample.SpeedMps * Math.Exp(target))) / question.Car.Drivetrain.RatioToMainshaft(gear)),
        };
    }

    // The engine turns freely until the dogs catch it. Rows that are already off that course, towards the gear, are part of the catch.
    private EngagementSeen? Engagement(int gear, int arrival, double target)
    {
        double noiseRpm = Math.Sqrt(_noise) * _last.Sample.EngineRpm;
        int before = arrival - 1;
        for (int tries = 0; tries < 4 && before >= 1; tries++)
        {
            double off = OverRpm(before, target) - Extrapolated(before, target);
            if (Math.Abs(off) <= Math.Max(100, 10 * noiseRpm) || Math.Sign(off) == Math.Sign(OverRpm(before, target)))
            {
                break;
            }

            before--;
        }

        if (before < 0)
        {
            return null;
        }

        // Between the last row on its course and the next the engine may have come as near as its course leads, or all the way.
        double early = OverRpm(before, target);
        double course = Extrapolated(before + 1, target);
        bool isNearly = Math.Sign(course) != Math.Sign(early)
            || Math.Abs(course) <= Math.Max(ArrivalEdge * _last.Sample.EngineRpm, 2 * Math.Abs(early - course));
        double late = isNearly ? 0 : course;
        double middle = (early + late) / 2;
        double halfRange = Math.Abs(early - late) / 2;
        double perDogs = 1 / question.Car.Drivetrain.RatioToMainshaft(gear);
        var difference = RotationalSpeed.FromRevolutionsPerMinute(middle * perDogs);
        return new EngagementSeen(
            difference,
            RotationalSpeed.FromRevolutionsPerMinute((halfRange + (3 * noiseRpm)) * perDogs),
            question.Inertias is { } inertias ? DogImpact.Of(question.Car, gear, difference, inertias) : null);
    }

    /// <summary>A row of the shift; −1 is the last one in the old gear.</summary>
    private TraceSample Row(int index) => index < 0 ? _last.Sample : _open[index].Sample;

    /// <summary>Engine speed over what the new gear asks for, 1/min.</summary>
    private double OverRpm(int index, double target) => Row(index).EngineRpm - (Row(index).SpeedMps * Math.Exp(target));

    private double Extrapolated(int index, double target)
    {
        (double first, double second) = (OverRpm(index - 2, target), OverRpm(index - 1, target));
        double rate = (second - first) / (Row(index - 1).TimeS - Row(index - 2).TimeS);
        return second + (rate * (Row(index).TimeS - Row(index - 1).TimeS));
    }
}
