using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class EngineCurveTests
{
    private static readonly Gen<(double Rpm, double Nm)[]> s_tables = Gen.Select(Gen.Double[20, 900], Gen.Double[1, 400]).Array[2, 12]
        .Select(steps =>
        {
            double rpm = 800;
            return steps.Select(step => (rpm += step.Item1, step.Item2)).ToArray();
        });

    private static TorquePoint Point(double rpm, double nm) =>
        new(RotationalSpeed.FromRevolutionsPerMinute(rpm), Torque.FromNewtonMeters(nm));

    private static double At(EngineCurve curve, double rpm) => curve.TorqueAt(RotationalSpeed.FromRevolutionsPerMinute(rpm)).NewtonMeters;

    [Fact]
    public void The_curve_goes_through_its_points_and_never_leaves_the_band_of_its_neighbours() => Gen.Select(s_tables, Gen.Double[0, 1])
        .Sample((table, share) =>
        {
            EngineCurve curve = TestCars.Curve(table);
            for (int i = 0; i < table.Length; i++)
            {
                Assert.Equal(table[i].Nm, At(curve, table[i].Rpm), tolerance: 1e-6);
                if (i > 0)
                {
                    double between = At(curve, table[i - 1].Rpm + (share * (table[i].Rpm - table[i - 1].Rpm)));
                    Assert.InRange(
                        between,
                        Math.Min(table[i - 1].Nm, table[i].Nm) - 1e-9,
                        Math.Max(table[i - 1].Nm, table[i].Nm) + 1e-9);
                }
            }
        });

    [Fact]
    public void Peak_power_is_nowhere_exceeded() => Gen.Select(s_tables, Gen.Double[0, 1]).Sample((table, share) =>
    {
        EngineCurve curve = TestCars.Curve(table);
        double rpm = table[0].Rpm + (share * (table[^1].Rpm - table[0].Rpm));
        double watts = (double)curve.PowerAt(RotationalSpeed.FromRevolutionsPerMinute(rpm)).Watts;
        Assert.True(watts <= (double)curve.PeakPower.Watts * (1 + 1e-9));
    });

    [Fact]
    public void A_curve_that_turns_back_is_a_fault_that_names_the_point()
    {
        GearingFault fault = Assert.Single(EngineCurve.Create([Point(3000, 100), Point(4000, 120), Point(3900, 125)]).Faults);
        Assert.Equal(GearingFaultKind.CurveTurnsBack, fault.Kind);
        Assert.Equal("torque_curve[3]: 3900 rpm follows 4000 rpm. Write the points lowest engine speed first.", fault.Message);
    }

    [Fact]
    public void Every_other_bad_curve_is_a_fault_too()
    {
        Assert.Equal(GearingFaultKind.CurveTooShort, EngineCurve.Create([Point(3000, 100)]).Faults[0].Kind);
        Assert.Equal(GearingFaultKind.CurveTooShort, EngineCurve.Create([]).Faults[0].Kind);
        Assert.Equal("torque_curve[2].torque", EngineCurve.Create([Point(3000, 100), Point(4000, -1)]).Faults[0].Subject);
        Assert.Equal("torque_curve.greatest_torque", EngineCurve.Create([Point(3000, 0), Point(4000, 0)]).Faults[0].Subject);
        Assert.Equal(
            GearingFaultKind.CurveEndsBelowLimiter,
            EngineCurve.Create([Point(3000, 100), Point(4000, 90)], RotationalSpeed.FromRevolutionsPerMinute(5000)).Faults[0].Kind);
        Assert.Equal(
            "limiter",
            EngineCurve.Create([Point(3000, 100), Point(4000, 90)], RotationalSpeed.FromRevolutionsPerMinute(2000)).Faults[0].Subject);
    }

    [Fact]
    public void Outside_the_table_the_torque_is_that_of_the_nearest_end()
    {
        EngineCurve curve = TestCars.Curve((3000, 100), (4000, 120));
        Assert.Equal(100, At(curve, 500), 5e-13);
        Assert.Equal(120, At(curve, 9000), 5e-13);
        Assert.Equal(110, At(curve, 3500), 5e-10);
    }

    [Fact]
    public void The_usable_band_begins_where_the_torque_holds_80_per_cent_unless_it_is_given()
    {
        EngineCurve curve = TestCars.Curve((2000, 50), (4000, 100), (6000, 100));
        Assert.Equal(80, At(curve, curve.UsableFrom.RevolutionsPerMinute), 0.5);
        EngineCurve given = EngineCurve.Create(curve.Points, null, RotationalSpeed.FromRevolutionsPerMinute(4500)).Require();
        Assert.Equal(4500, given.UsableFrom.RevolutionsPerMinute, 5e-10);
    }

    [Fact]
    public void The_next_point_of_the_table_is_the_nearest_above_or_below() => Gen.Select(s_tables, Gen.Double[0, 14000], Gen.Bool).Sample((table, rpm, isRising) =>
    {
        double[] knots = [.. table.Select(point => point.Rpm)];
        double?[] above = [.. knots.Where(k => k > rpm * (1 + 1e-4))];
        double?[] below = [.. knots.Where(k => k <= rpm * (1 - 1e-4))];
        Assert.Equal(
            isRising ? above.Min() : below.Max(),
            new TorqueSpline(knots, [.. table.Select(point => point.Nm)]).NextKnot(rpm, isRising));
    });
}
