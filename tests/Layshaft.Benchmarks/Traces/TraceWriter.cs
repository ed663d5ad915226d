using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Engineering.Gearing;
using Layshaft.Engineering.Tests.Traces;
using Layshaft.Engineering.Traces;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;
using UnitsNet;

namespace Layshaft.Benchmarks.Traces;

/// <summary>Writes a trace of a unit of a book in its car at a venue, by a simulation: the demo's trace comes from here.</summary>
internal static class TraceWriter
{
    internal static void Write(string folder, string unitId, string venueId, string file, int laps = 4, double hertz = 40, long megabytes = 0)
    {
        var assessment = BookReview.OfFolder(folder).Assessment!;
        var book = assessment.Book;
        var unit = book.Units[unitId];
        var made = assessment.Gearing.Case(unit, book.Venues[venueId], null, new ProblemList())!;
        var driven = MadeUpLaps.Drive(DriveOf(made.With(FittedGears.Now(book, unit)), made.Course, laps));

        // The first and the last lap are cut short, as a logger is switched on and off.
        var (from, to) = megabytes > 0 ? (0, double.MaxValue) : (driven.LapEnds[0].TimeS - 15, driven.LapEnds[^2].TimeS + 15);
        var rows = driven.Recorded(hertz, speedNoise: 0.03, rpmNoise: 8, seed: 8).Where(r => r.TimeS >= from && r.TimeS <= to).ToArray();
        using var writer = new StreamWriter(file) { NewLine = "\n" };
        writer.WriteLine("Time,Speed,RPM,Throttle,Lap");
        writer.WriteLine("s,km/h,1/min,%,");
        var lap = driven.LapEnds[^1].TimeS;
        for (var round = 0; round == 0 || writer.BaseStream.Length < megabytes << 20; round++)
        {
            foreach (var row in rows)
            {
                Write(row, round, lap, laps, writer);
            }
        }
    }

    private static void Write(in TraceSample row, int round, double lapS, int laps, StreamWriter writer) => writer.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{row.TimeS + (round * lapS):0.000},{row.SpeedMps * 3.6:0.0},{row.EngineRpm:0},{row.Throttle * 100:0},{row.Lap + (round * laps):0}"));

    // The driver misses the blip into second on two laps of three, and once shifts down too early.
    private static MadeUpDrive DriveOf(Car car, Venue course, int laps)
    {
        var count = course.Straights.Count;
        return new MadeUpDrive
        {
            Overall = [.. Enumerable.Range(1, car.Drivetrain.Gears.Count).Select(car.Drivetrain.OverallRatio)],
            Corners =
            [
                .. course.Straights.Select(s => new MadeUpCorner(
                    (s.CornerMinimum ?? s.StartSpeed).MetersPerSecond, s.StartSpeed.MetersPerSecond, s.Length.Meters)),
            ],
            Pull = (speed, gear) => WheelForce.InGear(car, gear + 1, Speed.FromMetersPerSecond(speed)).Newtons
                / (car.Vehicle.Spec.Mass.Kilograms * WheelForce.MassFactor(car, gear + 1)),
            CircumferenceM = car.Tyre.Circumference.Meters,
            Slip = 0.02,
            ShiftRpm = car.Engine.LimiterRpm() - 150,
            ShiftS = car.Vehicle.Spec.ShiftTime.Seconds * 1.15,
            DownshiftRpm = 0.85 * car.Engine.LimiterRpm(),
            LimiterRpm = car.Engine.LimiterRpm(),
            BrakingMps2 = course.Straights.Average(s => s.Braking.MetersPerSecondSquared),
            DragPerM = WheelForce.Resistance(car, Speed.FromMetersPerSecond(50)).Newtons / 2500 / car.Vehicle.Spec.Mass.Kilograms,
            Laps = laps,
            IsMatched = (from, to, lap) => (from, to) != (3, 2) || lap % 3 == 1,
            DownshiftAt = (from, to, lap) => (from, to, lap) == (4, 3, 3) ? 1.06 * car.Engine.LimiterRpm() : null,
        };
    }

    private static double LimiterRpm(this EngineCurve engine) => engine.Limiter.RevolutionsPerMinute;
}
