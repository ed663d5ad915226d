using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>How the ratios of engine to road speed in a trace fit the gears of the box. Immutable.</summary>
/// <remarks>
/// The teeth give the ratios between the gears exactly, so one factor is left: final drive and drop pair over the rolling
/// circumference. It is the one with which most of the driving time lies on a gear.
/// </remarks>
public sealed class GearFit
{
    /// <summary>Share of the driving time that must lie on the gears before they are taken for those of the box (Layshaft's own convention).</summary>
    public const double LeastShare = 0.55;

    private const double KernelHalf = 0.012;
    private const double OnGear = 0.02;
    private const double FarthestFactor = 0.6;
    private const double LeastStrayShare = 0.03;

    private GearFit(double factor, double share, IReadOnlyList<GearRatioSeen> gears, IReadOnlyList<double> strays, Length circumference, Length? uncertainty)
    {
        FactorOverExpected = factor;
        Share = share;
        Gears = gears;
        StrayFactors = strays;
        Circumference = circumference;
        CircumferenceUncertainty = uncertainty;
    }

    /// <summary>Whether the trace runs in the gears of the box: most of the time, and in every gear between the lowest and the highest that it uses.</summary>
    public bool IsFound => Share >= LeastShare && Gears.Count > 0 && Gears.Count == Gears[^1].Gear - Gears[0].Gear + 1;

    /// <summary>Share of the driving time that lies within 2 % of one of the gears, 0 to 1.</summary>
    public double Share { get; }

    /// <summary>Engine over road speed in the trace, over that of the gears and the tyre that were expected: 1 when all is as in the book and nothing slips.</summary>
    public double FactorOverExpected { get; }

    /// <summary>Each gear that was used for at least half a second.</summary>
    public IReadOnlyList<GearRatioSeen> Gears { get; }

    /// <summary>
    /// Ratios that hold for at least 3 % of the driving time and are none of the gears: engine turns for one of the
    /// mainshaft or as the gears are given, with the fitted factor.
    /// </summary>
    public IReadOnlyList<double> StrayFactors { get; }

    /// <summary>
    /// Effective rolling circumference, slip included, if drop pair and final drive are those expected: by the recorded speed,
    /// whose calibration is not checked by it.
    /// </summary>
    public Length Circumference { get; }

    /// <summary>Expanded uncertainty (k = 2) of <see cref="Circumference"/> from the scatter between gears; null with one gear.</summary>
    public Length? CircumferenceUncertainty { get; }

    /// <summary>The logarithms of engine (1/min) over road speed (m/s) by gear, first gear first.</summary>
    internal double[] Centres { get; private init; } = [];

    /// <summary>How far from a centre a sample may be, by gear.</summary>
    internal double[] Halves { get; private init; } = [];

    internal static GearFit Of(RatioHistogram seen, Drivetrain drivetrain, double circumferenceM)
    {
        int count = drivetrain.Gears.Count;
        var expected = new double[count];
        for (int g = 0; g < count; g++)
        {
            expected[g] = Math.Log(60 * drivetrain.OverallRatio(g + 1) / circumferenceM);
        }

        double[] halves = HalfWidths(drivetrain);
        double shift = BestShift(seen.Smoothed(KernelHalf), expected);
        double[] centres = Array.ConvertAll(expected, x => x + shift);
        for (int pass = 0; pass < 3; pass++)
        {
            double weighted = 0, weight = 0;
            for (int g = 0; g < count; g++)
            {
                double seconds = seen.Within(centres[g], halves[g]);
                weighted += seconds * (seen.MedianWithin(centres[g], halves[g]) - centres[g]);
                weight += seconds;
            }

            double step = weight > 0 ? weighted / weight : 0;
            shift += step;
            centres = Array.ConvertAll(centres, x => x + step);
        }

        return Make(seen, drivetrain, circumferenceM, shift, centres, halves);
    }

