using System.Globalization;

namespace Layshaft.Engineering.Gearing;

/// <summary>Two gears in mesh, by their tooth counts: a driver and the gear that it drives.</summary>
/// <remarks>
/// Written <c>driven/driver</c>: 29/23 is driver 23, driven 29, ratio 1.261. Immutable. Two pairs are equal when both
/// counts are.
/// </remarks>
public sealed record ToothPair
{
    /// <summary>The fewest teeth taken for a gear: 3.</summary>
    public const int FewestTeeth = 3;

    /// <summary>The most teeth taken for a gear: 400.</summary>
    public const int MostTeeth = 400;

    /// <summary>Makes a pair of tooth counts known to be good; for those of a book use <see cref="Create"/>.</summary>
    /// <param name="driver">Teeth of the driving gear, <see cref="FewestTeeth"/> to <see cref="MostTeeth"/>.</param>
    /// <param name="driven">Teeth of the driven gear, same range.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside the range.</exception>
    public ToothPair(int driver, int driven)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(driver, FewestTeeth);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(driver, MostTeeth);
        ArgumentOutOfRangeException.ThrowIfLessThan(driven, FewestTeeth);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(driven, MostTeeth);
        Driver = driver;
        Driven = driven;
    }

    /// <summary>Teeth of the driving gear.</summary>
    public int Driver { get; }

    /// <summary>Teeth of the driven gear.</summary>
    public int Driven { get; }

    /// <summary>
    /// Driven teeth over driver teeth: turns of the driver for one of the driven. Below 1 is an overdrive
    /// (ISO 1122-1 calls it the gear ratio of a reducing pair when it is above 1).
    /// </summary>
    public double Ratio => (double)Driven / Driver;

    /// <summary>The same two gears changed over: the ratio inverts.</summary>
    public ToothPair Swapped => new(Driven, Driver);

    /// <summary>Whether the driven gear turns faster than its driver.</summary>
    public bool IsOverdrive => Driven < Driver;

    /// <summary>
    /// Whether every tooth of one gear meets every tooth of the other before a meeting repeats ("hunting tooth"):
    /// the tooth counts have no common factor.
    /// </summary>
    public bool IsHunting => GreatestCommonDivisor == 1;

    /// <summary>The greatest common divisor of the two counts: each tooth meets only every so-manieth of the other.</summary>
    public int GreatestCommonDivisor
    {
        get
        {
            (int a, int b) = (Driver, Driven);
            while (b != 0)
            {
                (a, b) = (b, a % b);
            }

            return a;
        }
    }

    /// <summary>Tooth engagements until the same two teeth meet again: the least common multiple of the counts.</summary>
    public int MeshesToRepeat => Driver / GreatestCommonDivisor * Driven;

    /// <summary>Turns of the driver until the same two teeth meet again.</summary>
    public int DriverTurnsToRepeat => Driven / GreatestCommonDivisor;

    /// <summary>Makes a pair of the counts, or says what is wrong with them.</summary>
    /// <param name="driver">Teeth of the driving gear.</param>
    /// <param name="driven">Teeth of the driven gear.</param>
    /// <returns>The pair, or a fault per count that is outside the range.</returns>
    public static Outcome<ToothPair> Create(int driver, int driven)
    {
        var faults = new FaultList();
        faults.Range("driver", driver, FewestTeeth, MostTeeth, "teeth");
        faults.Range("driven", driven, FewestTeeth, MostTeeth, "teeth");
        return faults.Finish(() => new ToothPair(driver, driven));
    }

    /// <summary>The pair as it is written, driven/driver: <c>29/23</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Driven}/{Driver}");
}
