using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Defaults;

/// <summary>
/// Gives readings without a unit the unit of the gearbox file, and the instrument that it names for them. Readings with a unit keep
/// what is written: an instrument that is declared later says nothing about how they were taken.
/// </summary>
internal static class ReadingDefaults
{
    public static Job Complete(Job job, Gearbox box, ProblemList problems)
    {
        var findings = Changed(job.Findings, f => Complete(f, box.PartOf(f.Part), problems));
        var settings = Changed(job.Settings, s => Complete(s, box.SettingOf(s.Setting), problems));
        return ReferenceEquals(findings, job.Findings) && ReferenceEquals(settings, job.Settings) ? job : job with { Findings = findings, Settings = settings };
    }

    private static Finding Complete(Finding finding, Part? part, ProblemList problems)
    {
        var measurements = Changed(finding.Measurements, m => Complete(m, part?.MeasureOf(m.Measure), problems));
        return ReferenceEquals(measurements, finding.Measurements) ? finding : finding with { Measurements = measurements };
    }

    private static Measurement Complete(Measurement measurement, Measure? measure, ProblemList problems)
    {
        if (!measurement.Readings.Any(IsBare))
        {
            return measurement;
        }

        // A measure that the gearbox does not have is reported by the checks.
        var unit = measure is null ? null : measure.New.Unit.Equals(measure.Limit.Unit) || measure.New is Temperature ? measure.New : null;
        return measurement with
        {
            Readings = WithUnit(measurement.Readings, unit, measure is null, "new size and limit have different units", measurement.Origin.At("readings"), problems),
            Instrument = measurement.Instrument ?? measure?.Instrument,
        };
    }

    private static JobSetting Complete(JobSetting set, Setting? setting, ProblemList problems)
    {
        if (!set.Found.Concat(set.Trial).Concat(set.Built).Any(IsBare))
        {
            return set;
        }

        var (low, high) = (setting?.Target.Low, setting?.Target.High);
        var unit = low is null || high is null || low.Unit.Equals(high.Unit) ? low ?? high : null;
        IReadOnlyList<IQuantity> Values(IReadOnlyList<IQuantity> values, string key) => WithUnit(values, unit, setting is null, "the ends of the target have different units", set.Origin.At(key), problems);
        return set with
        {
            Found = Values(set.Found, "found"),
            Trial = Values(set.Trial, "trial"),
            Built = Values(set.Built, "built"),
            Instrument = set.Instrument ?? setting?.Instrument,
        };
    }

    private static IReadOnlyList<IQuantity> WithUnit(IReadOnlyList<IQuantity> values, IQuantity? model, bool isUnknown, string unclear, Place place, ProblemList problems)
    {
        if (!values.Any(IsBare))
        {
            return values;
        }

        if (!values.All(IsBare))
        {
            problems.Add("no-unit", place, "Some of these readings have a unit and others do not.", "Write the unit of each, or of none.");
        }
        else if (model is null && !isUnknown)
        {
            problems.Add("no-unit", place, $"This reading has no unit, and {unclear}.", "Write its unit.");
        }

        return model is null ? [] : ValueList.Of([.. values.Select(v => v is Scalar bare ? model.Of(bare.Amount) : v)]);
    }

    private static bool IsBare(IQuantity value) => value is Scalar;

    // The same list if nothing in it changes, which is so for most jobs.
    private static IReadOnlyList<T> Changed<T>(IReadOnlyList<T> items, Func<T, T> change)
        where T : class
    {
        T[]? changed = null;
        for (var i = 0; i < items.Count; i++)
        {
            if (change(items[i]) is var item && !ReferenceEquals(item, items[i]))
            {
                changed ??= [.. items];
                changed[i] = item;
            }
        }

        return changed ?? items;
    }
}