    private static GearFit Make(RatioHistogram seen, Drivetrain drivetrain, double circumferenceM, double shift, double[] centres, double[] halves)
    {
        var gears = new List<GearRatioSeen>();
        double onGears = 0;
        for (int g = 0; g < centres.Length; g++)
        {
            double seconds = seen.Within(centres[g], halves[g]);
            onGears += seen.Within(centres[g], Math.Min(halves[g], OnGear));
            if (seconds >= 0.5)
            {
                double found = seen.MedianWithin(centres[g], halves[g]) - centres[g];
                gears.Add(new GearRatioSeen(g + 1, drivetrain.Gears[g].Ratio, drivetrain.Gears[g].Ratio * Math.Exp(found)));
            }
        }

        double metres = circumferenceM * Math.Exp(-shift);
        double? scatter = gears.Count < 2 ? null : Math.Sqrt(gears.Sum(g => Square(Math.Log(g.Seen / g.Known))) / (gears.Count - 1));
        return new GearFit(
            Math.Exp(shift),
            seen.TotalS > 0 ? onGears / seen.TotalS : 0,
            gears,
            Strays(seen, drivetrain, centres, halves),
            Length.FromMeters(metres),
            scatter is { } s ? Length.FromMeters(metres * 2 * Math.Max(s, RatioHistogram.BinWidth)) : null)
        {
            Centres = centres,
            Halves = halves,
        };
    }

    // Two fifths of the way to the nearest gear, at most 3.5 %.
    private static double[] HalfWidths(Drivetrain drivetrain)
    {
        int count = drivetrain.Gears.Count;
        var halves = new double[count];
        for (int g = 0; g < count; g++)
        {
            double below = g > 0 ? Math.Log(drivetrain.Gears[g - 1].Ratio / drivetrain.Gears[g].Ratio) : 1;
            double above = g < count - 1 ? Math.Log(drivetrain.Gears[g].Ratio / drivetrain.Gears[g + 1].Ratio) : 1;
            halves[g] = Math.Min(0.035, 0.4 * Math.Min(below, above));
        }

        return halves;
    }

    // Among factors that explain the trace nearly as well the one nearest to the book's is taken.
    private static double BestShift(double[] smooth, double[] expected)
    {
        int steps = (int)(FarthestFactor / RatioHistogram.BinWidth);
        var scores = new double[(2 * steps) + 1];
        double best = 0;
        for (int s = -steps; s <= steps; s++)
        {
            double score = 0;
            foreach (double x in expected)
            {
                int bin = RatioHistogram.BinOf(x) + s;
                score += bin >= 0 && bin < smooth.Length ? smooth[bin] : 0;
            }

            scores[s + steps] = score;
            best = Math.Max(best, score);
        }

        for (int far = 0; far <= steps; far++)
        {
            foreach (int s in new[] { far, -far })
            {
                if (best > 0 && scores[s + steps] >= 0.97 * best)
                {
                    return Climb(scores, s + steps, steps) * RatioHistogram.BinWidth;
                }
            }
        }

        return 0;
    }

    private static int Climb(double[] scores, int at, int middle)
    {
        while (at > 0 && scores[at - 1] > scores[at])
        {
            at--;
        }

        while (at < scores.Length - 1 && scores[at + 1] > scores[at])
        {
            at++;
        }

        return at - middle;
    }

    private static List<double> Strays(RatioHistogram seen, Drivetrain drivetrain, double[] centres, double[] halves)
    {
        double[] smooth = seen.Smoothed(0.005);
        var strays = new List<double>();
        for (int i = 1; i < smooth.Length - 1; i++)
        {
            double x = RatioHistogram.Middle(i);
            if (smooth[i] > 0 && smooth[i] >= smooth[i - 1] && smooth[i] > smooth[i + 1]
                && seen.Within(x, 0.01) >= LeastStrayShare * seen.TotalS
                && !Enumerable.Range(0, centres.Length).Any(g => Math.Abs(x - centres[g]) < halves[g] + 0.01)
                && IsHighest(smooth, i))
            {
                strays.Add(drivetrain.Gears[0].Ratio * Math.Exp(x - centres[0]));
            }
        }

        return strays;
    }

    private static bool IsHighest(double[] smooth, int at)
    {
        for (int i = Math.Max(0, at - 30); i <= Math.Min(smooth.Length - 1, at + 30); i++)
        {
            if (smooth[i] > smooth[at])
            {
                return false;
            }
        }

        return true;
    }

    private static double Square(double value) => value * value;
}

/// <summary>One gear's ratio in a trace.</summary>
/// <param name="Gear">The gear, from 1.</param>
/// <param name="Known">Its ratio by its teeth.</param>
/// <param name="Seen">Its ratio in the trace with the factor that fits all gears.</param>
public sealed record GearRatioSeen(int Gear, double Known, double Seen);
