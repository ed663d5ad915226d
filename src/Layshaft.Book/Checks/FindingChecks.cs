using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Book.Checks;

internal static class FindingChecks
{
    // A reading this many allowances away from new is a slip of the pen far more often than wear.
    private const double UnlikelyAllowances = 8;

    public static void Run(Checker check, Job job, Gearbox box)
    {
        foreach (var finding in job.Findings)
        {
            if (!check.Names(finding.Part, box.Parts.Select(p => p.Id), finding.Origin.At("part"), "part", box.Name))
            {
                continue;
            }

            if (finding.LeftIn is not null && job.Renewed.Any(r => r.Part == finding.Part))
            {
                check.Problems.Add("left-in-and-renewed", finding.Origin.At("left_in"), $"'{finding.Part}' is renewed, but this says that it went back in.", "Take 'left_in' out, or the part out of 'renewed'.");
            }

            foreach (var measurement in finding.Measurements)
            {
                MeasurementOf(check, job, box.PartOf(finding.Part)!, measurement);
            }
        }
    }

    private static void MeasurementOf(Checker check, Job job, Part part, Measurement measurement)
    {
        Instrument(check, job, measurement);
        if (!check.Names(measurement.Measure, part.Measures.Select(m => m.Id), measurement.Origin.At("measure"), "measure", $"'{part.Name}'"))
        {
            return;
        }

        var measure = part.MeasureOf(measurement.Measure)!;
        if (check.Draft.Shop?.Instruments.FirstOrDefault(i => i.Id == measurement.Instrument) is { } instrument)
        {
            check.Like(instrument.Resolution, measure.New, measurement.Origin.At("instrument"), "the new size");
        }

        foreach (var reading in measurement.Readings)
        {
            var place = measurement.Origin.At("readings");
            if (!check.Like(reading, measure.New, place, "the new size"))
            {
                continue;
            }

            var allowance = Math.Abs(measure.Limit.InSi() - measure.New.InSi());
            if (allowance > 0 && Math.Abs(reading.InSi() - measure.New.InSi()) > UnlikelyAllowances * allowance)
            {
                check.Problems.Add("unlikely-reading", place, $"This reading is more than {UnlikelyAllowances:0} times the wear allowance away from the new size.", "Check the figure and its unit.");
            }
        }
    }

    private static void Instrument(Checker check, Job job, Measurement measurement)
    {
        if (check.Draft.Shop is not { } shop
            || !check.Names(measurement.Instrument, shop.Instruments.Select(i => i.Id), measurement.Origin.At("instrument"), "instrument", "shop.yaml"))
        {
            return;
        }

        var instrument = shop.Instruments.FirstOrDefault(i => i.Id == measurement.Instrument);
        var measuredOn = job.Stripped ?? job.Received;
        if (instrument is not null && measuredOn > instrument.Due && measuredOn > instrument.Calibrated)
        {
            check.Problems.Note("calibration-overdue", measurement.Origin.At("instrument"), $"'{instrument.Name}' was due for calibration on {Checker.Day(instrument.Due)}; the report will say so.");
        }
    }
}
