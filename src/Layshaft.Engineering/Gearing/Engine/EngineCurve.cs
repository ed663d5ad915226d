using System.Collections.Concurrent;
using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>An engine's full-throttle torque by engine speed, up to its limiter. Immutable.</summary>
/// <remarks>
/// Between the points the torque is interpolated monotonically (no overshoot). Below the first point it is held at the first
/// point's torque: the clutch slips there. A standing start does not use it (<see cref="LaunchAt"/>).
/// </remarks>
public sealed class EngineCurve
{
    private const double UsableShare = 0.8;
    private const int ScanSteps = 4000;

    // A shift hangs on the curve and the step alone, so one box in one car asks for the same few again on every day and page.
    private readonly ConcurrentDictionary<(int Gear, double Drop), Upshift> _upshifts = new();

    private EngineCurve(IReadOnlyList<TorquePoint> points, TorqueSpline spline, double limiterRpm, double? usableFromRpm, double? launchRpm)
    {
        Points = points;
        Spline = spline;
        LimiterRpm = limiterRpm;
        (PeakTorqueRpm, PeakPowerRpm) = Peaks();
        PeakPowerWatts = spline.TorqueNm(PeakPowerRpm) * PeakPowerRpm * RadPerSecondPerRpm;
        UsableFromRpm = usableFromRpm ?? UsableFromTorque();
        LaunchRpm = launchRpm ?? usableFromRpm ?? PeakTorqueRpm;
    }

    /// <summary>The points that the curve was made of.</summary>
    public IReadOnlyList<TorquePoint> Points { get; }

    /// <summary>The limiter.</summary>
    public RotationalSpeed Limiter => RotationalSpeed.FromRevolutionsPerMinute(LimiterRpm);

    /// <summary>
    /// The lowest engine speed that the driver uses out of a corner: as given, or the speed from which the torque holds
    /// 80 % of its peak up to the peak (Layshaft's own convention).
    /// </summary>
    public RotationalSpeed UsableFrom => RotationalSpeed.FromRevolutionsPerMinute(UsableFromRpm);

    /// <summary>
    /// The engine speed at which the clutch slips until the car has caught up with it at a standing start: as given, else the lowest
    /// one that the driver uses as given, else that of the greatest torque (Layshaft's own convention).
    /// </summary>
    public RotationalSpeed LaunchAt => RotationalSpeed.FromRevolutionsPerMinute(LaunchRpm);

    /// <summary>Engine speed of the greatest torque up to the limiter.</summary>
    public RotationalSpeed PeakTorqueAt => RotationalSpeed.FromRevolutionsPerMinute(PeakTorqueRpm);

    /// <summary>Engine speed of the greatest power up to the limiter.</summary>
    public RotationalSpeed PeakPowerAt => RotationalSpeed.FromRevolutionsPerMinute(PeakPowerRpm);

    /// <summary>The greatest power up to the limiter.</summary>
    public Power PeakPower => Power.FromWatts(PeakPowerWatts);

    internal const double RadPerSecondPerRpm = Math.PI / 30;

    internal TorqueSpline Spline { get; }

    internal double LimiterRpm { get; }

    internal double UsableFromRpm { get; }

    internal double LaunchRpm { get; }

    internal double PeakTorqueRpm { get; }

    internal double PeakPowerRpm { get; }

    internal double PeakPowerWatts { get; }

    /// <summary>The best shift out of a gear, worked out once; see <see cref="UpshiftPlan"/>.</summary>
    internal Upshift Upshift(int gear, double drop) => _upshifts.GetOrAdd((gear, drop), static (step, engine) => UpshiftPlan.Best(step.Gear, step.Drop, engine), this);

