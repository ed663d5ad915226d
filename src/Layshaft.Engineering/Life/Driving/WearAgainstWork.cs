namespace Layshaft.Engineering.Life;

/// <summary>One gear's wear against the work its dogs do.</summary>
/// <param name="Gear">The gear.</param>
/// <param name="WearShare">Its share of all gears' wear, 0 to 1.</param>
/// <param name="WorkShare">Its share of all dogs' work, 0 to 1.</param>
/// <param name="Excess">How many times more it wears for its work than the gear in the middle does; 1 is usual.</param>
public sealed record GearShare(int Gear, double WearShare, double WorkShare, double Excess);

/// <summary>Whether the wear of the gears follows the work that their dogs do.</summary>
public enum WearAgainstWorkVerdict
{
    /// <summary>Too few gears with both wear and work known.</summary>
    TooFewToSay,

    /// <summary>No gear shows wear.</summary>
    NoWear,

    /// <summary>Wear follows work: the gears that do most are worn most, as is to be expected.</summary>
    Agrees,

    /// <summary>All gears but one wear as their work lets expect; that one wears far more.</summary>
    OneGearStandsOut,

    /// <summary>Wear does not follow work, and no single gear explains it.</summary>
    Differs,
}

/// <summary>Wear by gear set against the dogs' work by gear (energy per lap, say).</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Gear">The gear that stands out, when one does.</param>
/// <param name="Shares">The gears compared, lowest first.</param>
/// <param name="Ranks">Rank correlation of wear and work over these gears.</param>
public sealed record WearAgainstWork(
    WearAgainstWorkVerdict Verdict, int? Gear, IReadOnlyList<GearShare> Shares, RankCorrelation Ranks)
{
    /// <summary>
    /// Gears below which nothing is said. With three, one order in six agrees by chance; with four, one in twenty-four.
    /// </summary>
    public const int LeastGears = 4;

    /// <summary>Excess from which a gear stands out, and below whose inverse it lags (common practice, no source).</summary>
    public const double StandsOut = 2.0;

    /// <summary>Chance below which an agreement of ranks counts where the shares differ by more.</summary>
    public const double LargestChance = 0.05;

    /// <summary>Compares wear with work.</summary>
    /// <param name="wearRates">Wear by gear per unit of use (rings renewed at different times have different use behind them), in one unit, 0 or more.</param>
    /// <param name="work">Work of the dogs by gear in one unit, 0 or more; gears without work are left out.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">A value is negative or not finite.</exception>
    public static WearAgainstWork Of(IReadOnlyDictionary<int, double> wearRates, IReadOnlyDictionary<int, double> work)
    {
        ArgumentNullException.ThrowIfNull(wearRates);
        ArgumentNullException.ThrowIfNull(work);
        if (!wearRates.Values.Concat(work.Values).All(value => value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentException("Wear and work are finite numbers of 0 or more.", nameof(wearRates));
        }

        int[] gears = [.. wearRates.Keys.Where(gear => work.TryGetValue(gear, out var done) && done > 0).Order()];
        var ranks = RankCorrelation.Of([.. gears.Select(gear => wearRates[gear])], [.. gears.Select(gear => work[gear])]);
        var (allWear, allWork) = (gears.Sum(gear => wearRates[gear]), gears.Sum(gear => work[gear]));
        if (gears.Length < LeastGears || allWear == 0)
        {
            var verdict = gears.Length < LeastGears ? WearAgainstWorkVerdict.TooFewToSay : WearAgainstWorkVerdict.NoWear;
            return new WearAgainstWork(verdict, null, [], ranks);
        }

        var middle = Median([.. gears.Select(gear => wearRates[gear] / work[gear])]);
        GearShare[] shares =
        [
            .. gears.Select(gear => new GearShare(
                gear, wearRates[gear] / allWear, work[gear] / allWork, Excess(wearRates[gear] / work[gear], middle))),
        ];
        return Judge(shares, ranks);
    }

    private static WearAgainstWork Judge(GearShare[] shares, RankCorrelation ranks)
    {
        var above = shares.Where(share => share.Excess >= StandsOut).ToArray();
        var below = shares.Count(share => share.Excess <= 1 / StandsOut);
        if (above.Length == 1 && below == 0)
        {
            return new WearAgainstWork(WearAgainstWorkVerdict.OneGearStandsOut, above[0].Gear, shares, ranks);
        }

        var agrees = above.Length + below == 0 || ranks.PValuePositive <= LargestChance;
        return new WearAgainstWork(agrees ? WearAgainstWorkVerdict.Agrees : WearAgainstWorkVerdict.Differs, null, shares, ranks);
    }

    private static double Excess(double own, double middle) => own == 0 ? 0 : middle == 0 ? double.PositiveInfinity : own / middle;

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }
}
