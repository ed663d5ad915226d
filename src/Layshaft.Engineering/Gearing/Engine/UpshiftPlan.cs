using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The best engine speed for each upshift.</summary>
/// <remarks>
/// The lower gear is kept until the next gear's wheel force at the same road speed is higher, or to the limiter (shift rule
/// for greatest acceleration, from memory). Where the forces cross more than once, or never, that shift is taken which
/// loses the least time ∫dv/F from here to the limiter. Only the step between the gears and the shape of the torque curve
/// count: drop pair, final drive, tyre, and a correction of the whole curve change nothing.
/// </remarks>
public static class UpshiftPlan
{
    private const int Steps = 2000;

    /// <summary>Works out the shift out of each gear but the top one.</summary>
    /// <param name="drivetrain">The gears.</param>
    /// <param name="engine">The torque curve.</param>
    /// <returns>One shift for each gear but the top one, first gear first.</returns>
    public static IReadOnlyList<Upshift> For(Drivetrain drivetrain, EngineCurve engine)
    {
        ArgumentNullException.ThrowIfNull(drivetrain);
        ArgumentNullException.ThrowIfNull(engine);
        return Enumerable.Range(1, drivetrain.Gears.Count - 1)
            .Select(gear => engine.Upshift(gear, drivetrain.Gears[gear].Ratio / drivetrain.Gears[gear - 1].Ratio))
            .ToArray();
    }

    /// <summary>The shift out of one gear into the next, whose ratio is lower by a factor.</summary>
    internal static Upshift Best(int gear, double drop, EngineCurve engine)
    {
        TorqueSpline spline = engine.Spline;
        double limiterRpm = engine.LimiterRpm;
        double lowRpm = spline.FirstRpm / drop;
        if (lowRpm >= limiterRpm)
        {
            return Make(gear, limiterRpm, drop, UpshiftReason.Limiter, []);
        }

        // Both forces in units of this gear's: the next gear's torque counts less by the step.
        double Lead(double rpm) => (drop * spline.TorqueNm(rpm * drop)) - spline.TorqueNm(rpm);
        double leastNm = 1e-6 * spline.TorqueNm(engine.PeakTorqueRpm);
        double Loss(double rpm) =>
            (1 / Math.Max(drop * spline.TorqueNm(rpm * drop), leastNm)) - (1 / Math.Max(spline.TorqueNm(rpm), leastNm));

        double step = (limiterRpm - lowRpm) / Steps;
        var crossings = new List<double>();
        (double bestRpm, double bestLoss, UpshiftReason reason) = (limiterRpm, 0, UpshiftReason.Limiter);
        double loss = 0; // of being in the next gear from here to the limiter, against staying
        for (int i = Steps - 1; i >= 0; i--)
        {
            double left = lowRpm + (i * step);
            double right = left + step;
            loss += step / 6 * (Loss(left) + (4 * Loss((left + right) / 2)) + Loss(right));
            bool leadsLeft = Lead(left) > 0;
            if (leadsLeft != Lead(right) > 0)
            {
                crossings.Insert(0, ScalarSearch.Zero(Lead, left, right));
            }

            bool overtakes = !leadsLeft && Lead(right) > 0;
            double gain = 1e-9 * (limiterRpm - left) / leastNm * 1e-6;
            if ((overtakes || (i == 0 && leadsLeft)) && loss < bestLoss - gain)
            {
                (bestRpm, bestLoss) = (overtakes ? crossings[0] : left, loss);
                reason = overtakes ? UpshiftReason.ForcesCross : UpshiftReason.AtOnce;
            }
        }

        return Make(gear, bestRpm, drop, reason, crossings);
    }

    private static Upshift Make(int gear, double rpm, double drop, UpshiftReason reason, List<double> crossings) => new(
        gear,
        RotationalSpeed.FromRevolutionsPerMinute(rpm),
        RotationalSpeed.FromRevolutionsPerMinute(rpm * drop),
        reason,
        crossings.ConvertAll(crossing => RotationalSpeed.FromRevolutionsPerMinute(crossing)));
}
