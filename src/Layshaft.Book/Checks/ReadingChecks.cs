using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>Readings that a slip of the pen explains better than wear does: a point in the wrong place, another unit, a part better than new.</summary>
public static class ReadingChecks
{
    // Allowances away from the new size: beyond the first a reading is refused, beyond the second noted if a slip explains it (common practice, no source).
    private const double Impossible = 8;
    private const double Doubtful = 3;

    // New parts differ from their nominal size too: share of the allowance (common practice, no source).
    private const double NewPartSpread = 0.1;

    /// <summary>Checks the readings of one measurement; whatever is wrong is added to the problems.</summary>
    public static void Run(Shop? shop, ProblemList problems, Measure measure, Measurement measurement)
    {
        IQuantity[] readings = [.. measurement.Readings.Where(r => r.IsLike(measure.New))];
        var allowance = measure.Limit.InSi() - measure.New.InSi();
        if (readings.Length == 0 || allowance == 0 || !measure.Limit.IsLike(measure.New))
        {
            return;
        }

        var doubtful = false;
        for (var i = 0; i < readings.Length; i++)
        {
            doubtful |= IsDoubtful(problems, measure, measurement, readings, i);
        }

        if (!doubtful && measure.New is not Temperature)
        {
            BetterThanNew(shop, problems, measure, measurement, readings);
        }
    }

    private static bool IsDoubtful(ProblemList problems, Measure measure, Measurement measurement, IQuantity[] readings, int i)
    {
        var (reading, place) = (readings[i], measurement.Origin.At("readings"));
        var used = Used(reading, measure);
        var meant = Slips.Meant(reading, size => Used(size, measure) is >= -NewPartSpread and <= 1 + (5 * NewPartSpread));
        if (Math.Abs(used) > Impossible)
        {
            problems.Add("unlikely-reading", place, $"This reading ({Slips.Text(reading)}) is more than {Impossible:0} times the wear allowance away from the new size.", meant ?? "Check the value and its unit.");
            return true;
        }

        var isFar = used > Doubtful;
        if (meant is null || !(isFar || IsApart(readings, i)))
        {
            return false;
        }

        problems.Note("unlikely-reading", place, $"This reading ({Slips.Text(reading)}) is far from {(isFar ? "both the new size and the limit" : "the other readings")}.", meant);
        return true;
    }

    private static void BetterThanNew(Shop? shop, ProblemList problems, Measure measure, Measurement measurement, IQuantity[] readings)
    {
        var instrument = shop?.Instruments.FirstOrDefault(i => i.Id == measurement.Instrument);
        if (instrument?.Measures(measure.New) == false)
        {
            return;
        }

        var measured = MeasuredQuantity.From(readings, instrument?.Figures ?? Engineering.Measurement.Instrument.Unknown);
        var allowance = measure.Limit.InSi() - measure.New.InSi();
        var better = (measure.New.InSi() - measured.Value.InSi()) * Math.Sign(allowance);
        var uncertainty = measured.Number.UncertaintyIsKnown ? measured.ExpandedUncertainty.InSi() : 0;
        if (better > uncertainty + (NewPartSpread * Math.Abs(allowance)))
        {
            problems.Note(
                "better-than-new",
                measurement.Origin.At("readings"),
                $"'{measure.Name}' measures {Slips.Text(measured.Value)}, which is better than new ({Slips.Text(measure.New)}).",
                Slips.Meant(readings[0], size => Used(size, measure) is >= -NewPartSpread and <= 1 + (5 * NewPartSpread)) ?? "Check the value, its unit, the part and the new size.");
        }
    }

    // Share of the wear allowance that is used: 0 at the new size, 1 at the limit.
    private static double Used(IQuantity size, Measure measure) => (size.InSi() - measure.New.InSi()) / (measure.Limit.InSi() - measure.New.InSi());

    // Less than a fifth or more than five times the middle one of the others: a point in another place makes ten.
    private static bool IsApart(IQuantity[] readings, int i)
    {
        double[] others = [.. readings.Where((_, other) => other != i).Select(r => Math.Abs(r.InSi())).Order()];
        return others.Length > 1 && Math.Abs(readings[i].InSi()) / others[others.Length / 2] is < 0.2 or > 5;
    }
}