    /// <summary>Checks a table of points and makes the curve.</summary>
    /// <param name="points">Two points or more in rising engine speed; torques not negative and not all zero.</param>
    /// <param name="limiter">The limiter; null when it is the last point.</param>
    /// <param name="usableFrom">The lowest engine speed used out of a corner; null for the convention of <see cref="UsableFrom"/>.</param>
    /// <param name="launch">The engine speed of a standing start; null for the convention of <see cref="LaunchAt"/>.</param>
    /// <returns>The curve, or a fault for each figure that is wrong.</returns>
    public static Outcome<EngineCurve> Create(
        IReadOnlyList<TorquePoint> points, RotationalSpeed? limiter = null, RotationalSpeed? usableFrom = null, RotationalSpeed? launch = null)
    {
        ArgumentNullException.ThrowIfNull(points);
        var faults = new FaultList();
        double[] rpm = points.Select(point => point.EngineSpeed.RevolutionsPerMinute).ToArray();
        double[] torqueNm = points.Select(point => point.Torque.NewtonMeters).ToArray();
        if (points.Count < 2)
        {
            faults.Add(new GearingFault(GearingFaultKind.CurveTooShort, "torque_curve"));
        }

        for (int i = 0; i < rpm.Length; i++)
        {
            string subject = FormattableString.Invariant($"torque_curve[{i + 1}]");
            faults.Range(subject + ".rpm", rpm[i], 100, 30_000, "rpm");
            faults.Range(subject + ".torque", torqueNm[i], 0, 10_000, "N·m");
            if (i > 0 && rpm[i] <= rpm[i - 1])
            {
                faults.Add(new GearingFault(GearingFaultKind.CurveTurnsBack, subject, rpm[i], rpm[i - 1], Unit: "rpm"));
            }
        }

        if (faults.IsEmpty)
        {
            faults.Range("torque_curve.greatest_torque", torqueNm.Max(), 1, 10_000, "N·m");
        }

        double limiterRpm = limiter?.RevolutionsPerMinute ?? (rpm.Length > 0 ? rpm[^1] : 0);
        if (faults.IsEmpty)
        {
            CheckSpeeds(faults, rpm, limiterRpm, usableFrom?.RevolutionsPerMinute, launch?.RevolutionsPerMinute);
        }

        return faults.Finish(() => new EngineCurve(
            points.ToArray(),
            new TorqueSpline(rpm, torqueNm),
            limiterRpm,
            usableFrom?.RevolutionsPerMinute,
            launch?.RevolutionsPerMinute));
    }

    /// <summary>Full-throttle torque at an engine speed; that of the nearest end outside the table.</summary>
    /// <param name="engineSpeed">Engine speed.</param>
    public Torque TorqueAt(RotationalSpeed engineSpeed) =>
        Torque.FromNewtonMeters(Spline.TorqueNm(engineSpeed.RevolutionsPerMinute));

    /// <summary>Full-throttle power at an engine speed.</summary>
    /// <param name="engineSpeed">Engine speed.</param>
    public Power PowerAt(RotationalSpeed engineSpeed) =>
        Power.FromWatts(Spline.TorqueNm(engineSpeed.RevolutionsPerMinute) * engineSpeed.RadiansPerSecond);

    private static void CheckSpeeds(FaultList faults, double[] rpm, double limiterRpm, double? usableFromRpm, double? launchRpm)
    {
        if (rpm[^1] < limiterRpm)
        {
            faults.Add(new GearingFault(GearingFaultKind.CurveEndsBelowLimiter, "torque_curve", rpm[^1], limiterRpm, Unit: "rpm"));
        }
        else
        {
            faults.Range("limiter", limiterRpm, rpm[0] + 1, rpm[^1], "rpm");
        }

        if (usableFromRpm is { } usable)
        {
            faults.Range("usable_from", usable, 100, limiterRpm, "rpm");
        }

        if (launchRpm is { } launch)
        {
            faults.Range("launch", launch, 100, limiterRpm, "rpm");
        }
    }

    private (double TorqueRpm, double PowerRpm) Peaks()
    {
        return (
            ScalarSearch.Maximum(Spline.TorqueNm, Spline.FirstRpm, LimiterRpm, ScanSteps),
            ScalarSearch.Maximum(rpm => rpm * Spline.TorqueNm(rpm), Spline.FirstRpm, LimiterRpm, ScanSteps));
    }

    private double UsableFromTorque()
    {
        double needed = UsableShare * Spline.TorqueNm(PeakTorqueRpm);
        double step = (PeakTorqueRpm - Spline.FirstRpm) / ScanSteps;
        double usable = PeakTorqueRpm;
        for (int i = ScanSteps; i >= 0; i--)
        {
            double rpm = Spline.FirstRpm + (i * step);
            if (Spline.TorqueNm(rpm) < needed)
            {
                break;
            }

            usable = rpm;
        }

        return usable;
    }
}
