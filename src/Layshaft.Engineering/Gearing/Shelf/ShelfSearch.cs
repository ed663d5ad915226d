using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>
/// Finds, for each amount of work, the fastest combination of gear pairs, drop pair and final drive that keeps every limit on the planned
/// day and on the changed ones. Exact: it comes to what running every combination comes to.
/// </summary>
/// <remarks>
/// Dynamic programming over the straights, each of which depends on a few gears only (<see cref="ShelfWindow"/>), with branch and bound:
/// a combination is given up where its straights so far and the ideal on the rest are no faster than what takes no more work.
/// </remarks>
public sealed class ShelfSearch
{
    /// <summary>By how much a combination must be faster to be worth more work: above rounding, far below what anybody can measure.</summary>
    internal const double FasterS = 1e-6;

    private readonly ShelfPairs _pairs;
    private readonly ShelfDay _planned;
    private readonly List<ShelfDay> _changed = [];
    private readonly double[] _restS; // time of the ideal from a straight to the end of the lap
    private readonly int[] _choice;
    private readonly int[] _fitted; // −1 where the fitted pair is not known
    private readonly Cell[,] _cells; // by what changes outside the box and by the number of pairs that change in it
    private readonly double[,] _toBeat;
    private readonly GearPairs? _fittedPairs;
    private GearSet _outside = null!;
    private int _outsideChange;

    private ShelfSearch(RankingQuestion question)
    {
        Car car = question.Car;
        GearSet? fitted = question.Fitted;
        Drivetrain train = fitted is null ? car.Drivetrain : car.Drivetrain.With(fitted);
        _pairs = new ShelfPairs(question.GearPairs, train.Gears);
        _planned = new ShelfDay(car, question.Venue, question.Guards, _pairs, question.Stock);
        foreach (ConditionChange change in question.Changes)
        {
            if (change.Apply(car).TryGet(out Car? changed) && change.Apply(question.Venue).TryGet(out Venue? venue))
            {
                _changed.Add(new ShelfDay(changed, venue, question.Guards, _pairs, question.Stock));
            }
        }

        _restS = new double[_planned.Straights + 1];
        for (int i = _planned.Straights - 1; i >= 0; i--)
        {
            _restS[i] = _restS[i + 1] + (_planned.IdealS[i] * (1 - 1e-6)); // the integration's own error
        }

        _fittedPairs = fitted?.Gears;
        _choice = new int[_pairs.Gears];
        _fitted = [.. Enumerable.Range(0, _pairs.Gears).Select(gear => fitted is null ? -1 : IndexOf(_pairs[gear], train.Gears[gear].Pairs))];
        _cells = new Cell[4, _pairs.Gears + 1];
        _toBeat = new double[4, _pairs.Gears + 1];
        for (int outside = 0; outside < 4; outside++)
        {
            for (int pairs = 0; pairs <= _pairs.Gears; pairs++)
            {
                _cells[outside, pairs] = new Cell(question.Work.Of((outside & 1) != 0, (outside & 2) != 0, pairs), double.PositiveInfinity, null);
                _toBeat[outside, pairs] = double.PositiveInfinity;
            }
        }
    }

    /// <summary>The fastest combinations: the one of least work first, each after it with more work and faster. Empty if none is within the limits.</summary>
    /// <param name="question">What is to be ranked; with its pairs of gears.</param>
    public static IReadOnlyList<GearSet> Fastest(RankingQuestion question)
    {
        var search = new ShelfSearch(question);
        GearSet? fitted = question.Fitted;
        double now = fitted is null ? 0 : (fitted.DropPair?.Ratio ?? 1) * fitted.FinalDrive.Ratio;
        IEnumerable<GearSet> outsides = question.Stock.DropPairs.Distinct()
            .SelectMany(pair => question.Stock.FinalDrives.Distinct().Select(final => new GearSet(pair, final)))
            .OrderBy(set => Math.Abs(((set.DropPair?.Ratio ?? 1) * set.FinalDrive.Ratio) - now)); // near what is fitted good times to beat come early
        foreach (GearSet outside in search._planned.CanFinish ? outsides : [])
        {
            search._outside = outside;
            search._outsideChange = (outside.DropPair == fitted?.DropPair ? 0 : 1) + (outside.FinalDrive == fitted?.FinalDrive ? 0 : 2);
            search._planned.Begin(outside);
            search.Descend(0, 0);
        }

        return search.Front();
    }

    private static int IndexOf(IReadOnlyList<ToothPair> pairs, IReadOnlyList<ToothPair> fitted) =>
        fitted.Count == 1 ? pairs.ToList().IndexOf(fitted[0]) : -1;

    private void Descend(int gear, int changes)
    {
        for (int i = 0; i < _pairs[gear].Count; i++)
        {
            _choice[gear] = i;
            if (!_pairs.MayFollow(gear, _choice))
            {
                continue;
            }

            int sum = changes + (i == _fitted[gear] ? 0 : 1);
            if (gear < _choice.Length - 1)
            {
                Descend(gear + 1, sum);
            }
            else
            {
                Weigh(sum);
            }
        }
    }

    private void Weigh(int changes)
    {
        double toBeatS = _toBeat[_outsideChange, changes], timeS = 0;
        _planned.Next();
        for (int i = 0; i < _planned.Straights; i++)
        {
            if (timeS + _restS[i] >= toBeatS)
            {
                return;
            }

            ShelfLeg leg = _planned.Leg(i, _choice);
            if (!leg.IsFinished)
            {
                return;
            }

            timeS += leg.TimeS;
        }

        if (timeS < toBeatS && IsWithinLimits())
        {
            _cells[_outsideChange, changes] = _cells[_outsideChange, changes] with { TimeS = timeS, Set = _outside with { Gears = changes == 0 ? _fittedPairs : _pairs.Of(_choice) } };
            Renew();
        }
    }

    private bool IsWithinLimits()
    {
        if (!_planned.IsWithinLimits(_choice))
        {
            return false;
        }

        for (int i = 0; i < _changed.Count; i++)
        {
            ShelfDay day = _changed[i];
            day.Begin(_outside);
            if (!day.IsWithinLimits(_choice))
            {
                _changed.RemoveAt(i); // the day that forbids this one will forbid the next: ask it first
                _changed.Insert(0, day);
                return false;
            }
        }

        return true;
    }

    private void Renew()
    {
        for (int outside = 0; outside < 4; outside++)
        {
            for (int pairs = 0; pairs <= _pairs.Gears; pairs++)
            {
                Duration most = _cells[outside, pairs].Work;
                _toBeat[outside, pairs] = _cells.Cast<Cell>().Where(cell => cell.Work <= most).Min(cell => cell.TimeS);
            }
        }
    }

    private List<GearSet> Front()
    {
        var front = new List<GearSet>();
        double leastS = double.PositiveInfinity;
        foreach (Cell cell in _cells.Cast<Cell>().Where(cell => cell.Set is not null).OrderBy(cell => cell.Work.Hours).ThenBy(cell => cell.TimeS))
        {
            if (cell.TimeS < leastS - FasterS)
            {
                front.Add(cell.Set!);
            }

            leastS = Math.Min(leastS, cell.TimeS);
        }

        return front;
    }

    private sealed record Cell(Duration Work, double TimeS, GearSet? Set);
}
