using Layshaft.Book.Records;
using UnitsNet;

namespace Layshaft.Cli.Entering;

/// <summary>The last readings of the parts that are still in a unit.</summary>
internal sealed class LastReadings
{
    private readonly Dictionary<(string Part, string Measure), IReadOnlyList<IQuantity>> readings = [];

    /// <summary>The last readings before a job.</summary>
    /// <param name="jobs">The unit's jobs before it, in order.</param>
    public LastReadings(IEnumerable<Job> jobs)
    {
        foreach (var job in jobs)
        {
            foreach (var finding in job.Findings)
            {
                foreach (var measurement in finding.Measurements)
                {
                    readings[(finding.Part, measurement.Measure)] = measurement.Readings;
                }
            }

            foreach (var key in readings.Keys.Where(k => job.Renewed.Any(r => r.Part == k.Part)).ToArray())
            {
                readings.Remove(key);
            }
        }
    }

    /// <summary>The last readings of a measure; none if it was not taken since the part was fitted.</summary>
    public IReadOnlyList<IQuantity> Of(string part, string measure) => readings.GetValueOrDefault((part, measure), []);
}
