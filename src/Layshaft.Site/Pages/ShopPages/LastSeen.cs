using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>The last sizes and grades of the parts that are still in a unit.</summary>
internal sealed class LastSeen
{
    private readonly Dictionary<string, Dictionary<string, IQuantity>> _sizes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Grade> _grades = new(StringComparer.Ordinal);

    /// <summary>What some jobs saw, earliest first.</summary>
    public static LastSeen Of(IEnumerable<Job> jobs, Composition composition)
    {
        var seen = new LastSeen();
        foreach (var job in jobs)
        {
            foreach (var finding in composition.Assessment.Jobs[job.Number].Findings)
            {
                if (!seen._sizes.TryGetValue(finding.Part.Id, out var measures))
                {
                    seen._sizes[finding.Part.Id] = measures = new(StringComparer.Ordinal);
                }

                foreach (var measure in finding.Measures)
                {
                    measures[measure.Measure.Id] = measure.Wear.Measured.Value;
                }

                seen._grades[finding.Part.Id] = finding.Grade;
            }

            foreach (var renewal in job.Renewed)
            {
                seen._sizes.Remove(renewal.Part);
                seen._grades.Remove(renewal.Part);
            }
        }

        return seen;
    }

    /// <summary>The last mean of a measure; null if the part was not measured since it was fitted.</summary>
    public IQuantity? SizeOf(string part, string measure) => _sizes.GetValueOrDefault(part)?.GetValueOrDefault(measure);

    /// <summary>The last grade of a part; null if it was not inspected since it was fitted.</summary>
    public Grade? GradeOf(string part) => _grades.TryGetValue(part, out var grade) ? grade : null;
}
