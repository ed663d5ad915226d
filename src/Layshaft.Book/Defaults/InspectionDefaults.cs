using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Defaults;

/// <summary>Turns the short forms into what they stand for: the inspection into findings, the values as built into settings.</summary>
internal static class InspectionDefaults
{
    public static Job Complete(Job job, Gearbox box, Func<string, bool> isLost, ProblemList problems)
    {
        job = job.Built.Count == 0 ? job : job with { Settings = Settings(job, box, isLost, problems) };
        if (job.Inspection.Count == 0)
        {
            return job;
        }

        List<Finding> findings = [.. job.Findings];
        foreach (var inspected in job.Inspection)
        {
            if (box.PartOf(inspected.Name) is not { } part)
            {
                if (isLost(inspected.Name))
                {
                    continue;
                }

                problems.Add("missing-reference", inspected.Place, $"{box.Name} has no part '{inspected.Name}'.", NearestWord.Advice(inspected.Name, [.. box.Parts.Select(p => p.Id)]));
            }
            else if (MeasurementsOf(inspected, part, problems) is { } measurements && (measurements.Count > 0 || inspected.Value.Grade is not null))
            {
                Add(findings, inspected, measurements, problems);
            }
        }

        return job with { Findings = findings };
    }

    private static List<JobSetting> Settings(Job job, Gearbox box, Func<string, bool> isLost, ProblemList problems)
    {
        List<JobSetting> settings = [.. job.Settings];
        foreach (var (place, name, values) in job.Built)
        {
            if (box.SettingOf(name) is null)
            {
                if (isLost(name))
                {
                    continue;
                }

                problems.Add("missing-reference", place, $"{box.Name} has no setting '{name}'.", NearestWord.Advice(name, [.. box.Settings.Select(s => s.Id)]));
            }
            else if (values.Count > 0 && settings.FindIndex(s => s.Setting == name) is var at)
            {
                if (at < 0)
                {
                    settings.Add(new JobSetting(Origin.Of(place), name, [], [], [], [], [], values, null, null, null));
                }
                else if (settings[at].Built.Count > 0)
                {
                    problems.Add("written-twice", place, $"'{name}' as built is both here and under 'settings'.", "Remove one of them.");
                }
                else
                {
                    settings[at] = settings[at] with { Built = values };
                }
            }
        }

        return settings;
    }

    private static List<Measurement>? MeasurementsOf(Named<PartInspection> inspected, Part part, ProblemList problems)
    {
        var (value, place) = (inspected.Value, inspected.Place);
        if (value.Readings.Count == 0)
        {
            return [.. value.Measures.Where(m => m.Value.Count > 0).Select(m => Written(m.Place, m.Name, m.Value))];
        }

        if (part.Measures is [var only])
        {
            return [Written(place, only.Id, value.Readings)];
        }

        problems.Add(
            "measure-not-named",
            place,
            part.Measures.Count == 0 ? $"'{part.Id}' has no measures in the gearbox file." : $"'{part.Id}' has {part.Measures.Count} measures, so a reading needs the name of its measure.",
            part.Measures.Count == 0 ? "Write reuse, watch or renew, or add a measure to the gearbox file." : $"Write {part.Id}: {{{string.Join(", ", part.Measures.Select(m => $"{m.Id}: …"))}}}.");
        return null;
    }

    // What 'findings' says of the same part stays; the readings are added to it.
    private static void Add(List<Finding> findings, Named<PartInspection> inspected, List<Measurement> measurements, ProblemList problems)
    {
        var same = findings.Where(f => f.Part == inspected.Name).ToArray();
        if (same.Length > 1)
        {
            problems.Add("finding-not-unique", inspected.Place, $"'{inspected.Name}' has {same.Length} findings, so it is not clear which one this belongs to.", "Write the readings in 'measurements' of the finding.");
            return;
        }

        if (same is not [var finding])
        {
            findings.Add(new Finding(Origin.Of(inspected.Place), inspected.Name, null, null, measurements, [], inspected.Value.Grade, null, null, null, null, null, [], null));
            return;
        }

        foreach (var twice in measurements.Where(m => finding.Measurements.Any(w => w.Measure == m.Measure)))
        {
            problems.Add("written-twice", twice.Origin.Place, $"'{twice.Measure}' of '{inspected.Name}' is both here and under 'findings'.", "Remove one of them.");
        }

        if (inspected.Value.Grade is { } grade && finding.Grade is { } other && other != grade)
        {
            problems.Add("grade-contradicts", inspected.Place, $"'{inspected.Name}' has another grade under 'findings'.", "Remove one of them.");
        }

        findings[findings.IndexOf(finding)] = finding with { Measurements = [.. finding.Measurements, .. measurements], Grade = finding.Grade ?? inspected.Value.Grade };
    }

    private static Measurement Written(Place place, string measure, IReadOnlyList<IQuantity> readings) => new(Origin.Of(place), measure, null, readings);
}
