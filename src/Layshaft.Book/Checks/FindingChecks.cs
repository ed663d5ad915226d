using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class FindingChecks
{
    public static void Run(Checker check, Job job, Gearbox box)
    {
        Twice(check, job);
        foreach (var finding in job.Findings)
        {
            if (!check.Names(finding.Part, box.Parts.Select(p => p.Id), finding.Origin.At("part"), "part", box.Name, box.Origin.Place.File))
            {
                continue;
            }

            if (finding.LeftIn is not null && job.Renewed.Any(r => r.Part == finding.Part))
            {
                check.Problems.Note("left-in-and-renewed", finding.Origin.At("left_in"), $"'{finding.Part}' is renewed, but 'left_in' means that it was refitted.", "Remove 'left_in', or remove the part from 'renewed'.");
            }

            PartKindChecks.Terms(check, finding, box.PartOf(finding.Part)!);
            foreach (var measurement in finding.Measurements)
            {
                MeasurementOf(check, job, box.PartOf(finding.Part)!, measurement);
            }
        }
    }

    private static void MeasurementOf(Checker check, Job job, Part part, Measurement measurement)
    {
        Instrument(check, job, measurement);
        if (!check.Names(measurement.Measure, part.Measures.Select(m => m.Id), measurement.Origin.At("measure"), "measure", $"'{part.Name}'", part.Origin.Place.File))
        {
            return;
        }

        var measure = part.MeasureOf(measurement.Measure)!;
        if (check.Draft.Shop?.Instruments.FirstOrDefault(i => i.Id == measurement.Instrument) is { } instrument)
        {
            check.Like(instrument.Resolution, measure.New, measurement.Origin.At("instrument"), "the new size", "The instrument's resolution");
        }

        foreach (var reading in measurement.Readings)
        {
            var place = measurement.Origin.At("readings");
            check.Like(reading, measure.New, place, "the new size");
        }

        ReadingChecks.Run(check.Draft.Shop, check.Problems, measure, measurement);
    }

    // One side or place of a part is measured once: a second list is easily another part's.
    private static void Twice(Checker check, Job job)
    {
        var seen = new HashSet<(string Part, Flank? Side, string? Position, string Measure)>();
        foreach (var finding in job.Findings)
        {
            foreach (var measurement in finding.Measurements.Where(m => !seen.Add((finding.Part, finding.Flank, finding.Position, m.Measure))))
            {
                check.Problems.Note("measured-twice", measurement.Origin.At("measure"), $"'{measurement.Measure}' of '{finding.Part}' is measured twice in this job.", "Write all readings in one list, or distinguish them by 'side' or 'position'.");
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
            check.Problems.Note("calibration-overdue", measurement.Origin.At("instrument"), $"'{instrument.Name}' was due for calibration on {Checker.Day(instrument.Due)}. The report will state this.");
        }
    }
}
