using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Engineering.Life;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>The wear of the parts that are in a unit now.</summary>
public static class UnitTrends
{
    /// <summary>Everything that was measured on them, each with its trend or the reason why there is none.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="lives">The lives of all parts.</param>
    /// <param name="jobs">The jobs, judged, by number.</param>
    /// <param name="others">What may be said of other customers' gearboxes; null for nothing.</param>
    public static IReadOnlyList<TrendAssessment> Of(Unit unit, LifeAssessment lives, IReadOnlyDictionary<string, JobAssessment> jobs, OtherUnits? others = null)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(lives);
        ArgumentNullException.ThrowIfNull(jobs);
        JobAssessment[] own = [.. lives.Book.JobsOf(unit.Id).Select(j => jobs[j.Number])];
        return
        [
            .. lives.Book.GearboxOf(unit).Parts.SelectMany(p => p.Measures.Select(m => Of(unit, p, m, lives, own, others?.Of(unit.Id, p.Id, m.Id)))).OfType<TrendAssessment>(),
        ];
    }

    private static TrendAssessment? Of(Unit unit, Part part, Measure measure, LifeAssessment lives, JobAssessment[] jobs, TypeWear? others)
    {
        var known = lives.LastUse(unit);
        if (lives.Ledger.InPlace(unit.Id, part.Id) is not { } life || life.UseAt(unit.Id, known.Use) is not { } now)
        {
            return null;
        }

        TrendReading[] readings =
        [
            .. jobs.Where(j => ReferenceEquals(lives.LifeIn(j.Job, part.Id), life))
                .SelectMany(j => j.Findings.Where(f => f.Part.Id == part.Id).SelectMany(f => f.Measures).Where(m => m.Measure.Id == measure.Id).Select(m => (j.Job, Measured: m)))
                .Select(r => life.UseAt(unit.Id, r.Job.Use.Counted()) is { } use ? new TrendReading(r.Job, use.Amount, r.Measured) : null)
                .OfType<TrendReading>(),
        ];
        if (readings.Length == 0)
        {
            return null;
        }

        var type = life is { TotalIsWhole: true, IsDoubtful: false } ? others : null;
        var result = life.IsDoubtful
            ? null
            : Useful(Fit(readings, measure, life, now.Amount), readings);
        if (result is WearTrendUnsaid { Reason: WearTrendUnsaidReason.OneReading or WearTrendUnsaidReason.TwoReadings or WearTrendUnsaidReason.OneUse or WearTrendUnsaidReason.Vague } && type is not null)
        {
            result = Pooled(readings, measure, type, now.Amount) is { } pooled && SaysEnough(pooled, readings) ? pooled : result;
        }

        var relative = type is null ? null : RelativeRate.Of(
            [.. readings.Select(r => new WearReading(r.PartUse, r.Measured.Wear.ShareUsed.Value))],
            type,
            readings.Max(r => r.Measured.Wear.ShareUsed.StandardUncertainty));
        return new TrendAssessment(
            part, measure, life, readings, now, known.Date, result,
            result is WearTrendLine line ? LookAgain.Of(line, lives.UseOf(unit), known.Date) : null)
        {
            Relative = relative is { Differs: true } ? relative : null,
            Others = type?.Units ?? 0,
        };
    }

    private static WearTrendLine? Pooled(TrendReading[] readings, Measure measure, TypeWear others, double now)
    {
        var (points, limit, choices) = Points(readings, measure, now);
        return PooledTrend.Of(points, limit, others, choices);
    }

    // A part that was measured as serviceable is not called in by bounds that only say how little is known.
    private static WearTrendResult Useful(WearTrendResult result, TrendReading[] readings) =>
        result is WearTrendLine { LimitReached: false, LookAgainWithin: < 1 } && readings[^1].Measured.Grade.Standing == Grade.Reuse
            ? new WearTrendUnsaid(WearTrendUnsaidReason.Vague, readings.Length, null)
            : result;

    // Nor by bounds that begin long before the limit is expected.
    private static bool SaysEnough(WearTrendLine pooled, TrendReading[] readings) =>
        readings[^1].Measured.Grade.Standing != Grade.Reuse || (pooled.LookAgainWithin >= 1 && pooled.LookAgainWithin >= pooled.Remaining / 5);

    // Two readings of a part that was fitted new are enough with its new size as a third; that size is nominal, so the line
    // is held to it only when there is no other way.
    private static WearTrendResult Fit(TrendReading[] readings, Measure measure, PartLife life, double now)
    {
        var (points, limit, choices) = Points(readings, measure, now);
        var free = WearTrend.Of(points, limit, choices);
        return free is WearTrendUnsaid { Reason: WearTrendUnsaidReason.TwoReadings } && life.TotalIsWhole
            ? WearTrend.Of(points, limit, choices with { ThroughNewValue = true }) is WearTrendLine held && held.LookAgainWithin > 0 ? held : free
            : free;
    }

    private static (WearReading[] Points, WearLimit Limit, WearTrendChoices Choices) Points(TrendReading[] readings, Measure measure, double now)
    {
        var zero = measure.New.Like(0).InSi();
        var uncertainty = readings.Max(r => r.Measured.Wear.Measured.StandardUncertainty.InSi() - zero);
        return (
            [.. readings.Select(r => new WearReading(r.PartUse, r.Measured.Wear.Measured.Value.InSi()))],
            WearLimit.Between(measure.New.InSi(), measure.Limit.InSi()),
            new WearTrendChoices { UseNow = now, ReadingUncertainty = Math.Max(0, uncertainty) });
    }
}
