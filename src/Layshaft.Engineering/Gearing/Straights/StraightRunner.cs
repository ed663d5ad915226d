namespace Layshaft.Engineering.Gearing;

/// <summary>Drives one car down one straight: full throttle, real shifts, the limiter, and the brakes at the end.</summary>
internal static class StraightRunner
{
    internal const double LongestS = 900;

    private const int MostShifts = 60;
    private const double DownshiftShare = 0.9;

    /// <summary>A real gearing, from the corner's lowest speed on in the gear that is quickest.</summary>
    internal static StraightFigures Run(CarModel car, GearLimits gears, in StraightTask task, MotionTrace? trace = null)
    {
        double exitMps = Math.Min(task.StartMps, gears.LimiterMps[^1]);
        double minimumMps = Math.Min(task.CornerMps, exitMps);
        CornerExit shortest = CornerExit.Shortest(car, gears, minimumMps, exitMps);
        if (shortest.Longer(car, gears, minimumMps, exitMps) is not { } longer)
        {
            return Run(car, gears, task, shortest, trace);
        }

        switch (LongerGear.Weigh(car, gears, task, shortest.Gear, exitMps, out double broughtS))
        {
            case LongerGearVerdict.Slower:
                return Run(car, gears, task, shortest, trace);
            case LongerGearVerdict.Quicker:
                return Run(car, gears, task, longer, trace);
            default:
                StraightFigures first = Run(car, gears, task, shortest, null);
                StraightFigures second = Run(car, gears, task, longer, null);
                bool isQuicker = second.IsFinished && (!first.IsFinished || second.TimeS <= first.TimeS + broughtS);
                return trace is null ? (isQuicker ? second : first) : Run(car, gears, task, isQuicker ? longer : shortest, trace);
        }
    }

    /// <summary>A real gearing in one way out of the corner.</summary>
    internal static StraightFigures Run(CarModel car, GearLimits gears, in StraightTask task, CornerExit exit, MotionTrace? trace)
    {
        var run = new GearedRun(car, gears, task, trace);
        run.Start(exit);
        while (run.DriveOn(mayShift: true))
        {
        }

        run.HoldInsteadOfLastShift();
        return run.Figures;
    }

    /// <summary>The ideal: power-optimal at every speed.</summary>
    internal static StraightFigures RunIdeal(CarModel car, IdealGearing ideal, in StraightTask task, MotionTrace? trace = null)
    {
        var figures = new StraightFigures { TopGear = -1 };
        var motion = new Motion { SpeedMps = task.StartMps };
        figures.See(motion, -1);
        trace?.Add(motion);
        MotionEnd end = MotionIntegrator.Advance(new IdealLaw(car, task.Road, ideal), ref motion, task.Bounds, trace);
        figures.See(motion, -1);
        if (end == MotionEnd.Finished)
        {
            if (task.BrakingPointM is not null && motion.SpeedMps < task.EndMps && motion.PositionM < task.LengthM)
            {
                MotionBounds rest = Braking.RestOf(task);
                MotionIntegrator.Advance(new IdealLaw(car, task.Road, ideal), ref motion, rest, trace);
                figures.See(motion, -1);
            }

            Braking.Finish(task, ref motion, ref figures, trace);
        }
        else
        {
            Braking.GiveUp(end, motion, ref figures);
        }

        return figures;
    }

