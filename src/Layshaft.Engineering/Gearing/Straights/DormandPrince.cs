using System.Runtime.CompilerServices;

namespace Layshaft.Engineering.Gearing;

/// <summary>
/// One step of the explicit Runge–Kutta pair of orders 5 and 4 of Dormand and Prince (J. Comput. Appl. Math. 6 (1980) 19;
/// Hairer, Nørsett, Wanner, <i>Solving Ordinary Differential Equations I</i>, table II.5.2) for x' = v, v' = a(v).
/// </summary>
internal static class DormandPrince
{
    private const double Tolerance = 1e-8;

    /// <summary>Takes a step of <paramref name="stepS"/> seconds.</summary>
    /// <returns>Estimated error over tolerance: the step is good up to 1.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Step<TLaw>(
        in TLaw law, double positionM, double v1, double a1, double stepS, out double newPositionM, out double newSpeedMps, out double newAcceleration)
        where TLaw : struct, IAccelerationLaw
    {
        double v2 = v1 + (stepS * (a1 / 5));
        double a2 = law.At(v2);
        double v3 = v1 + (stepS * ((3.0 / 40 * a1) + (9.0 / 40 * a2)));
        double a3 = law.At(v3);
        double v4 = v1 + (stepS * ((44.0 / 45 * a1) - (56.0 / 15 * a2) + (32.0 / 9 * a3)));
        double a4 = law.At(v4);
        double v5 = v1 + (stepS * ((19372.0 / 6561 * a1) - (25360.0 / 2187 * a2) + (64448.0 / 6561 * a3) - (212.0 / 729 * a4)));
        double a5 = law.At(v5);
        double v6 = v1 + (stepS * ((9017.0 / 3168 * a1) - (355.0 / 33 * a2) + (46732.0 / 5247 * a3) + (49.0 / 176 * a4) - (5103.0 / 18656 * a5)));
        double a6 = law.At(v6);
        double v7 = v1 + (stepS * ((35.0 / 384 * a1) + (500.0 / 1113 * a3) + (125.0 / 192 * a4) - (2187.0 / 6784 * a5) + (11.0 / 84 * a6)));
        double a7 = law.At(v7);
        double x7 = positionM
            + (stepS * ((35.0 / 384 * v1) + (500.0 / 1113 * v3) + (125.0 / 192 * v4) - (2187.0 / 6784 * v5) + (11.0 / 84 * v6)));
        double speedError = stepS * ErrorOf(a1, a3, a4, a5, a6, a7) / (Tolerance * (1 + Math.Abs(v7)));
        double positionError = stepS * ErrorOf(v1, v3, v4, v5, v6, v7) / (Tolerance * (1 + Math.Abs(x7)));
        newPositionM = x7;
        newSpeedMps = v7;
        newAcceleration = a7;
        return Math.Max(Math.Abs(speedError), Math.Abs(positionError));
    }

    private static double ErrorOf(double k1, double k3, double k4, double k5, double k6, double k7) =>
        (71.0 / 57600 * k1) - (71.0 / 16695 * k3) + (71.0 / 1920 * k4) - (17253.0 / 339200 * k5) + (22.0 / 525 * k6) - (1.0 / 40 * k7);
}
