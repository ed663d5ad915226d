using CsCheck;
using Layshaft.Engineering.Gearing;
using Layshaft.Engineering.Traces;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Traces;

/// <summary>Made-up laps whose truth is known. The bounds are those stated beside each figure.</summary>
public sealed class TraceTests
{
    private static readonly MadeUpLaps s_laps = MadeUpLaps.Drive(TraceCars.Drive with { Slip = 0.02 });

    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    public void Distance_time_and_laps_are_those_driven(double hertz)
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(hertz, 0.05, 10));
        Assert.Equal(s_laps.DistanceM, seen.Distance.Meters, 0.002 * s_laps.DistanceM);
        Assert.Equal(s_laps.Rows[^1].TimeS, seen.Recorded.Seconds, 0.25);
        Assert.Equal(LapBasis.Marker, seen.LapBasis);
        LapSeen second = Assert.Single(seen.Laps);
        double truth = s_laps.LapEnds[1].TimeS - s_laps.LapEnds[0].TimeS;
        Assert.InRange(second.Time.Seconds - truth, -1.01 / hertz - 0.006, (1.01 / hertz) + 0.006);
        Assert.Equal(0, seen.RowsMissing + seen.RowsOutOfOrder + seen.RowsRepeated + seen.Gaps);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    public void Gears_and_circumference_are_those_driven(double hertz)
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(hertz, 0.05, 10));
        Assert.True(seen.GearFit.IsFound);
        Assert.True(seen.GearColumnAgrees > 0.99, $"{seen.GearColumnAgrees}");
        Assert.Empty(seen.GearFit.StrayFactors);
        Assert.All(seen.GearFit.Gears, g => Assert.Equal(g.Known, g.Seen, 0.02 * g.Known));
        double total = s_laps.SecondsInGear.Sum();
        for (int g = 0; g < s_laps.SecondsInGear.Length; g++)
        {
            Assert.Equal(s_laps.SecondsInGear[g] / total, seen.TimeInGear[g].Seconds / seen.TimeInGear.Sum(t => t.Seconds), 0.02);
        }

        // Slip is between none and that at full drive.
        Assert.InRange(seen.GearFit.Circumference.Meters, 0.97 * TraceCars.CircumferenceM, 1.002 * TraceCars.CircumferenceM);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    public void Shifts_are_counted_and_timed(double hertz)
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(hertz, 0.05, 10));
        MadeUpShift[] up = [.. s_laps.Shifts.Where(s => s.To > s.From)];
        Assert.Equal(up.Length, seen.Shifts.Count(s => s.IsUpshift));
        Assert.All(seen.Shifts.Where(s => s.IsUpshift), s =>
        {
            MadeUpShift truth = up.MinBy(u => Math.Abs(u.TimeS - s.At.Time.Seconds))!;
            Assert.Equal((truth.From, truth.To), (s.From, s.To));
            Assert.Equal(truth.RpmBefore, s.EngineBefore.RevolutionsPerMinute, 60 + (3500 / hertz));
        });
        (Duration mean, Duration uncertainty) = ShiftSummary.UpshiftTime(seen.Shifts)!.Value;
        Assert.Equal(0.09, mean.Seconds, uncertainty.Seconds);
        Assert.True(uncertainty.Seconds < 0.05, $"{uncertainty}");
        if (hertz >= 100)
        {
            Assert.Equal(s_laps.Shifts.Count, seen.Shifts.Count);
        }
    }

    [Fact]
    public void Corners_have_their_least_and_exit_speeds()
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(100, 0.05, 10));
        IReadOnlyList<CornerSummary> corners = CornerSummary.Of(seen);
        Assert.Equal(TraceCars.Drive.Corners.Length, corners.Count);
        Assert.Equal(
            TraceCars.Drive.Corners.Select(c => c.LeastMps).Order(),
            corners.Select(c => c.LeastSpeed.MetersPerSecond).Order(),
            (x, y) => Math.Abs(x - y) < 0.3);
        Assert.Equal(
            TraceCars.Drive.Corners.Select(c => c.ExitMps).Order(),
            corners.Select(c => c.ExitSpeed!.Value.MetersPerSecond).Order(),
            (x, y) => Math.Abs(x - y) < 0.3);
    }

    [Fact]
    public void Places_are_named_by_the_straights_they_are_on()
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(100, 0.05, 10));
        (string, Length)[] straights = [.. TraceCars.Drive.Corners.Select((c, i) => ($"straight {i + 1}", Length.FromMeters(c.ToNextM)))];
        IReadOnlyList<CornerSummary> corners = CornerSummary.Of(seen);

        // The venue's list may begin with another straight than the lap does.
        VenuePlaces places = VenuePlaces.Of(corners, [.. straights[2..], .. straights[..2]])!;
        Assert.Equal("straight 1", places.StraightAt(Length.FromMeters(400)));
        Assert.Equal("straight 3", places.StraightAt(Length.FromMeters(1500)));
        Assert.Equal("straight 5", places.StraightAt(corners[^1].InLap + Length.FromMeters(30)));
        Assert.Null(VenuePlaces.Of(corners, straights[..4]));
        Assert.Null(VenuePlaces.Of(corners, [.. straights.Select(s => (s.Item1, Length.FromMeters(500)))]));
    }

    [Fact]
    public void The_best_lap_can_be_drawn()
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(100, 0.05, 10));
        double lapM = s_laps.LapEnds[1].DistanceM - s_laps.LapEnds[0].DistanceM;
        Assert.InRange(seen.BestLapLine.Count, lapM / 12 * 0.9, (lapM / 12) + 100);
        Assert.Equal(lapM, seen.BestLapLine[^1].InLapM, 15.0);
        Assert.All(seen.BestLapLine.Zip(seen.BestLapLine.Skip(1)), p => Assert.True(p.Second.InLapM > p.First.InLapM));
        Assert.Equal(s_laps.SecondsInGear.Count(s => s > 1), seen.BestLapLine.Select(p => p.Gear).Where(g => g > 0).Distinct().Count());
    }

    [Fact]
    public void Slip_is_seen_from_wheels_that_do_not_drive_only()
    {
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { Slip = 0.03, BrakingMps2 = 2, Laps = 2 });
        SlipSeen? slip = TraceCars.Analyse(laps.Recorded(100, 0.05, 10)).Slip;
        Assert.NotNull(slip);
        Assert.InRange(slip.Slip, 0.004, 0.04);
        Assert.Null(TraceCars.Analyse(laps.Recorded(100), TraceCars.Question with { SpeedSource = SpeedSource.DrivenWheels }).Slip);
        Assert.Null(TraceCars.Analyse(laps.Recorded(100), TraceCars.Question with { SpeedSource = SpeedSource.NotKnown }).Slip);
    }

    [Fact]
    public void Engagements_without_matching_are_told_from_matched_ones()
    {
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { Laps = 4, IsMatched = (from, to, lap) => (from, to, lap % 2) != (4, 3, 0) });
        TraceFigures seen = TraceCars.Analyse(laps.Recorded(100, 0.03, 8));
        var misses = new List<double>();
        Assert.All(seen.Shifts, s =>
        {
            MadeUpShift truth = laps.Shifts.MinBy(u => Math.Abs(u.TimeS - s.At.Time.Seconds))!;
            Assert.NotNull(s.Engagement);
            double perDogs = 1 / TraceCars.Train.RatioToMainshaft(s.To);
            misses.Add(Math.Abs((truth.OverRpm * perDogs) - s.Engagement.Difference.RevolutionsPerMinute) / s.Engagement.Uncertainty.RevolutionsPerMinute);
            Assert.Equal(truth.From == 4 && truth.To == 3 && truth.Lap % 2 == 0, s.IsUnmatched);
            Assert.Equal(
                DogImpact.Of(TraceCars.Car, s.To, s.Engagement.Difference, TraceCars.Inertias).Joules, s.Engagement.Energy!.Value.Joules, 1e-9);
        });
        Assert.Contains(seen.Shifts, s => s.IsUnmatched == true);
        Assert.True(misses.Count(m => m <= 1) >= 0.94 * misses.Count, string.Join(' ', misses.Select(m => $"{m:0.0}")));
        Assert.All(misses, m => Assert.True(m <= 2));
    }

    [Fact]
    public void Ten_rows_a_second_show_no_engagement()
    {
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(10));
        Assert.All(seen.Shifts, s => Assert.Null(s.Engagement));
        Assert.All(seen.Shifts, s => Assert.Null(s.IsUnmatched));
    }

    [Fact]
    public void An_over_rev_is_laid_to_the_downshift_that_made_it()
    {
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { DownshiftAt = (from, to, lap) => (from, to, lap) == (5, 4, 2) ? 8700 : null });
        IReadOnlyList<OverRev> seen = TraceCars.Analyse(laps.Recorded(100, 0.03, 8)).OverRevs;
        Assert.Equal(
            laps.Shifts.Count(s => (s.From, s.To, s.Lap) == (5, 4, 2) && laps.Rows.Any(r => r.TimeS > s.TimeS && r.TimeS < s.TimeS + 0.4 && r.EngineRpm > 8310)),
            seen.Count);
        Assert.NotEmpty(seen);
        Assert.All(seen, over =>
        {
            Assert.True(over.IsAfterDownshift);
            Assert.Equal((4, 2), (over.Gear, over.At.Lap));
            Assert.InRange(over.Peak.RevolutionsPerMinute, 8300, 8720);
        });
        Assert.Empty(TraceCars.Analyse(s_laps.Recorded(100, 0.03, 8)).OverRevs);
    }

    [Fact]
    public void Time_at_the_limiter_counts_without_the_shifts()
    {
        Assert.Equal(0, TraceCars.Analyse(s_laps.Recorded(100, 0.03, 8)).AtLimiter.Seconds);
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { ShiftRpm = 9000 });
        double truth = laps.Rows.Count(r => r.EngineRpm is >= 0.985 * 8200 and <= 1.01 * 8200) * 0.001;
        Assert.True(truth > 10);
        Assert.Equal(truth, TraceCars.Analyse(laps.Recorded(100, 0.03, 8)).AtLimiter.Seconds, 0.05 * truth);
    }

    [Fact]
    public void Lost_repeated_and_disordered_rows_are_counted_and_nothing_is_made_of_them()
    {
        TraceFigures whole = TraceCars.Analyse(s_laps.Recorded(100, 0.05, 10));
        List<TraceSample> rows = [.. s_laps.Recorded(100, 0.05, 10, isLost: r => r.TimeS is > 40 and < 43.005)];
        rows.Insert(500, rows[499]);
        rows.Insert(900, rows[890]);
        rows.Insert(1200, rows[1200] with { EngineRpm = double.NaN });
        TraceFigures seen = TraceCars.Analyse(rows);
        Assert.Equal((1, 1, 1, 1), (seen.Gaps, seen.RowsRepeated, seen.RowsOutOfOrder, seen.RowsMissing));
        Assert.Equal(3.01, seen.GapTime.Seconds, 0.02);
        Assert.Equal(whole.Recorded.Seconds - 3.01, seen.Recorded.Seconds, 0.02);
        Assert.Equal(whole.Distance.Meters, seen.Distance.Meters, 25.0);
        Assert.True(seen.Bridged.Meters > 40);
        Assert.All(seen.Shifts, s => Assert.Contains(whole.Shifts, w => (w.From, w.To) == (s.From, s.To) && Math.Abs((w.At.Time - s.At.Time).Seconds) < 0.05));
    }

    [Fact]
    public void Short_drop_outs_make_no_shift_and_no_shift_time()
    {
        var random = new Random(4);
        TraceFigures seen = TraceCars.Analyse(s_laps.Recorded(100, 0.05, 10, isLost: _ => random.NextDouble() < 0.05));
        Assert.Equal(s_laps.Shifts.Count, seen.Shifts.Count);
        Assert.Equal(0.09, ShiftSummary.UpshiftTime(seen.Shifts)!.Value.Mean.Seconds, 0.02);
    }

    [Fact]
    public void Laps_are_told_by_position_distance_or_length_too()
    {
        double lapM = s_laps.LapEnds[1].DistanceM - s_laps.LapEnds[0].DistanceM;
        double truth = s_laps.LapEnds[1].TimeS - s_laps.LapEnds[0].TimeS;
        IEnumerable<TraceSample> Rows(Func<TraceSample, TraceSample> change) => s_laps.Recorded(100, 0.03, 8).Select(r => change(r with { Lap = double.NaN, DistanceM = double.NaN }));
        List<TraceSample> plain = [.. s_laps.Recorded(100, 0.03, 8)];

        TraceFigures byRestart = TraceCars.Analyse(plain.Select(r => r with { Lap = double.NaN, DistanceM = r.DistanceM % lapM }));
        Assert.Equal(LapBasis.DistanceRestart, byRestart.LapBasis);
        Assert.Equal(truth, byRestart.Laps[0].Time.Seconds, 0.03);

        // Round a circle of the lap's length on the equator.
        double DegreesOf(double metres) => metres / 6_371_000 * 180 / Math.PI;
        double radius = lapM / (2 * Math.PI);
        TraceFigures byPosition = TraceCars.Analyse(plain.Select(r => r with
        {
            Lap = double.NaN,
            DistanceM = double.NaN,
            LatitudeDeg = DegreesOf(radius * Math.Sin(2 * Math.PI * r.DistanceM / lapM)),
            LongitudeDeg = DegreesOf(radius * Math.Cos(2 * Math.PI * r.DistanceM / lapM)),
        }));
        Assert.Equal(LapBasis.Position, byPosition.LapBasis);
        Assert.Equal(2, byPosition.Laps.Count);
        Assert.All(byPosition.Laps, l => Assert.Equal(truth, l.Time.Seconds, 0.06));

        TraceFigures byLength = TraceCars.Analyse(Rows(r => r), TraceCars.Question with { LapLength = Length.FromMeters(lapM) });
        Assert.Equal(LapBasis.LapLength, byLength.LapBasis);
        Assert.All(byLength.Laps, l => Assert.Equal(truth, l.Time.Seconds, l.TimeUncertainty!.Value.Seconds));

        TraceFigures none = TraceCars.Analyse(Rows(r => r));
        Assert.Equal(LapBasis.None, none.LapBasis);
        Assert.Empty(none.Laps);
    }

    [Fact]
    public void Other_drop_gears_than_the_books_are_noticed_and_named()
    {
        GearingStock stock = new([TraceCars.Drop, new ToothPair(24, 28), new ToothPair(22, 30)], [TraceCars.Train.FinalDrive, FinalDrive.FromTeeth(new ToothPair(11, 39))]);
        TraceFigures same = TraceCars.Analyse(s_laps.Recorded(100, 0.05, 10));
        Assert.True(FittedGearCheck.Of(same.GearFit, TraceCars.Car, stock).IsAsExpected);

        Drivetrain other = TraceCars.Train.With(new ToothPair(24, 28), TraceCars.Train.FinalDrive);
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { Overall = TraceCars.Overall(other), Slip = 0.02 });
        TraceFigures seen = TraceCars.Analyse(laps.Recorded(100, 0.05, 10));
        Assert.True(seen.GearFit.IsFound);
        FittedGearCheck check = FittedGearCheck.Of(seen.GearFit, TraceCars.Car, stock);
        Assert.False(check.IsAsExpected);
        Assert.Equal(new GearSet(new ToothPair(24, 28), TraceCars.Train.FinalDrive), check.Others[0]);
    }

    [Fact]
    public void A_gear_of_other_teeth_shows_as_a_ratio_of_none()
    {
        double[] overall = [.. TraceCars.Drive.Overall];
        double third = overall[2] / overall[0] * 38 / 16;
        overall[2] *= 1.06;
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { Overall = overall });
        GearFit fit = TraceCars.Analyse(laps.Recorded(100, 0.05, 10)).GearFit;
        Assert.True(fit.IsFound);
        Assert.Equal(1.06 * third, Assert.Single(fit.StrayFactors), 0.02);
    }

    [Fact]
    public void Another_gearbox_altogether_is_not_read_as_this_one()
    {
        MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { Overall = [14.2, 7.89, 5.44, 4.0] });
        TraceFigures seen = TraceCars.Analyse(laps.Recorded(100, 0.05, 10));
        Assert.False(seen.GearFit.IsFound, $"{seen.GearFit.Share} {string.Join(' ', seen.GearFit.Gears)}");
        Assert.Empty(seen.Shifts);
        Assert.Empty(seen.TimeInGear);
    }

    [Fact]
    public void Nothing_comes_of_no_rows()
    {
        TraceFigures seen = TraceCars.Analyse([]);
        Assert.Equal(0, seen.Distance.Meters);
        Assert.False(seen.GearFit.IsFound);
        Assert.Null(seen.TopSpeedAt);
        Assert.Empty(CornerSummary.Of(seen));

        // In gear, but for less than half a second in any.
        Assert.False(TraceCars.Analyse(s_laps.Recorded(10).Take(3)).GearFit.IsFound);
    }

    [Fact]
    public void Any_circumference_noise_rate_and_shift_time_is_recovered() =>
        Gen.Select(Gen.Double[1.6, 2.2], Gen.Double[0.05, 0.12], Gen.Double[0, 0.08], Gen.Double[0, 15], Gen.Int[0, 3].Select(i => new[] { 10.0, 25, 50, 100 }[i]), Gen.Int[1, 1000])
            .Sample(
                (circumference, shiftS, speedNoise, rpmNoise, hertz, seed) =>
                {
                    MadeUpLaps laps = MadeUpLaps.Drive(TraceCars.Drive with { CircumferenceM = circumference, ShiftS = shiftS, Laps = 2 });
                    TraceFigures seen = TraceCars.Analyse(laps.Recorded(hertz, speedNoise, rpmNoise, seed));
                    Assert.True(seen.GearFit.IsFound);
                    Assert.Equal(circumference, seen.GearFit.Circumference.Meters, 0.004 * circumference);
                    Assert.Equal(laps.DistanceM, seen.Distance.Meters, 0.004 * laps.DistanceM);
                    Assert.Equal(laps.Shifts.Count(s => s.To > s.From), seen.Shifts.Count(s => s.IsUpshift));
                    (Duration mean, Duration uncertainty) = ShiftSummary.UpshiftTime(seen.Shifts)!.Value;
                    Assert.Equal(shiftS, mean.Seconds, 1.5 * uncertainty.Seconds);
                },
                iter: 12);
}
