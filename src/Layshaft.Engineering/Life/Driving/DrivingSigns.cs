namespace Layshaft.Engineering.Life;

/// <summary>
/// What the wear of the dogs says about the driving: facts for advice, with the gears concerned. The thresholds are common
/// practice, no source: they keep the report silent where a difference is smaller than grades can be told apart.
/// </summary>
/// <param name="Pattern">Which gears are worn most.</param>
/// <param name="Gears">The gears that make the pattern, worst first; empty when there is none.</param>
/// <param name="Side">Which flanks are worn most.</param>
/// <param name="DriveShare">Drive-side wear as a share of both sides' wear over the gears with both measured; <c>null</c> without such gears.</param>
public sealed record DrivingSigns(WearPattern Pattern, IReadOnlyList<int> Gears, WornSide Side, double? DriveShare)
{
    /// <summary>Gears below which no pattern is read: with two, one is always the worse.</summary>
    public const int LeastGears = 3;

    /// <summary>Share of the allowance below which wear is not read.</summary>
    public const double LeastWear = 0.2;

    /// <summary>How many times worse a gear must be to stand out.</summary>
    public const double StandsOut = 2.0;

    /// <summary>Largest ratio of worst to least worn gear at which all count as alike.</summary>
    public const double Alike = 1.5;

    /// <summary>Share of both sides' wear from which one side counts as the worse.</summary>
    public const double SideShare = 0.6;

    /// <summary>Reads the signs.</summary>
    /// <param name="gears">Wear by gear, each gear once.</param>
    /// <returns>What they say.</returns>
    /// <exception cref="ArgumentException">A gear is named twice or a wear is negative or not finite.</exception>
    public static DrivingSigns Of(IReadOnlyList<GearWear> gears)
    {
        ArgumentNullException.ThrowIfNull(gears);
        if (gears.Select(gear => gear.Gear).Distinct().Count() != gears.Count)
        {
            throw new ArgumentException("Each gear is named once.", nameof(gears));
        }

        if (gears.SelectMany(gear => new[] { gear.DriveSide, gear.CoastSide }).Any(wear => wear is not null && !(wear >= 0 && double.IsFinite(wear.Value))))
        {
            throw new ArgumentException("Wear is a finite share of 0 or more.", nameof(gears));
        }

        var measured = gears.Where(gear => gear.Worse is not null).OrderByDescending(gear => gear.Worse).ThenBy(gear => gear.Gear).ToArray();
        var (pattern, concerned) = PatternOf(measured);
        var (side, share) = SideOf(gears);
        return new DrivingSigns(pattern, concerned, side, share);
    }

    private static (WearPattern Pattern, IReadOnlyList<int> Gears) PatternOf(GearWear[] worstFirst)
    {
        if (worstFirst.Length < LeastGears)
        {
            return (WearPattern.TooFewToSay, []);
        }

        double[] wear = [.. worstFirst.Select(gear => gear.Worse!.Value)];
        if (wear[0] < LeastWear)
        {
            return (WearPattern.HardlyWorn, []);
        }

        if (wear[0] >= StandsOut * wear[1])
        {
            return (WearPattern.OneGearOnly, [worstFirst[0].Gear]);
        }

        if (wear[0] <= Alike * wear[^1])
        {
            return (WearPattern.AllAlike, [.. worstFirst.Select(gear => gear.Gear)]);
        }

        return LowGearsWorst(worstFirst);
    }

    private static (WearPattern Pattern, IReadOnlyList<int> Gears) LowGearsWorst(GearWear[] worstFirst)
    {
        // Second may or may not be among them: it is selected at low speed too. Those above must be clearly less worn.
        var low = worstFirst.Where(gear => gear.Gear is GearWear.Reverse or 1).ToArray();
        var high = worstFirst.Where(gear => gear.Gear > 2).ToArray();
        if (low.Length < 2 || high.Length < 2 || low[^1].Worse < LeastWear || low[^1].Worse < Alike * high[0].Worse)
        {
            return (WearPattern.NoPattern, []);
        }

        return (WearPattern.LowGearsAndReverseWorst,
            [.. worstFirst.Where(gear => gear.Gear <= 2 && gear.Worse >= Alike * high[0].Worse).Select(gear => gear.Gear)]);
    }

    private static (WornSide Side, double? DriveShare) SideOf(IReadOnlyList<GearWear> gears)
    {
        var both = gears.Where(gear => gear.DriveSide is not null && gear.CoastSide is not null).ToArray();
        var drive = both.Sum(gear => gear.DriveSide!.Value);
        var total = drive + both.Sum(gear => gear.CoastSide!.Value);
        if (!(total > 0))
        {
            return (WornSide.TooFewToSay, null);
        }

        var share = drive / total;
        if (both.Length < LeastGears || both.Max(gear => gear.Worse) < LeastWear)
        {
            return (WornSide.TooFewToSay, share);
        }

        // The sum may be one bad gear: most gears must lean the same way as well.
        var leaningToDrive = both.Count(gear => gear.DriveSide > gear.CoastSide);
        var leaningToCoast = both.Count(gear => gear.DriveSide < gear.CoastSide);
        var side = share >= SideShare && 3 * leaningToDrive >= 2 * both.Length ? WornSide.DriveSide
            : share <= 1 - SideShare && 3 * leaningToCoast >= 2 * both.Length ? WornSide.CoastSide
            : WornSide.BothAlike;
        return (side, share);
    }
}
