namespace Layshaft.Engineering.Life;

/// <summary>How one measure of a part wears over several gearboxes of a type: a common rate with differences between the units.</summary>
/// <param name="Units">Number of units that it rests on.</param>
/// <param name="Rates">The rate for each power of usage that their readings allow; the first is the one to show. None if they follow none of the powers.</param>
/// <param name="LogMedian">Median of the logarithms of the units' rates, for the power to show.</param>
/// <param name="Height">Share of the wear allowance used by a new part: new sizes are nominal.</param>
/// <param name="Scatter">Standard deviation of a unit's readings about its own line, a share of the wear allowance; <c>null</c> if too few units have several readings.</param>
public sealed record TypeWear(int Units, IReadOnlyList<TypeRate> Rates, double LogMedian, double Height, double? Scatter)
{
    /// <summary>Step of the logarithm to which rates and their spread are rounded by <see cref="Rounded"/>: a tenth, some 10 %.</summary>
    public const double LogStep = 0.1;

    private const double ShareStep = 0.01;

    /// <summary>Units below which nothing is pooled: a difference between units cannot be told from fewer.</summary>
    public const int LeastUnits = 5;

    // Readings beyond one for each unit below which their scatter about the lines is not used.
    private const int LeastFreedom = 3;

    // A part that shows no wear still has a rate: a hundredth of the allowance by its last reading. Rates are compared by their logarithms.
    private const double LeastWear = 0.01;

    /// <summary>
    /// Estimates rates in two stages: a line for each unit from a common wear at no usage, then mean and spread of the logarithms of their slopes. Each
    /// power of usage is tried; those that the readings exclude are dropped (F test), as for one part.
    /// </summary>
    /// <param name="units">The readings of one part of each unit: usage since new, and share of the wear allowance used.</param>
    /// <param name="readingUncertainty">Standard uncertainty of a reading, a share of the wear allowance; 0 if unknown.</param>
    /// <returns>The rates; <c>null</c> for fewer units than <see cref="LeastUnits"/>.</returns>
    /// <exception cref="ArgumentException">A reading is not finite, or its usage is negative.</exception>
    public static TypeWear? Of(IReadOnlyList<IReadOnlyList<WearReading>> units, double readingUncertainty)
    {
        ArgumentNullException.ThrowIfNull(units);
        if (units.SelectMany(u => u).Any(r => !(r.Use >= 0 && double.IsFinite(r.Use) && double.IsFinite(r.Value))))
        {
            throw new ArgumentException("Readings must be finite, their use 0 or more.", nameof(units));
        }

        IReadOnlyList<WearReading>[] worn = [.. units.Where(u => u.Any(r => r.Use > 0))];
        if (worn.Length < LeastUnits)
        {
            return null;
        }

        UnitLines[] lines = [.. WearCurves.Powers.Select(power => UnitLines.Of(worn, power))];
        var best = lines.MinBy(l => l.ResidualSumOfSquares)!;
        var freedom = worn.Sum(u => u.Count) - worn.Length - 1;
        var excess = WearCurves.Excess(best.ResidualSumOfSquares, freedom - 1, readingUncertainty, 0.95);
        UnitLines[] allowed = [.. lines.Where(l => l.ResidualSumOfSquares - best.ResidualSumOfSquares <= excess)];
        var shown = Array.Find(allowed, l => l.Power == 1);
        if (shown is null && best.Power is var power && (power == WearCurves.Powers[0] || power == WearCurves.Powers[^1]))
        {
            return new TypeWear(worn.Length, [], 0, 0, null);
        }

        shown ??= best;
        return new TypeWear(
            worn.Length,
            [shown.Rate(LeastWear), .. allowed.Where(l => l != shown).Select(l => l.Rate(LeastWear))],
            shown.MedianLog(LeastWear),
            shown.Height,
            freedom >= LeastFreedom ? Math.Sqrt(shown.ResidualSumOfSquares / freedom) : null);
    }

    /// <summary>
    /// The same rounded so coarsely that no unit's readings show: mean and spread upwards, so that nothing is said to last longer than it does.
    /// </summary>
    public TypeWear Rounded() => this with
    {
        Rates = [.. Rates.Select(r => r with { LogMean = Up(r.LogMean, LogStep), LogDeviation = Math.Max(LogStep, Up(r.LogDeviation, LogStep)) })],
        LogMedian = Math.Round(LogMedian / LogStep) * LogStep,
        Height = Math.Round(Height / ShareStep) * ShareStep,
        Scatter = Scatter is { } scatter ? Up(scatter, ShareStep) : null,
    };

    // A rounded value stays as it is.
    private static double Up(double value, double step) => Math.Ceiling(value / step - 1e-9) * step;
}

/// <summary>A rate of wear over the units of a type, for wear that grows with a power of usage.</summary>
/// <param name="Power">The power.</param>
/// <param name="LogMean">Mean of the logarithms of the units' rates, share of the allowance by usage^power.</param>
/// <param name="LogDeviation">Standard deviation of these logarithms.</param>
public sealed record TypeRate(double Power, double LogMean, double LogDeviation);