    /// <summary>The gears, one after the other; a struct so that the ranking allocates nothing.</summary>
    private ref struct GearedRun(CarModel car, GearLimits gears, in StraightTask task, MotionTrace? trace)
    {
        internal StraightFigures Figures;

        private readonly StraightTask _task = task;
        private Motion _motion;
        private int _gear;
        private bool _isPastBrakingPoint;
        private bool _hasShifted;
        private Motion _motionAtShift;
        private StraightFigures _figuresAtShift;
        private int _pointsAtShift;
        private int _shiftsAtShift;
        private bool _wasPastAtShift;

        internal void Start(CornerExit exit)
        {
            double top = gears.LimiterMps[^1];
            if (_task.StartMps > top * (1 + 1e-9))
            {
                Figures.Fault = GearingFaultKind.StartAboveTopGear;
                Figures.FaultFigure = top;
            }

            _motion.SpeedMps = Math.Min(_task.StartMps, top);
            _gear = exit.Gear;
            Figures.FirstGear = _gear;
            Figures.Fit = exit.Fit;
            if (exit.HasShift)
            {
                _motion.TimeS = car.ShiftTimeS;
                Figures.Upshifts++;
                UnitsNet.Speed speed = UnitsNet.Speed.FromMetersPerSecond(_motion.SpeedMps);
                trace?.Shifts.Add(new ShiftMade(_gear, _gear + 1, UnitsNet.Length.Zero, speed, speed));
            }

            Figures.See(_motion, _gear);
            Mark(_gear + 1);
        }

        /// <summary>Drives until something happens and deals with it.</summary>
        /// <returns>Whether the run goes on.</returns>
        internal bool DriveOn(bool mayShift)
        {
            bool isTop = _gear == gears.Count - 1;
            double limiter = gears.LimiterMps[_gear];
            bool shiftsHere = mayShift && !isTop && (_motion.SpeedMps < gears.ShiftMps[_gear] || NextPulls());
            double target = shiftsHere ? gears.ShiftMps[_gear] : limiter;
            double heldRpm = _gear > 0 ? 0 : _task.StartMps <= 0 ? car.Car.Engine.LaunchRpm : car.Car.Engine.UsableFromRpm;
            double clutchMps = _gear > 0 ? gears.ClutchMps[_gear] : _task.StartMps <= 0 ? gears.LaunchMps : gears.UsableMps;
            bool isSlipping = _motion.SpeedMps < clutchMps;
            var law = new DriveLaw(car, _task.Road, gears.OverallRatio[_gear], gears.Efficiency[_gear], isSlipping, isSlipping ? heldRpm : 0);
            MotionBounds bounds = BoundsNow();
            bounds.RiseToMps = Math.Min(target, isSlipping ? clutchMps : double.PositiveInfinity);
            if (mayShift && _gear > 0 && law.At(_motion.SpeedMps) < 0)
            {
                bounds.FallToMps = DownshiftShare * gears.ShiftMps[_gear - 1];
            }

            bool isAtLimiter = _motion.SpeedMps >= limiter - 1e-9 && !shiftsHere;
            if (isAtLimiter && law.At(limiter) < 0)
            {
                bounds.RiseToMps = double.PositiveInfinity; // the slope or the wind takes it off the limiter by itself
                isAtLimiter = false;
            }

            if (isAtLimiter)
            {
                return RideLimiter(limiter);
            }

            MotionEnd end = MotionIntegrator.Advance(law, ref _motion, bounds, trace);
            Figures.See(_motion, _gear);
            switch (end)
            {
                case MotionEnd.SpeedRisen when isSlipping && _motion.SpeedMps < target - 1e-9:
                    _motion.SpeedMps = Math.Max(_motion.SpeedMps, clutchMps);
                    return true;
                case MotionEnd.SpeedRisen when shiftsHere:
                    return NextPulls() ? Shift(_gear + 1) : RunToLimiter();
                case MotionEnd.SpeedRisen:
                    return true;
                case MotionEnd.SpeedFallen:
                    return Shift(_gear - 1);
                case MotionEnd.Finished:
                    return Brake();
                default:
                    Braking.GiveUp(end, _motion, ref Figures);
                    return false;
            }
        }

        /// <summary>
        /// A driver who would brake before an upshift has paid for itself holds the gear on the limiter instead.
        /// </summary>
        internal void HoldInsteadOfLastShift()
        {
            if (!_hasShifted || !Figures.IsFinished || Figures.TimeS - _motionAtShift.TimeS <= LeastHeldS())
            {
                return;
            }

            GearedRun held = this;
            held._motion = _motionAtShift;
            held.Figures = _figuresAtShift;
            held._gear = _figuresAtShift.LastGear;
            held._isPastBrakingPoint = _wasPastAtShift;
            int points = trace?.Points.Count ?? 0;
            int shifts = trace?.Shifts.Count ?? 0;
            held.Mark(held._gear + 1);
            while (held.DriveOn(mayShift: false))
            {
            }

            if (held.Figures.IsFinished && held.Figures.TimeS < Figures.TimeS)
            {
                Figures = held.Figures;
                trace?.Points.RemoveRange(_pointsAtShift, points - _pointsAtShift);
                trace?.Shifts.RemoveRange(_shiftsAtShift, shifts - _shiftsAtShift);
            }
            else
            {
                trace?.CutBack(points, shifts);
            }
        }

        // No run that holds the gear is quicker than one that is on its limiter from the shift on.
        private readonly double LeastHeldS()
        {
            double limiter = gears.LimiterMps[_figuresAtShift.LastGear];
            double brakingM = Math.Max(_motionAtShift.PositionM, _wasPastAtShift ? _task.LengthM : _task.BrakingFromM(limiter));
            return ((brakingM - _motionAtShift.PositionM) / limiter) + (2 * (_task.LengthM - brakingM) / (limiter + _task.EndMps));
        }

        private readonly bool NextPulls() => _gear < gears.Count - 1
            && new DriveLaw(car, _task.Road, gears.OverallRatio[_gear + 1], gears.Efficiency[_gear + 1]).At(_motion.SpeedMps) > 0;

        private readonly MotionBounds BoundsNow() => _isPastBrakingPoint ? Braking.RestOf(_task) : _task.Bounds;

        private bool RunToLimiter()
        {
            // The next gear would not pull here: keep this one up to its limiter.
            MotionBounds bounds = BoundsNow();
            bounds.RiseToMps = gears.LimiterMps[_gear];
            var law = new DriveLaw(car, _task.Road, gears.OverallRatio[_gear], gears.Efficiency[_gear]);
            MotionEnd end = MotionIntegrator.Advance(law, ref _motion, bounds, trace);
            Figures.See(_motion, _gear);
            if (end == MotionEnd.SpeedRisen)
            {
                return RideLimiter(gears.LimiterMps[_gear]);
            }

            if (end == MotionEnd.Finished)
            {
                return Brake();
            }

            Braking.GiveUp(end, _motion, ref Figures);
            return false;
        }

        private bool RideLimiter(double limiterMps)
        {
            _motion.SpeedMps = limiterMps;
            double untilM = _isPastBrakingPoint ? _task.LengthM : _task.BrakingFromM(limiterMps);
            if (untilM > _motion.PositionM)
            {
                double time = (untilM - _motion.PositionM) / limiterMps;
                Figures.LimiterS += time;
                _motion.TimeS += time;
                _motion.PositionM = untilM;
            }

            Mark(_gear + 1);
            return Brake();
        }

        private bool Shift(int to)
        {
            if (Figures.Upshifts + Figures.Downshifts >= MostShifts)
            {
                Braking.GiveUp(MotionEnd.TimeUp, _motion, ref Figures);
                return false;
            }

            if (to > _gear)
            {
                Figures.LastGear = _gear;
                (_hasShifted, _motionAtShift, _figuresAtShift) = (true, _motion, Figures);
                (_pointsAtShift, _shiftsAtShift) = (trace?.Points.Count ?? 0, trace?.Shifts.Count ?? 0);
                _wasPastAtShift = _isPastBrakingPoint;
                Figures.Upshifts++;
            }
            else
            {
                _hasShifted = false;
                Figures.Downshifts++;
            }

            Motion before = _motion;
            MotionBounds bounds = BoundsNow();
            bounds.UntilTimeS = Math.Min(LongestS, _motion.TimeS + car.ShiftTimeS);
            Mark(0);
            MotionEnd end = car.ShiftTimeS > 0
                ? MotionIntegrator.Advance(new CoastLaw(car, _task.Road), ref _motion, bounds, trace)
                : MotionEnd.TimeUp;
            int from = _gear;
            _gear = to;
            Mark(to + 1);
            trace?.Shifts.Add(new ShiftMade(
                from + 1,
                to + 1,
                UnitsNet.Length.FromMeters(before.PositionM),
                UnitsNet.Speed.FromMetersPerSecond(before.SpeedMps),
                UnitsNet.Speed.FromMetersPerSecond(_motion.SpeedMps)));
            if (end == MotionEnd.Finished)
            {
                return Brake();
            }

            if (to > from && _motion.SpeedMps > 0)
            {
                EngineMomentum momentum = EngineMomentum.At(car, gears, _task.Road, from, before.SpeedMps, _motion.SpeedMps);
                bounds.UntilTimeS = Math.Min(LongestS, _motion.TimeS + momentum.TimeS);
                if (momentum.TimeS > 0 && MotionIntegrator.Advance(new SteadyLaw(momentum.Mps2), ref _motion, bounds, trace) == MotionEnd.Finished)
                {
                    return Brake();
                }
            }

            if (_motion.SpeedMps <= 0 || _motion.TimeS >= LongestS)
            {
                Braking.GiveUp(_motion.SpeedMps <= 0 ? MotionEnd.Stopped : MotionEnd.TimeUp, _motion, ref Figures);
                return false;
            }

            Figures.See(_motion, _gear);
            return true;
        }

        private bool Brake()
        {
            Figures.LastGear = _gear;
            if (!_isPastBrakingPoint && _task.BrakingPointM is not null
                && _motion.SpeedMps < _task.EndMps && _motion.PositionM < _task.LengthM - 1e-9)
            {
                _isPastBrakingPoint = true; // slower than the corner: no need for the brakes yet
                return true;
            }

            Braking.Finish(_task, ref _motion, ref Figures, trace);
            return false;
        }

        private readonly void Mark(int gear)
        {
            if (trace is not null)
            {
                trace.Gear = gear;
                trace.Add(_motion);
            }
        }
    }
}
