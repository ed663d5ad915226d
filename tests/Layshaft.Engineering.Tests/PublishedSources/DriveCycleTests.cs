using Layshaft.Engineering.Tests.Traces;
using Layshaft.Engineering.Traces;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// The operating cycle of UN Regulation No. 83, Annex 4a, tables 1 and 2: phases as printed there (the phases from memory, their
/// sums and the distances checked against the printed summary).
/// </summary>
public sealed class DriveCycleTests
{
    // Seconds, speed at the beginning and at the end in km/h.
    private static readonly (double Seconds, double From, double To)[] s_urban =
    [
        (11, 0, 0), (4, 0, 15), (8, 15, 15), (2, 15, 10), (3, 10, 0), (21, 0, 0), (5, 0, 15), (2, 15, 15), (5, 15, 32), (24, 32, 32),
        (8, 32, 10), (3, 10, 0), (21, 0, 0), (5, 0, 15), (2, 15, 15), (9, 15, 35), (2, 35, 35), (8, 35, 50), (12, 50, 50), (8, 50, 35),
        (13, 35, 35), (2, 35, 32), (7, 32, 10), (3, 10, 0), (7, 0, 0),
    ];

    private static readonly (double Seconds, double From, double To)[] s_extraUrban =
    [
        (20, 0, 0), (5, 0, 15), (2, 15, 15), (9, 15, 35), (2, 35, 35), (8, 35, 50), (2, 50, 50), (13, 50, 70), (50, 70, 70), (8, 70, 50),
        (69, 50, 50), (13, 50, 70), (50, 70, 70), (35, 70, 100), (30, 100, 100), (20, 100, 120), (10, 120, 120), (16, 120, 80), (8, 80, 50),
        (10, 50, 0), (20, 0, 0),
    ];

    public static TheoryData<bool, double, double, double, double> Printed => new()
    {
        // Extra-urban or not, time in s, distance in km, greatest speed in km/h, idling time in s
        { false, 195, 1.013, 50, 60 },
        { true, 400, 6.955, 120, 40 },
    };

    [Theory]
    [MemberData(nameof(Printed))]
    public void Time_distance_and_top_speed_are_those_printed(bool isExtraUrban, double seconds, double kilometres, double top, double idle)
    {
        foreach (double hertz in new[] { 10.0, 100 })
        {
            TraceFigures seen = TraceCars.Analyse(Rows(isExtraUrban ? s_extraUrban : s_urban, hertz));
            Assert.Equal(seconds, seen.Recorded.Seconds, 0.011);
            Assert.Equal(kilometres, seen.Distance.Kilometers, 0.002);
            Assert.Equal(top, seen.TopSpeed.KilometersPerHour, 1e-9);

            // On the move from 1 m/s on: that leaves out about a second of each start and stop.
            Assert.InRange(seconds - idle - seen.Moving.Seconds, 0, 7);
        }
    }

    private static IEnumerable<TraceSample> Rows((double Seconds, double From, double To)[] phases, double hertz)
    {
        double total = phases.Sum(p => p.Seconds);
        for (int k = 0; k <= total * hertz; k++)
        {
            double time = k / hertz, start = 0;
            int i = 0;
            while (i < phases.Length - 1 && time > start + phases[i].Seconds)
            {
                start += phases[i++].Seconds;
            }

            double share = (time - start) / phases[i].Seconds;
            yield return new TraceSample(time, (phases[i].From + (share * (phases[i].To - phases[i].From))) / 3.6, 2500);
        }
    }
}
