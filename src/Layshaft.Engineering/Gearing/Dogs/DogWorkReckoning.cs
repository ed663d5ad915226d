using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Works out the engagements of one lap.</summary>
internal sealed class DogWorkReckoning(Car car, Dictionary<int, string> ringOf, ShiftStyle style, DogInertias? inertias)
{
    private const double DownshiftShare = 0.9;

    private readonly CarModel _model = new(car);
    private readonly List<Raw> _raw = [];

    internal DogWork Reckon(VenueRun run, IReadOnlyList<DogRing> rings, int laps)
    {
        for (int i = 0; i < run.Straights.Count; i++)
        {
            StraightRun straight = run.Straights[i];
            foreach (ShiftMade shift in straight.Shifts)
            {
                // The gear still turns with the engine at its speed before the shift; the ring turns with the car after it.
                AddShift(
                    straight.Straight.Name, shift.From, shift.To, shift.SpeedBefore.MetersPerSecond, shift.SpeedAfter.MetersPerSecond);
            }

            // Nothing is driven into a standing start: after the finish the box is taken down at leisure.
            if (run.Venue.Straights[(i + 1) % run.Corners.Count].StartSpeed <= Speed.Zero)
            {
                continue;
            }

            if (straight.Fault is null or { Kind: GearingFaultKind.CornerUnreachable or GearingFaultKind.StartAboveTopGear })
            {
                AddDownshifts(straight, run.Corners[(i + 1) % run.Corners.Count].Gear, run.Venue.Straights[(i + 1) % run.Corners.Count]);
            }
        }

        double hardest = _raw.Count == 0 ? 0 : _raw.Max(raw => raw.Relative);
        DogEngagement[] engagements = _raw.Select(raw => raw.Engagement(hardest, inertias is not null)).ToArray();
        double all = _raw.Sum(raw => raw.Weight(false)), allMatched = _raw.Sum(raw => raw.Weight(true));
        RingWork[] work = rings.Select(ring =>
        {
            Raw[] own = _raw.Where(raw => raw.Ring == ring.Name).ToArray();
            double sum = own.Sum(raw => raw.Weight(false)), matched = own.Sum(raw => raw.Weight(true));
            var figures = new RingWork(
                ring.Name,
                own.Count(raw => raw.To > raw.From),
                own.Count(raw => raw.To < raw.From),
                all > 0 ? sum / all : 0,
                allMatched > 0 ? matched / allMatched : 0);
            return inertias is null
                ? figures
                : new RingEnergy(
                    figures.Ring,
                    figures.UpshiftsPerLap,
                    figures.DownshiftsPerLap,
                    figures.Share,
                    figures.MatchedShare,
                    Energy.FromJoules(sum),
                    Energy.FromJoules(matched),
                    Energy.FromJoules(laps * sum),
                    Energy.FromJoules(laps * matched));
        }).ToArray();
        return new DogWork(inertias is not null, engagements, work);
    }

    private void AddDownshifts(StraightRun run, int cornerGear, Straight next)
    {
        double cornerMps = Math.Min(
            run.ReachedSpeed.MetersPerSecond, (next.CornerMinimum ?? next.StartSpeed).MetersPerSecond);
        double atRpm = style.DownshiftAt?.RevolutionsPerMinute ?? DownshiftShare * car.Engine.LimiterRpm;
        for (int to = run.BrakingGear - 1; to >= cornerGear; to--)
        {
            double earliest = _model.SpeedMps(atRpm, car.Drivetrain.OverallRatio(to));
            double speed = Math.Clamp(earliest, Math.Min(cornerMps, run.BrakingSpeed.MetersPerSecond), run.BrakingSpeed.MetersPerSecond);
            AddShift(run.Straight.Name, to + 1, to, speed, speed);
        }
    }

    private void AddShift(string straight, int from, int to, double beforeMps, double afterMps)
    {
        double engineRadPerS = _model.EngineRpm(beforeMps, car.Drivetrain.OverallRatio(from)) * EngineCurve.RadPerSecondPerRpm;
        double ringRadPerS = _model.EngineRpm(afterMps, car.Drivetrain.OverallRatio(to)) * EngineCurve.RadPerSecondPerRpm
            / car.Drivetrain.RatioToMainshaft(to);
        double ratio = car.Drivetrain.RatioToMainshaft(to);
        double difference = (engineRadPerS / ratio) - ringRadPerS;
        double matched = Math.Min(Math.Abs(difference), style.ResidualMismatch.RadiansPerSecond / ratio);
        _raw.Add(new Raw(straight, ringOf[to], from, to, afterMps, difference, matched, ratio * ratio, inertias is null ? 0 : DogImpact.InertiaKgM2(_model, car.Drivetrain, to, inertias)));
    }

    private sealed record Raw(
        string Straight, string Ring, int From, int To, double SpeedMps, double Difference, double Matched, double RatioSquare, double InertiaKgM2)
    {
        /// <summary>Proportional to the energy when the output side is far heavier than the input side.</summary>
        internal double Relative => RatioSquare * Difference * Difference;

        /// <summary>Joules where the inertias are known, else in the unit of <see cref="Relative"/>.</summary>
        internal double Weight(bool isMatched)
        {
            double difference = isMatched ? Matched : Difference;
            return (InertiaKgM2 > 0 ? 0.5 * InertiaKgM2 : RatioSquare) * difference * difference;
        }

        internal DogEngagement Engagement(double hardest, bool isAbsolute) => new(
            Straight,
            Ring,
            From,
            To,
            Speed.FromMetersPerSecond(SpeedMps),
            RotationalSpeed.FromRadiansPerSecond(Difference),
            RotationalSpeed.FromRadiansPerSecond(Matched),
            isAbsolute ? Energy.FromJoules(Weight(false)) : null,
            isAbsolute ? Energy.FromJoules(Weight(true)) : null,
            hardest > 0 ? Relative / hardest : 0);
    }
}
