using System.Diagnostics;
using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Assessment.Traces;

namespace Layshaft.Benchmarks.Traces;

/// <summary>Times the reading of a trace, from the file to the figures.</summary>
internal static class TraceSpeed
{
    internal static void Run(string folder, string unitId, string file)
    {
        var assessment = BookReview.OfFolder(folder).Assessment!;
        var unit = assessment.Book.Units[unitId];
        var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var clock = Stopwatch.StartNew();
        using var stream = File.OpenRead(file);
        var bytes = stream.Length;
        var reading = TraceReading.Of(assessment.Gearing, unit, FittedGears.Now(assessment.Book, unit), null, stream, file, new ProblemList())!;
        process.Refresh();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{bytes / 1e6:0} MB, {reading.Figures.Rows} rows, {reading.Figures.Shifts.Count} shifts: {(process.TotalProcessorTime - before).TotalSeconds:0.0} s of processor time, {clock.Elapsed.TotalSeconds:0.0} s elapsed, {process.PeakWorkingSet64 / 1e6:0} MB at most."));
    }
}
