namespace Layshaft.Engineering.Gearing;

/// <summary>The pairs to choose from in each position, and which may follow which.</summary>
internal sealed class ShelfPairs
{
    private const double StepTolerance = 1.02;

    private readonly ToothPair[][] _pairs;
    private readonly double _mostRise;

    internal ShelfPairs(IReadOnlyList<IReadOnlyList<ToothPair>> pairs, IReadOnlyList<Gear> fitted)
    {
        _pairs = [.. pairs.Select(position => position.Distinct().OrderByDescending(pair => pair.Ratio).ThenBy(pair => pair.Driver).ToArray())];
        double[] steps = [.. Enumerable.Range(1, fitted.Count - 1).Select(i => fitted[i - 1].Ratio / fitted[i].Ratio)];
        _mostRise = Enumerable.Range(1, Math.Max(0, steps.Length - 1)).Select(i => steps[i] / steps[i - 1]).Append(StepTolerance).Max();
    }

    /// <summary>The number of gears.</summary>
    internal int Gears => _pairs.Length;

    /// <summary>The pairs for a gear, counted from 0.</summary>
    internal IReadOnlyList<ToothPair> this[int gear] => _pairs[gear];

    /// <summary>
    /// Whether a pair may follow: a longer ratio, and a step no wider than the one before. 2 % are allowed for whole teeth, and as much as
    /// the fitted gears themselves go against the rule. Common practice, no source.
    /// </summary>
    internal bool MayFollow(int gear, int[] choice)
    {
        double ratio = _pairs[gear][choice[gear]].Ratio, before = gear < 1 ? double.PositiveInfinity : _pairs[gear - 1][choice[gear - 1]].Ratio;
        return ratio < before && (gear < 2 || before / ratio <= _pairs[gear - 2][choice[gear - 2]].Ratio / before * _mostRise);
    }

    /// <summary>The chosen pairs.</summary>
    internal GearPairs Of(int[] choice) => new(Array.ConvertAll(Enumerable.Range(0, Gears).ToArray(), gear => _pairs[gear][choice[gear]]));
}
